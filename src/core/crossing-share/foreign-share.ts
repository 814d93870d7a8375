/** The share of seeds on a planting that foreign pollen made, by where pollen lands. */
import type { Outline } from "../geometry/outline.ts";
import type { Point } from "../geometry/point.ts";
import type { Kernel } from "./kernels.ts";
import { pollenShare } from "./pollen-share.ts";

/** Ground that sheds pollen: how densely against the planting's own, and on what share of its days. */
export interface SheddingGround {
  readonly ground: Outline;
  /** Pollen a square metre sheds on the receptive days, against the planting's own; 0 or more. */
  readonly strength: number;
}

/**
 * Mean over the places of foreign / (own + foreign). All sources are added before dividing, since
 * shares do not add. 1 where nothing of its own reaches a place that foreign pollen reaches, 0
 * where no foreign pollen does. Every sum exact; the estimate of a garden takes `pollenFields`.
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

/** Pollen at each of some places, and what it counts. */
export interface WeighedField {
  readonly field: Float64Array;
  readonly strength: number;
}

/** The fields added up place by place, each as much as it counts. */
export function addedFields(places: number, fields: readonly WeighedField[]): Float64Array {
  const sums = new Float64Array(places);
  for (const { field, strength } of fields) {
    if (strength <= 0) continue;
    for (let place = 0; place < places; place++) {
      sums[place] = (sums[place] as number) + strength * (field[place] as number);
    }
  }
  return sums;
}

/**
 * Mean of foreign / (own + foreign) over places; 0 where there is no place.
 * @param strength what the foreign pollen counts
 */
export function meanShare(own: Float64Array, foreign: Float64Array, strength = 1): number {
  let sum = 0;
  for (let place = 0; place < own.length; place++) {
    const theirs = strength * (foreign[place] as number);
    if (theirs > 0) sum += theirs / (theirs + (own[place] as number));
  }
  return own.length === 0 ? 0 : sum / own.length;
}
