/**
 * How many plots of a size lie so far from each other in a garden, and as far from pollen around
 * it: counted on plots across the beds, never more than can truly lie there.
 */
import { gapBetween } from "../geometry/gap.ts";
import { type Outline, outlineArea, outlineOf } from "../geometry/outline.ts";
import { shiftOnSheet } from "../geometry/turned-bounds.ts";
import type { Bed } from "../model/plan.ts";

/** Pollen from around the garden, and the metres a seed parent must stand from it. */
export interface PollenAround {
  readonly outline: Outline;
  readonly metres: number;
}

/** Plots looked at along one bed. */
const MOST_ALONG = 8;
/** Directions in which plots are picked one after the other. */
const DIRECTIONS = 8;
const TOLERANCE_M = 1e-9;

/** Plots of an area across the beds; none where every bed is smaller. */
export function plotsOn(beds: readonly Bed[], areaM2: number): readonly Outline[] {
  return beds.flatMap(({ outline }): readonly Outline[] => {
    const whole = outlineOf(outline);
    if (outlineArea(whole) + TOLERANCE_M < areaM2) return [];
    if (outline.shape !== "rectangle") return [whole];
    const { widthM, lengthM, turnDeg } = outline;
    const plotM = Math.max(areaM2 / widthM, 0.01);
    const spareM = Math.max(0, lengthM - plotM);
    const count = Math.min(MOST_ALONG, 1 + Math.ceil(spareM / plotM));
    return Array.from({ length: count }, (_, at) => {
      const along = count === 1 ? 0 : spareM * (at / (count - 1) - 0.5);
      const { x, y } = shiftOnSheet(0, along, turnDeg);
      return outlineOf({
        ...outline,
        x: outline.x + x,
        y: outline.y + y,
        lengthM: Math.min(plotM, lengthM),
      });
    });
  });
}

/** Plots that lie far enough from every pollen source around. */
export function plotsClearOf(
  plots: readonly Outline[],
  around: readonly PollenAround[],
): readonly Outline[] {
  return plots.filter((plot) =>
    around.every(
      ({ outline, metres }) => gapBetween(plot, outline).distanceM + TOLERANCE_M >= metres,
    ),
  );
}

/**
 * Plots of these that lie so far apart, at most so many: two are found wherever there are two; of
 * more the best of several ways to pick them.
 */
export function countApart(plots: readonly Outline[], metres: number, most: number): number {
  if (plots.length === 0 || most <= 0) return 0;
  if (metres === Infinity) return 1;
  const isApart = (a: Outline, b: Outline) => gapBetween(a, b).distanceM + TOLERANCE_M >= metres;
  let best = 1;
  for (let turn = 0; turn < DIRECTIONS && best < most; turn += 1) {
    const angle = (turn / DIRECTIONS) * 2 * Math.PI;
    const placeOf = ({ bounds: { minX, maxX, minY, maxY } }: Outline) =>
      (minX + maxX) * Math.cos(angle) + (minY + maxY) * Math.sin(angle);
    const picked: Outline[] = [];
    for (const plot of [...plots].sort((a, b) => placeOf(a) - placeOf(b))) {
      if (picked.length < most && picked.every((other) => isApart(plot, other))) picked.push(plot);
    }
    best = Math.max(best, picked.length);
  }
  if (best > 1 || most < 2) return best;
  const isTwo = plots.some((a, at) => plots.slice(at + 1).some((b) => isApart(a, b)));
  return isTwo ? 2 : 1;
}
