/**
 * Regions of the sheet as rings, combined exactly on a grid of a tenth of a millimetre (Clipper2).
 * A region shows where something may lie; whether it is clear is always decided by distance.
 */
import {
  type Path64,
  type Paths64,
  EndType,
  FillRule,
  JoinType,
  difference,
  inflatePaths,
  intersect,
  minkowskiSum,
  translatePath,
  union,
} from "clipper2-ts";
import type { Outline } from "../geometry/outline.ts";
import type { Point } from "../geometry/point.ts";

/** Grid steps in a metre. */
const STEPS_PER_M = 10_000;
/** Largest gap between an arc and the chords drawn for it, metres; added outward. */
const ARC_TOLERANCE_M = 0.0005;

/** Outer rings run anticlockwise, holes clockwise; even-odd and non-zero filling agree. */
export type Region = Paths64;

export const emptyRegion: Region = [];

/** One ring about its own centre, on the grid. */
export type RegionShape = Path64;

function path(ring: Float64Array): Path64 {
  const points: Path64 = [];
  for (let index = 0; index < ring.length; index += 2) {
    points.push({
      x: Math.round((ring[index] as number) * STEPS_PER_M),
      y: Math.round((ring[index + 1] as number) * STEPS_PER_M),
    });
  }
  return points;
}

/** The ground inside an outline. */
export function regionOf(outline: Outline): Region {
  return union(outline.rings.map(path), FillRule.EvenOdd);
}

/** The region less what is taken; either may be several regions that overlap. */
export function without(region: Region, taken: Region): Region {
  return difference(region, taken, FillRule.NonZero);
}

export function common(a: Region, b: Region): Region {
  return intersect(a, b, FillRule.NonZero);
}

/** The region grown by a distance with round corners; never less than the true offset. */
export function grownRound(region: Region, distanceM: number): Region {
  if (distanceM <= 0) return region;
  return inflatePaths(
    region,
    (distanceM + ARC_TOLERANCE_M) * STEPS_PER_M,
    JoinType.Round,
    EndType.Polygon,
    2,
    ARC_TOLERANCE_M * STEPS_PER_M,
  );
}

/**
 * The region shrunk by at most a distance, and by less where a corner is so sharp that its tip
 * would recede by more than `tipM`.
 */
export function shrunkSharp(region: Region, distanceM: number, tipM: number): Region {
  const least = Math.min(...region.flatMap((ring) => ring.map((_, at) => halfAngleSine(ring, at))));
  const shrinkM = Math.min(distanceM, tipM * least);
  return shrinkM * STEPS_PER_M < 1 ? region : grownSharp(region, -shrinkM);
}

/** Sine of half the angle inside a corner of a region's ring; 1 where it turns outward. */
function halfAngleSine(ring: Path64, at: number): number {
  const corner = ring[at] as Corner;
  const before = ring[(at + ring.length - 1) % ring.length] as Corner;
  const after = ring[(at + 1) % ring.length] as Corner;
  if (cross(before, corner, corner, after) <= 0) return 1;
  const [ax, ay] = [before.x - corner.x, before.y - corner.y];
  const [bx, by] = [after.x - corner.x, after.y - corner.y];
  const cosine = (ax * bx + ay * by) / (Math.hypot(ax, ay) * Math.hypot(bx, by));
  return Math.sqrt(Math.max(0, 1 - cosine) / 2);
}

/** The region grown (or with a negative distance shrunk) with sharp corners. */
export function grownSharp(region: Region, distanceM: number): Region {
  return inflatePaths(region, distanceM * STEPS_PER_M, JoinType.Miter, EndType.Polygon);
}

/**
 * All places whose sum of a point of the region and a point of the shape: the region swept by the
 * shape. The shape is given about its own centre.
 */
export function swept(region: Region, shape: Path64): Region {
  const first = shape[0];
  if (!first) return region;
  const [only] = region;
  if (only && region.length === 1 && isConvex(only) && isConvex(shape)) {
    return [convexSum(only, shape)];
  }
  const parts: Paths64 = region.map((ring) => translatePath(ring, first.x, first.y));
  for (const ring of region) {
    parts.push(...minkowskiSum(shape, ring, true));
    const corner = ring[0];
    // The shape at one corner: what a region smaller than the shape leaves uncovered inside.
    if (corner) parts.push(oriented(translatePath(shape, corner.x, corner.y)));
  }
  return union(parts, FillRule.NonZero);
}

