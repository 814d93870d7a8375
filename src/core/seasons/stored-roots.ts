/**
 * First-year biennials that are usually lifted and kept in store over winter, rather than left in
 * the ground: common practice where winters freeze. Only what is offered first; the grower decides.
 */
import type { Kind } from "../kinds/crop.ts";

const stored: ReadonlySet<string> = new Set([
  "beet",
  "sugar-beet",
  "fodder-beet",
  "carrot",
  "celeriac",
  "cabbage",
  "kohlrabi",
  "onion",
  "rutabaga",
  "turnip",
  "winter-radish",
]);

export function isStoredOverWinter({ id }: Pick<Kind, "id">): boolean {
  return stored.has(id);
}

/** Ids named above, for the test that each is a biennial kind. */
export const storedKinds: readonly string[] = [...stored];
