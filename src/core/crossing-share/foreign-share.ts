/** The share of seeds on a planting that foreign pollen made, by where pollen lands. */
import type { Outline } from "../geometry/outline.ts";
import type { Point } from "../geometry/point.ts";
import type { Kernel } from "./kernels.ts";
import { pollenShare } from "./pollen-share.ts";

/** Ground that sheds pollen: how densely against the planting's own, and on what share of its days. */
export interface PollenGround {
  readonly ground: Outline;
  /** Pollen a square metre sheds on the receptive days, against the planting's own; 0 or more. */
  readonly strength: number;
}

/**
 * Mean over the places of foreign / (own + foreign). All sources are added before dividing, since
 * shares do not add. 1 where nothing of its own reaches a place that foreign pollen reaches, 0
 * where no foreign pollen does.
 * @param own the planting itself and others of its variety
 */
export function foreignShare(
  places: readonly Point[],
  own: readonly PollenGround[],
  foreign: readonly PollenGround[],
  kernel: Kernel,
): number {
  if (places.length === 0) return 0;
  const reaching = (place: Point, grounds: readonly PollenGround[]) =>
    grounds.reduce(
      (sum, { ground, strength }) =>
        strength > 0 ? sum + strength * pollenShare(place, ground, kernel) : sum,
      0,
    );
  let sum = 0;
  for (const place of places) {
    const theirs = reaching(place, foreign);
    if (theirs > 0) sum += theirs / (theirs + reaching(place, own));
  }
  return sum / places.length;
}
