/** What clear ground there is for a planting, in words. */
import { type LengthUnit, formatDistance } from "../model/length.ts";
import { listed } from "../checks/wording.ts";
import { formOf } from "../words/plurals.ts";
import type { ClearGround } from "./solved-ground.ts";

/**
 * One or two sentences: that there is clear ground, or that there is none and what forbids most.
 * @param code of the planting it is about
 */
export function clearGroundWords(
  { centres, untold, forbidding }: Omit<ClearGround, "ground">,
  code: string,
  nameOf: (id: string) => string,
  unit: LengthUnit,
): string {
  if (centres.length > 0) {
    const words = `${code} can lie on the dotted ground without a conflict`;
    if (untold.length === 0) return `${words}.`;
    const others = listed(untold.map(nameOf));
    return `${words} that is known. Of ${others} it is not: no isolation distance is known, so no ground is clear of ${formOf(untold.length, { one: "it", other: "them" })} until one is typed.`;
  }
  const none = `No clear ground for ${code} at its present size and angle.`;
  const [most] = forbidding();
  return most
    ? `${none} ${nameOf(most.id)} forbids most of it: ${formatDistance(most.distanceM, unit)} must be kept between them.`
    : `${none} No bed has free room for it.`;
}
