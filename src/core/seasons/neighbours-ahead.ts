/** What stands around the beds, in the season after. */
import { yearsLater } from "../calendar/yearly.ts";
import { patched } from "../edits/edit.ts";
import type { Surrounding } from "../model/plan.ts";

/**
 * `ask`: it may be another crop, at another time: what was known of its bloom no longer holds.
 * `same`: the same every year. `leave`: it is not there any more.
 */
export const neighbourChoices = ["ask", "same", "leave"] as const;
export type NeighbourChoice = (typeof neighbourChoices)[number];

/** Pollen sources are asked about again unless they are marked as the same every year. */
export function neighbourDefault({ what, everyYear }: Surrounding): NeighbourChoice {
  return what !== "pollen" || everyYear === true ? "same" : "ask";
}

/**
 * Asked about again, a pollen source keeps its ground and kind alone: dates, cutting, a cover and
 * the variety are this season's word, and each of them may clear a pair. Null: it is left out.
 */
export function surroundingAhead(
  surrounding: Surrounding,
  choice: NeighbourChoice,
  years: number,
): Surrounding | null {
  if (choice === "leave") return null;
  if (surrounding.what !== "pollen") return surrounding;
  const { bloom } = surrounding;
  if (choice === "same") {
    if (!bloom) return surrounding;
    const [first, last] = [yearsLater(bloom.first, years), yearsLater(bloom.last, years)];
    return { ...surrounding, bloom: { ...bloom, first, last } };
  }
  return patched(surrounding, {
    bloom: undefined,
    varietyName: undefined,
    flowering: "yes",
    cover: "none",
  });
}
