/**
 * Kinds that stand high enough to shade what grows behind them. All of it is common practice: they
 * go to the side away from the sun.
 */
import type { Kind } from "../kinds/crop.ts";

const TALL: ReadonlySet<string> = new Set(
  (
    "maize sweet-corn popcorn sorghum broomcorn pearl-millet sunflower wild-sunflower " +
    "runner-bean lima-bean yardlong-bean hyacinth-bean pigeon-pea tomato okra artichoke " +
    "grain-amaranth tobacco"
  ).split(" "),
);

/** Above a person's waist, on canes or by itself. */
export function isTall({ id }: Pick<Kind, "id">): boolean {
  return TALL.has(id);
}

/** Kinds named above, for the test that each is a kind. */
export const tallKinds: readonly string[] = [...TALL];
