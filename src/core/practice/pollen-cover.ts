/** What a cover does to pollen: which it keeps out of what stands under it, and which it keeps in. */
import type { PollenCarrier } from "../kinds/crop.ts";
import type { Cover } from "../model/plan.ts";

/** Metres for two walls of mesh and for somebody to pass. No source; our choice. */
export const CAGE_ROOM_M = 1;

/** A mesh cage stops insects but not pollen in the wind; bags and taped hand-pollinated flowers stop both. */
export function keepsPollenOut(cover: Cover, carrier: PollenCarrier): boolean {
  if (cover === "none") return false;
  return cover !== "cage" || carrier === "insects";
}

/**
 * A cage stands over all of a planting. Bags and tape are on the flowers whose seed is kept: the
 * others are open, and shed pollen as ever. Common practice of hand pollination.
 */
export function keepsPollenIn(cover: Cover, carrier: PollenCarrier): boolean {
  return cover === "cage" && carrier === "insects";
}

/** What has a cover, and what carries its pollen. */
interface Covered {
  readonly cover: Cover;
  readonly carrier: PollenCarrier;
}

/**
 * Whether a cover keeps the source's pollen out of the seed parent's flowers, or in with the source.
 * Without ground between the two no cage can stand there: it stands over both.
 * @param distanceM ground between the two, metres
 */
export function isCovered(parent: Covered, source: Covered, distanceM: number): boolean {
  if (distanceM === 0) return isBagged(parent);
  return (
    keepsPollenOut(parent.cover, parent.carrier) || keepsPollenIn(source.cover, source.carrier)
  );
}

/** Two caged so near each other may stand under one cage, which parts nothing. */
export function isSurelyCovered(parent: Covered, source: Covered, distanceM: number): boolean {
  return distanceM >= CAGE_ROOM_M ? isCovered(parent, source, distanceM) : isBagged(parent);
}

/** Bags and tape are on the flowers themselves, however near the other lies. */
function isBagged({ cover, carrier }: Covered): boolean {
  return cover !== "cage" && keepsPollenOut(cover, carrier);
}
