/**
 * Plantings that have the same ground one after the other: each is drawn on a sector of its own,
 * with its code there, so that both can be read and taken. Fetched when a plan has such.
 */
import { areOnGroundTogether, groundDays } from "../../core/calendar/ground-time.ts";
import { overlapDepth } from "../../core/geometry/containment.ts";
import { outlineOf, shapeCorners } from "../../core/geometry/outline.ts";
import type { Point } from "../../core/geometry/point.ts";
import type { Layout, Planting } from "../../core/model/plan.ts";
import { boundsGap } from "../../core/geometry/bounds.ts";

/** Its place among those that share its ground, in order of their days. */
interface Turn {
  readonly index: number;
  readonly count: number;
}

/** Lying in each other by less is drawing, not sharing, metres. */
const LEAST_DEPTH_M = 0.05;

const known = new WeakMap<Layout["plantings"], ReadonlyMap<string, Turn>>();

/** Turns of all plantings that share ground; the same map for the same plantings. */
function turnsOf(plantings: Layout["plantings"]): ReadonlyMap<string, Turn> {
  const found = known.get(plantings);
  if (found) return found;
  const made = new Map<string, Turn>();
  for (const [planting, others] of sharers(plantings)) {
    const order = [planting, ...others].sort(byDays);
    made.set(planting.id, { index: order.indexOf(planting), count: order.length });
  }
  known.set(plantings, made);
  return made;
}

/** Each planting that shares its ground with those it does: of two, the one must be cleared. */
function sharers(plantings: Layout["plantings"]): ReadonlyMap<Planting, ReadonlySet<Planting>> {
  const found = new Map<Planting, Set<Planting>>();
  const add = (a: Planting, b: Planting) => {
    const others = found.get(a) ?? new Set();
    found.set(a, others.add(b));
  };
  for (const cleared of plantings) {
    if (cleared.end === undefined) continue;
    for (const other of plantings) {
      if (!doShare(cleared, other)) continue;
      add(cleared, other);
      add(other, cleared);
    }
  }
  return found;
}

function byDays(a: Planting, b: Planting): number {
  return groundDays(a).to - groundDays(b).to || (a.id < b.id ? -1 : 1);
}

function doShare(a: Planting, b: Planting): boolean {
  if (a === b || areOnGroundTogether(a, b)) return false;
  const [one, other] = [outlineOf(a.outline), outlineOf(b.outline)];
  if (boundsGap(one.bounds, other.bounds) > 0) return false;
  return overlapDepth(one, other).distanceM > LEAST_DEPTH_M;
}

/**
 * Corners of the part of its ground a planting is drawn on, sheet metres: cut from corner to
 * corner, which no gardener cuts a bed; null: it has its ground to itself.
 */
export function sectorOf(plantings: Layout["plantings"], planting: Planting): Point[] | null {
  const turn = turnsOf(plantings).get(planting.id);
  if (!turn) return null;
  const [pivot, ...others] = cornersOf(planting);
  if (!pivot) return null;
  // The first of them lies to the left.
  const isLeftFirst = (others[0]?.x ?? 0) <= (others[2]?.x ?? 0);
  const rest = isLeftFirst ? others : others.toReversed();
  const [from, to] = [turn.index / turn.count, (turn.index + 1) / turn.count];
  const middle = rest[1];
  const isRound = from < 0.5 && to > 0.5 && middle !== undefined;
  return [pivot, alongEdges(rest, from), ...(isRound ? [middle] : []), alongEdges(rest, to)];
}

/** Of a rectangle its own, of another shape those of its box. */
function cornersOf({ outline }: Planting): readonly Point[] {
  if (outline.shape === "rectangle") return shapeCorners(outline);
  const { minX, minY, maxX, maxY } = outlineOf(outline).bounds;
  return [
    { x: minX, y: minY },
    { x: maxX, y: minY },
    { x: maxX, y: maxY },
    { x: minX, y: maxY },
  ];
}

/** A point on the two edges beyond the pivot, 0 at the first corner, 1 at the last. */
function alongEdges([a, b, c]: readonly Point[], share: number): Point {
  const [from, to] = share < 0.5 ? [a, b] : [b, c];
  if (!from || !to) return { x: 0, y: 0 };
  const part = share < 0.5 ? share * 2 : share * 2 - 1;
  return { x: from.x + (to.x - from.x) * part, y: from.y + (to.y - from.y) * part };
}
