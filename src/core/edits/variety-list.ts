/** A whole list of varieties taken into a plan at once. */
import type { Lot, Variety } from "../model/plan.ts";
import type { Edit } from "./edit.ts";

/**
 * Puts each variety in the place of the one with its id, or at the end: one undo step for all.
 * @param newLots lots the varieties name that are not on the shelf yet
 */
export function putVarieties(
  varieties: readonly Variety[],
  title: string,
  newLots: readonly Lot[] = [],
): Edit {
  return {
    title,
    apply: (plan) => {
      const coming = new Map(varieties.map((variety) => [variety.id, variety]));
      const kept = plan.varieties.map((variety) => coming.get(variety.id) ?? variety);
      const known = new Set(plan.varieties.map(({ id }) => id));
      return {
        ...plan,
        varieties: [...kept, ...varieties.filter(({ id }) => !known.has(id))],
        ...(newLots.length === 0 ? {} : { lots: [...plan.lots, ...newLots] }),
      };
    },
  };
}
