/**
 * Slots: a finite list of places for each piece, so that all ways to lay them can be reasoned
 * about. Whatever is proven with slots says nothing about places between them.
 */
import { DISTANCE_TOLERANCE_M } from "../checks/isolation-pair.ts";
import { boundsGap } from "../geometry/bounds.ts";
import { gapBetween } from "../geometry/gap.ts";
import type { Outline } from "../geometry/outline.ts";
import {
  type ArrangeProblem,
  type Piece,
  type Place,
  type Room,
  outlineAt,
  overlapOf,
} from "./arrange-problem.ts";

export interface Slot {
  /** Null: where the piece lies now. */
  readonly place: Place | null;
  readonly outline: Outline;
  /** Stands that stay and are too near, counted. */
  readonly conflicts: number;
}

/** Slots of all pieces together: more take long to tell apart. */
const MOST_SLOTS = 1000;
const MOST_EACH = 32;
const LEAST_EACH = 4;
/** Places nearer than this are one, metres. */
const SAME_M = 1e-6;

/**
 * The slots of each piece: where it lies, where a search laid it, and even steps along the middle
 * of every bed it fits, from end to end. Slots on ground that is taken for good are left out.
 */
export function slotsOf(
  problem: ArrangeProblem,
  found: readonly (Place | null)[],
): readonly (readonly Slot[])[] {
  const each = Math.floor(MOST_SLOTS / Math.max(1, problem.pieces.length));
  const budget = Math.min(MOST_EACH, Math.max(LEAST_EACH, each));
  return problem.pieces.map((piece, index) => {
    const at = (place: Place | null) => slotAt(problem, index, place) ?? [];
    const perBed = Math.max(1, Math.floor(budget / piece.rooms.length));
    const searched = found[index] ?? null;
    const places = [
      null,
      ...(searched ? [searched] : []),
      ...piece.rooms
        .flatMap((room) => stepsAlong(room, perBed))
        .filter((place) => !isSame(place, piece.homePlace) && !isSame(place, searched)),
    ];
    return places.flatMap(at);
  });
}

function stepsAlong({ bed, along }: Room, count: number): readonly Place[] {
  if (count === 1 || along === 0) return [{ bed, across: 0, along: 0 }];
  return Array.from({ length: count }, (_, step) => ({
    bed,
    across: 0,
    along: along * ((2 * step) / (count - 1) - 1),
  }));
}

function isSame(a: Place, b: Place | null): boolean {
  if (a.bed !== b?.bed) return false;
  return Math.abs(a.across - b.across) < SAME_M && Math.abs(a.along - b.along) < SAME_M;
}

function slotAt(problem: ArrangeProblem, index: number, place: Place | null): Slot | null {
  const piece = problem.pieces[index] as Piece;
  const first = problem.pieces.length;
  const outline = outlineAt(problem, piece, place);
  const isTaken = problem.fixed.some(
    (other, number) =>
      problem.isFixedGround[number] === true &&
      problem.areTogether(index, first + number) &&
      overlapOf(outline, other) > 0,
  );
  if (isTaken) return null;
  const near = piece.keeps.filter(({ other, metres, isUndated }) => {
    const there = problem.fixed[other - first];
    return there !== undefined && !isUndated && areTooNear(outline, there, metres);
  });
  return { place, outline, conflicts: near.length };
}

/** Whether two outlines are nearer than that, as the checks count it. */
export function areTooNear(a: Outline, b: Outline, metres: number): boolean {
  if (boundsGap(a.bounds, b.bounds) >= metres) return false;
  return gapBetween(a, b).distanceM < metres - DISTANCE_TOLERANCE_M;
}
