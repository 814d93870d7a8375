/** Where a walk leads: every plot in walking order, then the pollen sources around, each nearest to the one before. */
import { gapBetween } from "../geometry/gap.ts";
import { outlineOf, pointOutline, shapeCentre } from "../geometry/outline.ts";
import { type Point, pointDistance } from "../geometry/point.ts";
import type { Layout, Plan, Planting, Shape, Surrounding } from "../model/plan.ts";
import { walkingNumbers } from "./walking-order.ts";

export interface WalkStop {
  readonly id: string;
  /** Code of the plot, or the name of what lies outside. */
  readonly code: string;
  readonly outline: Shape;
  /** Exactly one of the two. */
  readonly planting: Planting | null;
  readonly surrounding: Surrounding | null;
}

export function walkStops(plan: Plan, layout: Layout): readonly WalkStop[] {
  const numbers = walkingNumbers(layout);
  const plots = [...layout.plantings]
    .sort((a, b) => (numbers.get(a.id) ?? 0) - (numbers.get(b.id) ?? 0))
    .map((planting): WalkStop => {
      const { id, code, outline } = planting;
      return { id, code, outline, planting, surrounding: null };
    });
  const outside = plan.surroundings
    .filter(({ what }) => what === "pollen")
    .map((surrounding): WalkStop => {
      const { id, label, outline } = surrounding;
      return { id, code: label, outline, planting: null, surrounding };
    });
  return [...plots, ...chained(outside, plots.at(-1))];
}

/** Each the nearest of those left to the one before. */
function chained(stops: readonly WalkStop[], from: WalkStop | undefined): readonly WalkStop[] {
  const left = [...stops];
  const chain: WalkStop[] = [];
  let at: Point = from ? shapeCentre(from.outline) : { x: 0, y: 0 };
  while (left.length > 0) {
    const distances = left.map(({ outline }) => pointDistance(at, shapeCentre(outline)));
    const nearest = distances.indexOf(Math.min(...distances));
    const [stop] = left.splice(nearest, 1);
    if (!stop) break;
    chain.push(stop);
    at = shapeCentre(stop.outline);
  }
  return chain;
}

export interface NearStop {
  readonly stop: WalkStop;
  /** Shortest distance to its outline, metres; 0 when inside. */
  readonly distanceM: number;
}

/** Stops by their distance from a place, the nearest first. */
export function nearestStops(stops: readonly WalkStop[], place: Point): readonly NearStop[] {
  const here = pointOutline(place);
  return stops
    .map((stop) => ({ stop, distanceM: gapBetween(here, outlineOf(stop.outline)).distanceM }))
    .sort((a, b) => a.distanceM - b.distanceM);
}
