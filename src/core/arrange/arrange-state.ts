/** One trial arrangement with its trouble, kept up to date as pieces move. */
import { DISTANCE_TOLERANCE_M } from "../checks/isolation-pair.ts";
import { boundsGap } from "../geometry/bounds.ts";
import { gapBetween } from "../geometry/gap.ts";
import type { Outline } from "../geometry/outline.ts";
import { pointDistance } from "../geometry/point.ts";
import {
  type ArrangeProblem,
  type Piece,
  type Place,
  outlineAt,
  overlapOf,
  shapeAt,
} from "./arrange-problem.ts";
import { wishesMissed } from "./rotation-wishes.ts";

/** How bad an arrangement is. Fewer overlaps go first, then fewer conflicts, then mildness. */
export interface Trouble {
  /** Pairs on the same ground. */
  readonly overlaps: number;
  /** Pairs too close, either way round. */
  readonly conflicts: number;
  /** Shares of the required distances that are missing, added up; half for each pair without dates. */
  readonly shortfall: number;
  /** Plantings on ground they would rather not lie on, weighted; see wishWeight. */
  readonly wishes: number;
  /** 0 to 1: how much was moved, and how far. */
  readonly disturbance: number;
}

export interface ArrangeState {
  /** Where each piece lies; null: where it lay at the start. */
  readonly places: (Place | null)[];
  /** Outlines of all stands: pieces first, then what stays. */
  readonly outlines: Outline[];
  /** Whether each stands on the ground. */
  readonly isGround: readonly boolean[];
}

/** Weights of the search, such that one conflict outweighs every disturbance. */
const OVERLAP_WEIGHT = 12;
const SHORT_WEIGHT = 2;
/** What a pair without dates counts as, however near: nearer makes it no worse. */
const UNDATED_SHORT = 0.5;

/**
 * One number for the search; lower is better.
 * @param shortWeight how much the missing shares of distances count, for whom a conflict is 1
 */
export function energyOf(trouble: Trouble, shortWeight = SHORT_WEIGHT): number {
  const { overlaps, conflicts, shortfall } = trouble;
  const rest = mildness(trouble) - SHORT_WEIGHT * shortfall;
  return OVERLAP_WEIGHT * overlaps + conflicts + shortWeight * shortfall + rest;
}

/** Whether the first is less trouble than the second, by more than rounding. */
export function isLess(a: Trouble, b: Trouble): boolean {
  for (const part of ["overlaps", "conflicts"] as const) {
    if (a[part] !== b[part]) return a[part] < b[part];
  }
  return mildness(a) < mildness(b) - 1e-9;
}

/** Moving for a little more distance that still is not enough is weighed against leaving it alone. */
export function mildness({ shortfall, wishes, disturbance }: Trouble): number {
  return SHORT_WEIGHT * shortfall + wishes + disturbance;
}

/** Volunteers, and a disease in the ground, count about half a conflict each. No source; ours. */
const HEAVY_WEIGHT = 0.5;
/** A wish is worth any move of its own planting, and no more: its disturbance is at most 1. */
const WISH_WEIGHT = 1.1;

/** What a planting adds to the trouble by the ground it lies on. */
function wishWeight({ pieces }: ArrangeProblem, { wishes }: Piece, outline: Outline): number {
  const { volunteers, marks, kin } = wishesMissed(wishes, outline);
  const worth = WISH_WEIGHT / pieces.length;
  return (volunteers + marks) * (HEAVY_WEIGHT + worth) + kin * worth;
}

export function startState(problem: ArrangeProblem): ArrangeState {
  return {
    places: problem.pieces.map(() => null),
    outlines: [...problem.pieces.map(({ homeOutline }) => homeOutline), ...problem.fixed],
    isGround: [...problem.pieces.map(() => true), ...problem.isFixedGround],
  };
}

export function put(
  problem: ArrangeProblem,
  state: ArrangeState,
  index: number,
  place: Place | null,
): void {
  state.places[index] = place;
  state.outlines[index] = outlineAt(problem, problem.pieces[index] as Piece, place);
}

/** The trouble a piece has where it lies; with `before`, only with pieces before it and what stays. */
export function troubleOf(
  problem: ArrangeProblem,
  { places, outlines, isGround }: ArrangeState,
  index: number,
  before = Infinity,
): Trouble {
  const piece = problem.pieces[index] as Piece;
  const outline = outlines[index] as Outline;
  const count = problem.pieces.length;
  const counts = (other: number) => other !== index && (other < before || other >= count);
  let conflicts = 0;
  let shortfall = 0;
  for (const { other, metres, isUndated } of piece.keeps) {
    if (!counts(other)) continue;
    const there = outlines[other] as Outline;
    if (boundsGap(outline.bounds, there.bounds) >= metres) continue;
    const { distanceM } = gapBetween(outline, there);
    if (distanceM >= metres - DISTANCE_TOLERANCE_M) continue;
    conflicts += isUndated ? 0 : 1;
    shortfall += isUndated ? UNDATED_SHORT : (metres - distanceM) / metres;
  }
  let overlaps = 0;
  for (let other = 0; other < outlines.length; other += 1) {
    if (!counts(other) || isGround[other] !== true) continue;
    if (!problem.areTogether(index, other)) continue;
    if (overlapOf(outline, outlines[other] as Outline) > 0) overlaps += 1;
  }
  return {
    overlaps,
    conflicts,
    shortfall,
    wishes: wishWeight(problem, piece, outline),
    disturbance: disturbanceOf(problem, piece, places[index] ?? null),
  };
}

/** A quarter for being moved at all, the rest for how far; shared out over all pieces. */
function disturbanceOf(problem: ArrangeProblem, piece: Piece, place: Place | null): number {
  if (place === null) return 0;
  const share = Math.min(
    1,
    pointDistance(piece.home, shapeAt(problem, piece, place)) / problem.spanM,
  );
  return (0.25 + 0.75 * share) / problem.pieces.length;
}

export const NO_TROUBLE: Trouble = {
  overlaps: 0,
  conflicts: 0,
  shortfall: 0,
  wishes: 0,
  disturbance: 0,
};

/** The trouble of all pieces together, each pair counted once. */
export function wholeTrouble(problem: ArrangeProblem, state: ArrangeState): Trouble {
  return problem.pieces.reduce(
    (sum, _, index) => added(sum, troubleOf(problem, state, index, index)),
    NO_TROUBLE,
  );
}

export function added(a: Trouble, b: Trouble, sign: 1 | -1 = 1): Trouble {
  return {
    overlaps: a.overlaps + sign * b.overlaps,
    conflicts: a.conflicts + sign * b.conflicts,
    shortfall: a.shortfall + sign * b.shortfall,
    wishes: a.wishes + sign * b.wishes,
    disturbance: a.disturbance + sign * b.disturbance,
  };
}