/** Whether an anticlockwise ring turns left, or goes straight on, at every corner. */
function isConvex(ring: Path64): boolean {
  return ring.every((corner, index) => {
    const next = ring[(index + 1) % ring.length] ?? corner;
    const after = ring[(index + 2) % ring.length] ?? corner;
    return cross(corner, next, next, after) >= 0;
  });
}

interface Corner {
  readonly x: number;
  readonly y: number;
}

function cross(a: Corner, b: Corner, c: Corner, d: Corner): number {
  return (b.x - a.x) * (d.y - c.y) - (b.y - a.y) * (d.x - c.x);
}

/** The sum of two convex anticlockwise rings: their edges in the order of their directions. */
function convexSum(a: Path64, b: Path64): Path64 {
  const [from, other] = [lowestFirst(a), lowestFirst(b)];
  const at = (ring: Path64, index: number): Corner => ring[index % ring.length] as Corner;
  const sum: Path64 = [];
  let [i, j] = [0, 0];
  while (i < from.length || j < other.length) {
    const [here, there] = [at(from, i), at(other, j)];
    sum.push({ x: here.x + there.x, y: here.y + there.y });
    const turn = cross(here, at(from, i + 1), there, at(other, j + 1));
    const isFirst = j >= other.length || (i < from.length && turn >= 0);
    const isSecond = i >= from.length || (j < other.length && turn <= 0);
    if (isFirst) i += 1;
    if (isSecond) j += 1;
  }
  return sum;
}

/** The ring begun at its lowest corner, the leftmost of several. */
function lowestFirst(ring: Path64): Path64 {
  let lowest = 0;
  ring.forEach(({ x, y }, index) => {
    const best = ring[lowest] as Corner;
    if (y < best.y || (y === best.y && x < best.x)) lowest = index;
  });
  return [...ring.slice(lowest), ...ring.slice(0, lowest)];
}

/** Places where the shape, put there by its centre, lies wholly inside the region. */
export function insetBy(region: Region, shape: Path64): Region {
  const mirrored = mirror(shape);
  const edges = region.flatMap((ring) => minkowskiSum(mirrored, ring, true));
  // Where the shape would cover a hole whole, it meets none of the hole's edges.
  for (const ring of region) {
    const [corner] = ring;
    if (corner) edges.push(oriented(translatePath(mirrored, corner.x, corner.y)));
  }
  const first = mirrored[0] ?? { x: 0, y: 0 };
  const inner = region.map((ring) => translatePath(ring, first.x, first.y));
  return difference(inner, union(edges, FillRule.NonZero), FillRule.NonZero);
}

/** A shape turned half about its centre: sweeping with it gives the places that would touch. */
export function mirror(shape: Path64): Path64 {
  return shape.map(({ x, y }) => ({ x: -x, y: -y }));
}

/**
 * An outline's outer ring about a centre, anticlockwise, on the grid. Rounded after the centre is
 * taken off: moved, it is the same shape.
 */
export function shapeAbout(outline: Outline, centre: Point): RegionShape {
  const ring = outline.rings[0] ?? new Float64Array();
  return oriented(path(ring.map((at, index) => at - (index % 2 === 0 ? centre.x : centre.y))));
}

function oriented(ring: Path64): Path64 {
  let twice = 0;
  ring.forEach((point, index) => {
    const next = ring[(index + 1) % ring.length] ?? point;
    twice += point.x * next.y - next.x * point.y;
  });
  return twice < 0 ? [...ring].reverse() : ring;
}

/** Rings in metres, x0, y0, x1, y1, ... for drawing. */
export function ringsOf(region: Region): readonly Float64Array[] {
  return region.map((ring) =>
    Float64Array.from(ring.flatMap(({ x, y }) => [x / STEPS_PER_M, y / STEPS_PER_M])),
  );
}

/** Square metres. */
export function regionArea(region: Region): number {
  let twice = 0;
  for (const ring of region) {
    ring.forEach((point, index) => {
      const next = ring[(index + 1) % ring.length] ?? point;
      twice += point.x * next.y - next.x * point.y;
    });
  }
  return Math.abs(twice) / 2 / STEPS_PER_M ** 2;
}
