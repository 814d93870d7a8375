/** A whole list of varieties taken into a plan at once. */
import type { Variety } from "../model/plan.ts";
import type { Edit } from "./edit.ts";

/** Puts each variety in the place of the one with its id, or at the end: one undo step for all. */
export function putVarieties(varieties: readonly Variety[], title: string): Edit {
  return {
    title,
    apply: (plan) => {
      const coming = new Map(varieties.map((variety) => [variety.id, variety]));
      const kept = plan.varieties.map((variety) => coming.get(variety.id) ?? variety);
      const known = new Set(plan.varieties.map(({ id }) => id));
      return {
        ...plan,
        varieties: [...kept, ...varieties.filter(({ id }) => !known.has(id))],
      };
    },
  };
}
