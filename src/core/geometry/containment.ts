/** How far one outline reaches out of, or into, another. */
import { boundsOfCoordinates } from "./bounds.ts";
import { gapBetween } from "./gap.ts";
import { type Outline, outlineContains, pointOutline } from "./outline.ts";
import type { Point } from "./point.ts";

export interface Reach {
  /** Metres; 0 when it does not reach. */
  readonly distanceM: number;
  /** The far point, and the nearest point of the other outline's edge. */
  readonly from: Point;
  readonly to: Point;
}

/**
 * How far the inner outline sticks out of the outer one: the largest distance from the outer
 * outline to a corner, or to the middle of an edge piece that lies outside. Exact for a convex
 * outer outline; for a concave one it finds every crossing but may understate how far.
 */
export function protrusion(inner: Outline, outer: Outline): Reach {
  // A hole the inner outline covers whole meets none of its edges.
  const covered = outer.rings
    .slice(1)
    .flatMap((hole) => innerPoints(ringOutline(hole)))
    .filter(({ x, y }) => outlineContains(inner, x, y));
  return deepest(
    [...edgeSamples(inner, outer), ...covered],
    (point) => !outlineContains(outer, point.x, point.y),
    outer,
  );
}

/**
 * How deep two outlines lie in each other: the largest distance from the other's edge to a
 * corner, an edge piece's middle or an inner point that lies inside it. 0 when they only touch.
 */
export function overlapDepth(a: Outline, b: Outline): Reach {
  const inB = deepest(
    [...edgeSamples(a, b), ...innerPoints(a)],
    (point) => outlineContains(b, point.x, point.y),
    b,
  );
  const inA = deepest(
    [...edgeSamples(b, a), ...innerPoints(b)],
    (point) => outlineContains(a, point.x, point.y),
    a,
  );
  return inB.distanceM >= inA.distanceM ? inB : inA;
}

function deepest(
  samples: readonly Point[],
  counts: (point: Point) => boolean,
  other: Outline,
): Reach {
  let best: Reach = { distanceM: 0, from: { x: 0, y: 0 }, to: { x: 0, y: 0 } };
  for (const point of samples) {
    if (!counts(point)) continue;
    const gap = gapToEdge(point, other);
    if (gap.distanceM > best.distanceM) best = gap;
  }
  return best;
}

/** Distance from a point to the outline's edge, also from inside. */
function gapToEdge(point: Point, outline: Outline): Reach {
  let best: Reach = { distanceM: Infinity, from: point, to: point };
  const here = pointOutline(point);
  for (const ring of outline.rings) {
    for (let index = 0; index < ring.length; index += 2) {
      const next = (index + 2) % ring.length;
      const edge = edgeOutline(ring, index, next);
      const gap = gapBetween(here, edge);
      if (gap.distanceM < best.distanceM) best = gap;
    }
  }
  return best;
}

function ringOutline(ring: Float64Array): Outline {
  return { hasInside: true, rings: [ring], bounds: boundsOfCoordinates(ring) };
}

function edgeOutline(ring: Float64Array, index: number, next: number): Outline {
  const ends = Float64Array.of(
    ring[index] as number,
    ring[index + 1] as number,
    ring[next] as number,
    ring[next + 1] as number,
  );
  return { hasInside: false, rings: [ends], bounds: boundsOfCoordinates(ends) };
}

/** Corners of `a`, and the middle of each piece its edges are cut into by the edges of `b`. */
function edgeSamples(a: Outline, b: Outline): readonly Point[] {
  const samples: Point[] = [];
  for (const ring of a.rings) {
    for (let index = 0; index < ring.length; index += 2) {
      const next = (index + 2) % ring.length;
      const from = { x: ring[index] as number, y: ring[index + 1] as number };
      const to = { x: ring[next] as number, y: ring[next + 1] as number };
      const cuts = [0, ...edgeCuts(from, to, b), 1].sort((p, q) => p - q);
      samples.push(from);
      for (let cut = 1; cut < cuts.length; cut += 1) {
        const share = ((cuts[cut - 1] as number) + (cuts[cut] as number)) / 2;
        samples.push({
          x: from.x + share * (to.x - from.x),
          y: from.y + share * (to.y - from.y),
        });
      }
    }
  }
  return samples;
}

/** Shares along from-to, 0 to 1, where edges of the outline cross it. */
function edgeCuts(from: Point, to: Point, outline: Outline): readonly number[] {
  const cuts: number[] = [];
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  for (const ring of outline.rings) {
    for (let index = 0; index < ring.length; index += 2) {
      const next = (index + 2) % ring.length;
      const x = ring[index] as number;
      const y = ring[index + 1] as number;
      const ex = (ring[next] as number) - x;
      const ey = (ring[next + 1] as number) - y;
      const cross = dx * ey - dy * ex;
      if (cross === 0) continue;
      const share = ((x - from.x) * ey - (y - from.y) * ex) / cross;
      const along = ((x - from.x) * dy - (y - from.y) * dx) / cross;
      if (share > 0 && share < 1 && along >= 0 && along <= 1) cuts.push(share);
    }
  }
  return cuts;
}

/**
 * Points well inside: the middle of the bounds where it lies within, and the middle of the roomiest
 * level stretch half way between two neighbouring heights of corners, where no corner is in the way.
 */
function innerPoints(outline: Outline): readonly Point[] {
  const { minX, minY, maxX, maxY } = outline.bounds;
  const middle = { x: (minX + maxX) / 2, y: (minY + maxY) / 2 };
  const points = outlineContains(outline, middle.x, middle.y) ? [middle] : [];
  const heights = outline.rings.flatMap((ring) => [...ring].filter((_, index) => index % 2 === 1));
  heights.sort((p, q) => p - q);
  let roomiest = 0;
  let best: Point | null = null;
  for (let index = 1; index < heights.length; index += 1) {
    const low = heights[index - 1] as number;
    const high = heights[index] as number;
    if (high - low <= roomiest) continue;
    const y = (low + high) / 2;
    for (const [left, right] of stretchesInside(outline, y)) {
      const room = Math.min(high - low, right - left);
      if (room <= roomiest) continue;
      roomiest = room;
      best = { x: (left + right) / 2, y };
    }
  }
  return best === null ? points : [...points, best];
}

/** From where to where, along a level line that meets no corner, the ground is inside. */
function stretchesInside(outline: Outline, y: number): readonly (readonly [number, number])[] {
  const left = outline.bounds.minX - 1;
  const width = outline.bounds.maxX + 1 - left;
  const cuts = edgeCuts({ x: left, y }, { x: left + width, y }, outline)
    .map((share) => left + share * width)
    .sort((p, q) => p - q);
  return cuts.flatMap((from, index) =>
    index % 2 === 0 ? [[from, cuts[index + 1] ?? from] as const] : [],
  );
}
