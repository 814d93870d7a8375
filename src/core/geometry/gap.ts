/**
 * Shortest distance between two outlines and the two points where it is measured. Exact up to
 * floating point: every corner is measured against every edge of the other outline, both ways,
 * after a test for crossing edges and for one outline lying inside the other (distance 0).
 * Cost is the product of the corner counts, less what the bounds of the other outline rule out.
 */
import { outlineContains, type Outline } from "./outline.ts";
import type { Point } from "./point.ts";

export interface Gap {
  /** Metres; 0 when the outlines touch, overlap or lie inside each other. */
  readonly distanceM: number;
  /** Point of the first outline. */
  readonly from: Point;
  /** Point of the second outline. */
  readonly to: Point;
}

/**
 * The same two outlines always give the same distance and the same two points, whichever is asked
 * for first: what is measured once holds both ways.
 */
export function gapBetween(a: Outline, b: Outline): Gap {
  return gapWithin(a, b, Infinity) as Gap;
}

/** The gap where it is less than a limit in metres, give or take rounding; null: they lie farther apart. */
export function gapWithin(a: Outline, b: Outline, limitM: number): Gap | null {
  if (!gapInto(a, b, limitM, measured, 0)) return null;
  return gapAt(measured, 0);
}

/** The gap whose numbers stand in an array from a place on. */
export function gapAt(numbers: Float64Array, at: number): Gap {
  return {
    distanceM: numbers[at] as number,
    from: { x: numbers[at + 1] as number, y: numbers[at + 2] as number },
    to: { x: numbers[at + 3] as number, y: numbers[at + 4] as number },
  };
}

/** A gap as numbers: metres, then x and y of the point of each outline. */
export const GAP_NUMBERS = 5;
const measured = new Float64Array(GAP_NUMBERS);

/**
 * The same without making anything: puts the gap's numbers into an array from a place on, and says
 * whether there is one; what was there stays where there is none.
 */
export function gapInto(
  a: Outline,
  b: Outline,
  limitM: number,
  into: Float64Array,
  at: number,
): boolean {
  const isTurned = isMeasuredAfter(a, b);
  const [first, second] = isTurned ? [b, a] : [a, b];
  const shared = sharedPoint(first, second);
  if (shared !== null) {
    into[at] = 0;
    into[at + 1] = into[at + 3] = shared.x;
    into[at + 2] = into[at + 4] = shared.y;
    return true;
  }
  const [ofFirst, ofSecond] = isTurned ? [3, 1] : [1, 3];
  const limit = limitSquare(limitM);
  const square = nearest(first, second, limit);
  if (square < limit) putFound(into, at, ofFirst, ofSecond);
  const less = nearest(second, first, square);
  if (less < square) putFound(into, at, ofSecond, ofFirst);
  return less < limit;
}

/** Which of two outlines is measured first: that with the lesser bounds, else the lesser corners. */
function isMeasuredAfter(
  { bounds: a, rings }: Outline,
  { bounds: b, rings: others }: Outline,
): boolean {
  const by = a.minX - b.minX || a.minY - b.minY;
  return by === 0 ? String(rings[0]) > String(others[0]) : by > 0;
}

/** Beyond a limit by so little it may be rounding: whoever asked looks at the distance itself. */
const LIMIT_SLACK = 1 + 1e-9;

/** What the square of a distance must be less than, to be found within a limit in metres. */
export const limitSquare = (limitM: number): number => limitM * limitM * LIMIT_SLACK;

/** Puts what was found last where it belongs. @param corner, on which of the numbers is the x of each */
export function putFound(into: Float64Array, at: number, corner: number, on: number): void {
  into[at] = Math.sqrt(found.square);
  into[at + corner] = found.cornerX;
  into[at + corner + 1] = found.cornerY;
  into[at + on] = found.onX;
  into[at + on + 1] = found.onY;
}

/** A point both outlines hold, or null when they lie apart. */
function sharedPoint(a: Outline, b: Outline): Point | null {
  if (
    a.bounds.minX > b.bounds.maxX ||
    b.bounds.minX > a.bounds.maxX ||
    a.bounds.minY > b.bounds.maxY ||
    b.bounds.minY > a.bounds.maxY
  ) {
    return null;
  }
  if (a.hasInside && b.hasInside) {
    for (const ringA of a.rings) {
      for (const ringB of b.rings) {
        const crossing = ringCrossing(ringA, ringB);
        if (crossing !== null) return crossing;
      }
    }
  }
  return innerCorner(a, b) ?? innerCorner(b, a);
}

/** A corner of the first outline that lies inside the second. One per ring is enough: none cross. */
function innerCorner(inner: Outline, outer: Outline): Point | null {
  if (!outer.hasInside) return null;
  for (const ring of inner.rings) {
    const x = ring[0] as number;
    const y = ring[1] as number;
    if (outlineContains(outer, x, y)) return { x, y };
  }
  return null;
}

