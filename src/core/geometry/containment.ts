/** How far one outline reaches out of, or into, another. */
import { boundsOfCoordinates } from "./bounds.ts";
import { gapToEdge, squareToEdge } from "./gap.ts";
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
 * Numbers in a row, used again and again: a whole-plan check looks at hundreds of thousands of
 * places, and making something for each costs more than looking at it.
 */
interface Row {
  readonly values: number[];
  count: number;
}

const samples: Row = { values: [], count: 0 };
const cuts: Row = { values: [], count: 0 };
const heights: Row = { values: [], count: 0 };

function push(row: Row, value: number): void {
  row.values[row.count] = value;
  row.count += 1;
}

/** Puts a short row in order where it lies. */
function sort({ values, count }: Row): void {
  for (let index = 1; index < count; index += 1) {
    const value = values[index] as number;
    let at = index;
    while (at > 0 && (values[at - 1] as number) > value) {
      values[at] = values[at - 1] as number;
      at -= 1;
    }
    values[at] = value;
  }
}

/**
 * How far the inner outline sticks out of the outer one: the largest distance from the outer
 * outline to a corner, or to the middle of an edge piece that lies outside. Exact for a convex
 * outer outline; for a concave one it finds every crossing but may understate how far.
 */
export function protrusion(inner: Outline, outer: Outline): Reach {
  samples.count = 0;
  addEdgeSamples(inner, outer);
  // A hole the inner outline covers whole meets none of its edges.
  for (const hole of outer.rings.slice(1)) {
    const from = samples.count;
    addInnerPoints(ringOutline(hole));
    keepInside(from, inner);
  }
  return deepest(outer, false);
}

/**
 * How deep two outlines lie in each other: the largest distance from the other's edge to a
 * corner, an edge piece's middle or an inner point that lies inside it. 0 when they only touch.
 */
export function overlapDepth(a: Outline, b: Outline): Reach {
  const inB = depthIn(a, b);
  const inA = depthIn(b, a);
  return inB.distanceM >= inA.distanceM ? inB : inA;
}

/** By so much a depth may differ from another reckoning of it, metres. */
const ROUNDING_M = 1e-6;

/**
 * Whether two outlines lie in each other by more than some metres. The answer of `overlapDepth`,
 * which is asked where neither a line between the two nor a corner tells it for less.
 */
export function overlapsBy(a: Outline, b: Outline, metres: number): boolean {
  if (isMiddleIn(a, b, metres) || isMiddleIn(b, a, metres)) return true;
  if (isBesides(a, b, metres) || isBesides(b, a, metres)) return false;
  const isDeep = isCornerIn(a, b, metres) || isCornerIn(b, a, metres);
  return isDeep || overlapDepth(a, b).distanceM > metres;
}

/**
 * Whether one outline ends, across an edge of the first, less than some metres from where the other
 * begins: what they share is no deeper than that in either.
 */
function isBesides(
  { rings: [ring = NO_RING] }: Outline,
  { rings: [other = NO_RING] }: Outline,
  metres: number,
): boolean {
  for (let at = 0; at < ring.length; at += 2) {
    const next = (at + 2) % ring.length;
    const dx = (ring[next] as number) - (ring[at] as number);
    const dy = (ring[next + 1] as number) - (ring[at + 1] as number);
    const least = (metres - ROUNDING_M) * Math.sqrt(dx * dx + dy * dy);
    const high = -leastAcross(ring, -dx, -dy);
    const otherLow = leastAcross(other, dx, dy);
    if (high - otherLow < least) return true;
    const low = leastAcross(ring, dx, dy);
    const otherHigh = -leastAcross(other, -dx, -dy);
    if (otherHigh - low < least) return true;
  }
  return false;
}

const NO_RING = new Float64Array();

/** How far across a line corners lie at least, in lengths of the line. */
function leastAcross(ring: Float64Array, dx: number, dy: number): number {
  let least = Infinity;
  for (let at = 0; at < ring.length; at += 2) {
    const across = dx * (ring[at + 1] as number) - dy * (ring[at] as number);
    if (across < least) least = across;
  }
  return least;
}

/** Whether a corner of the first outline lies so deep in the second. */
function isCornerIn(inner: Outline, outer: Outline, metres: number): boolean {
  for (const ring of inner.rings) {
    for (let at = 0; at < ring.length; at += 2) {
      if (isDeepIn(ring[at] as number, ring[at + 1] as number, outer, metres)) return true;
    }
  }
  return false;
}

/** Whether the middle of the first outline, where it is ground of it, lies so deep in the second. */
function isMiddleIn(inner: Outline, outer: Outline, metres: number): boolean {
  const { minX, minY, maxX, maxY } = inner.bounds;
  const [x, y] = [(minX + maxX) / 2, (minY + maxY) / 2];
  return isDeepIn(x, y, outer, metres) && outlineContains(inner, x, y);
}

function isDeepIn(x: number, y: number, outline: Outline, metres: number): boolean {
  const deep = (metres + ROUNDING_M) ** 2;
  return outlineContains(outline, x, y) && squareToEdge(x, y, outline, Infinity) > deep;
}

