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