/** A point where an edge of one ring properly crosses an edge of the other, or null. */
function ringCrossing(a: Float64Array, b: Float64Array): Point | null {
  let ax = a[a.length - 2] as number;
  let ay = a[a.length - 1] as number;
  for (let i = 0; i < a.length; i += 2) {
    const nextAx = a[i] as number;
    const nextAy = a[i + 1] as number;
    const dx = nextAx - ax;
    const dy = nextAy - ay;
    let bx = b[b.length - 2] as number;
    let by = b[b.length - 1] as number;
    let sideB = dx * (by - ay) - dy * (bx - ax);
    for (let j = 0; j < b.length; j += 2) {
      const nextBx = b[j] as number;
      const nextBy = b[j + 1] as number;
      const nextSideB = dx * (nextBy - ay) - dy * (nextBx - ax);
      if (sideB < 0 !== nextSideB < 0) {
        const ex = nextBx - bx;
        const ey = nextBy - by;
        const sideA = ex * (ay - by) - ey * (ax - bx);
        const nextSideA = ex * (nextAy - by) - ey * (nextAx - bx);
        if (sideA < 0 !== nextSideA < 0) {
          // Edges on one line have sides that are only rounding: their boxes tell them apart.
          const minX = Math.max(Math.min(ax, nextAx), Math.min(bx, nextBx));
          const maxX = Math.min(Math.max(ax, nextAx), Math.max(bx, nextBx));
          const minY = Math.max(Math.min(ay, nextAy), Math.min(by, nextBy));
          const maxY = Math.min(Math.max(ay, nextAy), Math.max(by, nextBy));
          if (minX <= maxX && minY <= maxY) {
            const share = sideB / (sideB - nextSideB);
            return {
              x: Math.min(Math.max(bx + share * ex, minX), maxX),
              y: Math.min(Math.max(by + share * ey, minY), maxY),
            };
          }
        }
      }
      bx = nextBx;
      by = nextBy;
      sideB = nextSideB;
    }
    ax = nextAx;
    ay = nextAy;
  }
  return null;
}

/** From a place to the nearest edge of an outline, also from inside it. */
export function gapToEdge(place: Point, outline: Outline): Gap {
  return {
    distanceM: Math.sqrt(squareToEdge(place.x, place.y, outline, Infinity)),
    from: place,
    to: { x: found.onX, y: found.onY },
  };
}

/**
 * What was found last: the square of the distance, the corner, the place on the edge. One for all,
 * read at once: a whole-plan check measures tens of thousands of pairs, and what each would leave
 * behind costs more to clear away than to measure.
 */
const found = { square: 0, cornerX: 0, cornerY: 0, onX: 0, onY: 0 };

/**
 * The square of the distance from the nearest corner of `a` to an edge of `b`, with where it is
 * measured left in `found`, if less than `limit`; else `limit`.
 */
function nearest(a: Outline, b: Outline, limit: number): number {
  let best = limit;
  const { minX, minY, maxX, maxY } = b.bounds;
  for (const ring of a.rings) {
    for (let i = 0; i < ring.length; i += 2) {
      const x = ring[i] as number;
      const y = ring[i + 1] as number;
      const outX = x < minX ? minX - x : x > maxX ? x - maxX : 0;
      const outY = y < minY ? minY - y : y > maxY ? y - maxY : 0;
      if (outX * outX + outY * outY < best) best = squareToEdge(x, y, b, best);
    }
  }
  return best;
}

/**
 * The square of the distance from a place to the nearest edge, also from inside, with the place and
 * its nearest left in `found`, if less than `limit`; else `limit`.
 */
export function squareToEdge(x: number, y: number, { rings }: Outline, limit: number): number {
  let best = limit;
  lookFrom(x, y);
  for (const ring of rings) best = squareToRing(ring, 0, ring.length, best);
  return best;
}

/** Where `squareToRing` measures from. */
const place = { x: 0, y: 0 };

export function lookFrom(x: number, y: number): void {
  place.x = x;
  place.y = y;
}

/** The same from where `lookFrom` said, of a ring whose coordinates lie in an array. */
export function squareToRing(
  corners: Float64Array,
  from: number,
  end: number,
  limit: number,
): number {
  const { x, y } = place;
  let best = limit;
  let onX = 0;
  let onY = 0;
  let fromX = corners[end - 2] as number;
  let fromY = corners[end - 1] as number;
  for (let at = from; at < end; at += 2) {
    const toX = corners[at] as number;
    const toY = corners[at + 1] as number;
    const ex = toX - fromX;
    const ey = toY - fromY;
    const dx = x - fromX;
    const dy = y - fromY;
    const along = dx * ex + dy * ey;
    const lengthSquare = ex * ex + ey * ey;
    // Past its far end another edge begins, which is as near or nearer.
    if (along <= 0 || along < lengthSquare) {
      const across = dx * ey - dy * ex;
      if (along <= 0 || across * across < best * lengthSquare) {
        const share = along <= 0 ? 0 : along / lengthSquare;
        const px = fromX + share * ex;
        const py = fromY + share * ey;
        const square = (x - px) * (x - px) + (y - py) * (y - py);
        if (square < best) {
          best = square;
          onX = px;
          onY = py;
        }
      }
    }
    fromX = toX;
    fromY = toY;
  }
  if (best < limit) {
    found.square = best;
    found.cornerX = x;
    found.cornerY = y;
    found.onX = onX;
    found.onY = onY;
  }
  return best;
}
