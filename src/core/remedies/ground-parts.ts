/**
 * Regions that clear ground is made of, remembered for the shape that is asked about: while one
 * planting is dragged, beds and neighbours stay where they are, and so do their regions.
 */
import { OUTSIDE_TOLERANCE_M } from "../checks/outside.ts";
import { OVERLAP_TOLERANCE_M } from "../checks/overlap.ts";
import type { Outline } from "../geometry/outline.ts";
import {
  type Region,
  type RegionShape,
  grownRound,
  grownSharp,
  insetBy,
  mirror,
  regionOf,
  shrunkSharp,
  swept,
} from "./region.ts";

/** Slack inside the checks' own tolerances, so that touching a bed's edge or a neighbour is allowed. */
const EDGE_SLACK_M = OUTSIDE_TOLERANCE_M * 0.45;
const NEIGHBOUR_SLACK_M = OVERLAP_TOLERANCE_M * 0.4;
/** How far the tip of a sharp corner may be lain on, metres. */
const TIP_SLACK_M = OVERLAP_TOLERANCE_M * 0.8;

/** Regions of centres of one shape. The same outline gives the same region object. */
export interface GroundParts {
  readonly shape: RegionShape;
  /** Where it lies wholly in a bed. */
  readonly inBed: (bed: Outline) => Region;
  /** Where it lies on a neighbour's ground. */
  readonly onNeighbour: (neighbour: Outline) => Region;
  /** Where it is nearer to something than a distance, metres. */
  readonly nearer: (source: Outline, distanceM: number) => Region;
}

let last: GroundParts | null = null;

/** The parts for a shape; those of the shape asked about last are kept. */
export function groundParts(shape: RegionShape): GroundParts {
  if (last === null || !isSame(last.shape, shape)) last = newParts(shape);
  return last;
}

function isSame(a: RegionShape, b: RegionShape): boolean {
  return (
    a.length === b.length && a.every(({ x, y }, index) => b[index]?.x === x && b[index].y === y)
  );
}

function newParts(shape: RegionShape): GroundParts {
  const touching = mirror(shape);
  const zones = new WeakMap<Outline, Map<number, Region>>();
  return {
    shape,
    inBed: remembered((bed) => insetBy(grownSharp(regionOf(bed), EDGE_SLACK_M), shape)),
    onNeighbour: remembered((neighbour) =>
      swept(shrunkSharp(regionOf(neighbour), NEIGHBOUR_SLACK_M, TIP_SLACK_M), touching),
    ),
    nearer: (source, distanceM) => {
      const known = zones.get(source) ?? new Map<number, Region>();
      zones.set(source, known);
      const found =
        known.get(distanceM) ?? grownRound(swept(sourceRegion(source), touching), distanceM);
      known.set(distanceM, found);
      return found;
    },
  };
}

function remembered(make: (outline: Outline) => Region): (outline: Outline) => Region {
  const known = new WeakMap<Outline, Region>();
  return (outline) => {
    const found = known.get(outline) ?? make(outline);
    known.set(outline, found);
    return found;
  };
}

/** A point source has no ground of its own: a square a tenth of a millimetre wide stands for it. */
function sourceRegion(outline: Outline): Region {
  const region = regionOf(outline);
  if (region.length > 0) return region;
  const { minX, minY } = outline.bounds;
  const half = 0.0001;
  return regionOf({
    hasInside: true,
    rings: [
      Float64Array.of(
        minX - half,
        minY - half,
        minX + half,
        minY - half,
        minX + half,
        minY + half,
        minX - half,
        minY + half,
      ),
    ],
    bounds: outline.bounds,
  });
}
