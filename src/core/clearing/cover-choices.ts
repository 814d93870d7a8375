/** Covers that keep pollen out of a kind and that its flowers can be given. */
import { stopsPollen } from "../checks/isolation.ts";
import type { Kind } from "../kinds/crop.ts";
import type { Cover } from "../model/plan.ts";

/**
 * Covers of a kind, the usual first. Taping flowers and pollinating by hand is done with the large
 * flowers of the cucumber family; wind pollen is kept out by bags (common practice).
 */
export function coversFor(kind: Kind): readonly Exclude<Cover, "none">[] {
  const covers: readonly Exclude<Cover, "none">[] =
    kind.family === "Cucurbitaceae"
      ? ["hand", "cage"]
      : kind.carrier === "insects"
        ? kind.breeding === "outcrossing"
          ? ["cage"]
          : ["bags", "cage"]
        : ["bags"];
  return covers.filter((cover) => stopsPollen(cover, kind.carrier));
}
