/** How much room there is beside a shape, straight out in the four directions of its frame. */
import { type Bounds, boundsGap } from "../../core/geometry/bounds.ts";
import type { Outline } from "../../core/geometry/outline.ts";
import type { Point } from "../../core/geometry/point.ts";
import { type Frame, intoFrame, outOfFrame } from "./snap.ts";

export interface SideGap {
  /** The edge of the shape, and what lies opposite. */
  readonly from: Point;
  readonly to: Point;
  readonly distanceM: number;
}

/** Corners that only touch the strip beside the shape do not lie in it, metres. */
const GRAZE_M = 1e-6;
/** What lies against the shape needs no measure, metres. */
const TOUCHING_M = 0.005;

type Ring = readonly Point[];

/**
 * The nearest of the others on each side, at the place where it comes nearest.
 * @param mostM others further away are not looked at, metres
 */
export function sideGaps(
  outline: Outline,
  turnDeg: number,
  others: readonly Outline[],
  mostM: number,
): readonly SideGap[] {
  const [x = 0, y = 0] = outline.rings[0] ?? [];
  // The nearest boxes first: what lies further off than a gap already found cannot make it less.
  const byDistance = others
    .map((other) => ({ other, leastM: boundsGap(outline.bounds, other.bounds) }))
    .filter(({ leastM }) => leastM <= mostM)
    .sort((a, b) => a.leastM - b.leastM);
  return [0, 90, 180, 270].flatMap((more) => {
    // In each turned frame the gap is looked for to the right.
    const frame: Frame = { origin: { x, y }, turnDeg: turnDeg + more };
    const own = ringsIn(frame, outline);
    let best: { readonly y: number; readonly from: number; readonly to: number } | null = null;
    for (const { other, leastM } of byDistance) {
      if (best && leastM > best.to - best.from) break;
      if (!mayLieRight(frame, outline, other)) continue;
      const found = gapToRight(own, ringsIn(frame, other));
      if (found && (!best || found.to - found.from < best.to - best.from)) best = found;
    }
    if (!best || best.to - best.from > mostM || best.to - best.from < TOUCHING_M) return [];
    return [
      {
        from: outOfFrame(frame, { x: best.from, y: best.y }),
        to: outOfFrame(frame, { x: best.to, y: best.y }),
        distanceM: best.to - best.from,
      },
    ];
  });
}

/** Of hundreds around a shape few lie on any one side: the others are left out before they are turned. */
function mayLieRight(frame: Frame, { bounds: one }: Outline, { bounds: other }: Outline): boolean {
  const [from, to] = [middleOf(one), middleOf(other)].map((middle) => intoFrame(frame, middle));
  const reachM = radiusM(one) + radiusM(other);
  return !from || !to || (Math.abs(to.y - from.y) <= reachM && to.x - from.x >= -reachM);
}

const middleOf = ({ minX, minY, maxX, maxY }: Bounds): Point => ({
  x: (minX + maxX) / 2,
  y: (minY + maxY) / 2,
});

/** Of the circle around a box. */
const radiusM = ({ minX, minY, maxX, maxY }: Bounds) => Math.hypot(maxX - minX, maxY - minY) / 2;

function ringsIn(frame: Frame, { rings }: Outline): readonly Ring[] {
  return rings.map((ring) =>
    Array.from({ length: ring.length / 2 }, (_, index) =>
      intoFrame(frame, { x: ring[index * 2] as number, y: ring[index * 2 + 1] as number }),
    ),
  );
}

/**
 * Between two corners the gap changes evenly, so its least lies at a corner. Where it is the same
 * over a stretch, the middle of the stretch is taken.
 */
function gapToRight(own: readonly Ring[], other: readonly Ring[]) {
  const [ownReach, otherReach] = [reachOf(own), reachOf(other)];
  const low = Math.max(ownReach[0], otherReach[0]) + GRAZE_M;
  const high = Math.min(ownReach[1], otherReach[1]) - GRAZE_M;
  if (low > high) return null;
  const heights = [...own, ...other]
    .flat()
    .map((corner) => Math.min(high, Math.max(low, corner.y)));
  const found = [...new Set([low, high, ...heights])].flatMap((y) => {
    const from = Math.max(...crossings(own, y));
    const to = Math.min(...crossings(other, y).filter((x) => x >= from - GRAZE_M));
    return Number.isFinite(from) && Number.isFinite(to) ? [{ y, from, to }] : [];
  });
  const least = Math.min(...found.map(({ from, to }) => to - from));
  const nearest = found.filter(({ from, to }) => to - from < least + GRAZE_M * 2);
  const [first] = nearest;
  if (!first) return null;
  const ys = nearest.map(({ y }) => y);
  const [bottom, top] = [Math.min(...ys), Math.max(...ys)];
  const middle = nearest.every(({ from }) => Math.abs(from - first.from) < GRAZE_M * 2);
  return middle ? { ...first, y: (bottom + top) / 2 } : first;
}

function reachOf(rings: readonly Ring[]): readonly [number, number] {
  const ys = rings.flat().map(({ y }) => y);
  return [Math.min(...ys), Math.max(...ys)];
}

/** Where edges cross a height, from left to right or not. */
function crossings(rings: readonly Ring[], y: number): readonly number[] {
  return rings.flatMap((ring) =>
    ring.flatMap((a, index) => {
      const b = ring[(index + 1) % ring.length];
      if (!b || a.y === b.y || y < Math.min(a.y, b.y) || y > Math.max(a.y, b.y)) return [];
      return [a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y)];
    }),
  );
}