function depthIn(inner: Outline, outer: Outline): Reach {
  samples.count = 0;
  addEdgeSamples(inner, outer);
  addInnerPoints(inner);
  return deepest(outer, true);
}

function ringOutline(ring: Float64Array): Outline {
  return { hasInside: true, rings: [ring], bounds: boundsOfCoordinates(ring) };
}

/** Of the samples that lie inside the outline, or of those that do not, the one farthest from its edge. */
function deepest(outline: Outline, isInside: boolean): Reach {
  let best = 0;
  let place = -1;
  for (let at = 0; at < samples.count; at += 2) {
    const x = samples.values[at] as number;
    const y = samples.values[at + 1] as number;
    if (outlineContains(outline, x, y) !== isInside) continue;
    const square = squareToEdge(x, y, outline, Infinity);
    if (square <= best) continue;
    best = square;
    place = at;
  }
  if (place < 0) return { distanceM: 0, from: { x: 0, y: 0 }, to: { x: 0, y: 0 } };
  const [x, y] = [samples.values[place] as number, samples.values[place + 1] as number];
  return gapToEdge({ x, y }, outline);
}

/** Takes out the samples from a place on that do not lie inside an outline. */
function keepInside(from: number, outline: Outline): void {
  const { count } = samples;
  samples.count = from;
  for (let at = from; at < count; at += 2) {
    const x = samples.values[at] as number;
    const y = samples.values[at + 1] as number;
    if (!outlineContains(outline, x, y)) continue;
    push(samples, x);
    push(samples, y);
  }
}

/** Corners of `a`, and the middle of each piece its edges are cut into by the edges of `b`. */
function addEdgeSamples(a: Outline, b: Outline): void {
  for (const ring of a.rings) {
    for (let index = 0; index < ring.length; index += 2) {
      const next = (index + 2) % ring.length;
      const x = ring[index] as number;
      const y = ring[index + 1] as number;
      const dx = (ring[next] as number) - x;
      const dy = (ring[next + 1] as number) - y;
      cuts.count = 0;
      push(cuts, 0);
      addEdgeCuts(x, y, dx, dy, b.rings);
      push(cuts, 1);
      sort(cuts);
      push(samples, x);
      push(samples, y);
      for (let cut = 1; cut < cuts.count; cut += 1) {
        const share = ((cuts.values[cut - 1] as number) + (cuts.values[cut] as number)) / 2;
        push(samples, x + share * dx);
        push(samples, y + share * dy);
      }
    }
  }
}

/** Shares along a line from x, y by dx, dy, 0 to 1, where edges of the rings cross it. */
function addEdgeCuts(
  fromX: number,
  fromY: number,
  dx: number,
  dy: number,
  rings: Outline["rings"],
): void {
  for (const ring of rings) {
    for (let index = 0; index < ring.length; index += 2) {
      const next = (index + 2) % ring.length;
      const x = ring[index] as number;
      const y = ring[index + 1] as number;
      const ex = (ring[next] as number) - x;
      const ey = (ring[next + 1] as number) - y;
      const cross = dx * ey - dy * ex;
      if (cross === 0) continue;
      const share = ((x - fromX) * ey - (y - fromY) * ex) / cross;
      const along = ((x - fromX) * dy - (y - fromY) * dx) / cross;
      if (share > 0 && share < 1 && along >= 0 && along <= 1) push(cuts, share);
    }
  }
}

/**
 * Points well inside: the middle of the bounds where it lies within, and the middle of the roomiest
 * level stretch half way between two neighbouring heights of corners, where no corner is in the way.
 */
function addInnerPoints(outline: Outline): void {
  const { rings } = outline;
  const { minX, minY, maxX, maxY } = outline.bounds;
  const middleX = (minX + maxX) / 2;
  const middleY = (minY + maxY) / 2;
  if (outlineContains(outline, middleX, middleY)) {
    push(samples, middleX);
    push(samples, middleY);
  }
  heights.count = 0;
  for (const ring of rings) {
    for (let at = 1; at < ring.length; at += 2) push(heights, ring[at] as number);
  }
  sort(heights);
  let roomiest = 0;
  let bestX = 0;
  let bestY = 0;
  for (let index = 1; index < heights.count; index += 1) {
    const low = heights.values[index - 1] as number;
    const high = heights.values[index] as number;
    if (high - low <= roomiest) continue;
    const y = (low + high) / 2;
    const left = minX - 1;
    const width = maxX + 1 - left;
    cuts.count = 0;
    addEdgeCuts(left, y, width, 0, rings);
    sort(cuts);
    for (let cut = 0; cut < cuts.count; cut += 2) {
      // Along a line that meets no corner, every other piece between two edges is inside.
      const from = left + (cuts.values[cut] as number) * width;
      const to = cut + 1 < cuts.count ? left + (cuts.values[cut + 1] as number) * width : from;
      const room = Math.min(high - low, to - from);
      if (room <= roomiest) continue;
      roomiest = room;
      bestX = (from + to) / 2;
      bestY = y;
    }
  }
  if (roomiest === 0) return;
  push(samples, bestX);
  push(samples, bestY);
}
