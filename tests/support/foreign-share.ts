/** The share of seeds that foreign pollen made, every sum exact: what the estimates of a garden are held against. */
import { addedFields, meanShare } from "../../src/core/crossing-share/foreign-share.ts";
import type { Kernel } from "../../src/core/crossing-share/kernels.ts";
import { pollenShare } from "../../src/core/crossing-share/pollen-share.ts";
import type { Outline } from "../../src/core/geometry/outline.ts";
import type { Point } from "../../src/core/geometry/point.ts";

/** Ground that sheds pollen: how densely against the planting's own, and on what share of its days. */
export interface SheddingGround {
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
  own: readonly SheddingGround[],
  foreign: readonly SheddingGround[],
  kernel: Kernel,
): number {
  const field = (grounds: readonly SheddingGround[]) =>
    addedFields(
      places.length,
      grounds.map(({ ground, strength }) => ({
        field: Float64Array.from(places, (place) => pollenShare(place, ground, kernel)),
        strength,
      })),
    );
  return meanShare(field(own), field(foreign));
}
