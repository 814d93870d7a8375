/** How far one outline reaches out of, or into, another. */
import { gapBetween } from "./gap.ts";
import { type Outline, outlineContains } from "./outline.ts";
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
  return deepest(edgeSamples(inner, outer), (point) => !outlineContains(outer, point.x, point.y), outer);
}

/**
 * How deep two outlines lie in each other: the largest distance from the other's edge to a
 * corner, an edge piece's middle or an inner point that lies inside it. 0 when they only touch.
 */
export function overlapDepth(a: Outline, b: Outline): Reach {
  const inB = deepest(
    [...edgeSamples(a, b), innerPoint(a)],
    (point) => outlineContains(b, point.x, point.y),
    b,
  );
  const inA = deepest(
    [...edgeSamples(b, a), innerPoint(b)],
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

function pointOutline({ x, y }: Point): Outline {
  return {
    hasInside: false,
    rings: [Float64Array.of(x, y)],
    bounds: { minX: x, minY: y, maxX: x, maxY: y },
  };
}

function edgeOutline(ring: Float64Array, index: number, next: number): Outline {
  const [x1, y1, x2, y2] = [ring[index], ring[index + 1], ring[next], ring[next + 1]] as [
    number,
    number,
    number,
    number,
  ];
  return {
    hasInside: false,
    rings: [Float64Array.of(x1, y1, x2, y2)],
    bounds: {
      minX: Math.min(x1, x2),
      minY: Math.min(y1, y2),
      maxX: Math.max(x1, x2),
      maxY: Math.max(y1, y2),
    },
  };
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

/** A point inside: the middle of the corners for convex outlines, else the middle of an inner cut. */
function innerPoint(outline: Outline): Point {
  const { minX, minY, maxX, maxY } = outline.bounds;
  const middle = { x: (minX + maxX) / 2, y: (minY + maxY) / 2 };
  if (outlineContains(outline, middle.x, middle.y)) return middle;
  const cuts = edgeCuts({ x: minX, y: middle.y }, { x: maxX, y: middle.y }, outline);
  const [first = 0, second = 1] = [...cuts].sort((p, q) => p - q);
  return { x: minX + ((first + second) / 2) * (maxX - minX), y: middle.y };
}
