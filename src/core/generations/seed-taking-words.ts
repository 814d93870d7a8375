/** What the field card says of taking seed, so that no plant counts for more than another. */
import type { Kind } from "../kinds/crop.ts";
import { breedingOf } from "./breeding.ts";
import { formOf } from "../words/plurals.ts";

/**
 * `Take equal seed from each of at least 20 plants`.
 * @param plants of the variety that stand for seed, all its plots together; undefined: not counted
 */
export function seedTakingWords(
  kind: Pick<Kind, "id" | "population" | "breeding">,
  plants: number | undefined,
): string {
  const advised = kind.population?.maintenance?.value;
  const isOneSex = breedingOf(kind).sexes === "one";
  if (plants !== undefined && plants > 0 && (advised === undefined || plants <= advised)) {
    // Of females and males nobody knows beforehand how many of each come up.
    if (isOneSex) return "Take equal seed from every female plant";
    return formOf(plants, {
      one: "Take seed from the one plant",
      other: `Take equal seed from all ${plants} plants`,
    });
  }
  if (advised === undefined) {
    return isOneSex
      ? "Take equal seed from every female plant"
      : "Take equal seed from every plant";
  }
  const least = isOneSex ? Math.ceil(advised / 2) : advised;
  return isOneSex
    ? formOf(least, {
        one: "Take seed from at least one female",
        other: `Take equal seed from each of at least ${least} females`,
      })
    : formOf(least, {
        one: "Take seed from at least one plant",
        other: `Take equal seed from each of at least ${least} plants`,
      });
}
