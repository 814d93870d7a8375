/**
 * Looks for an arrangement with no conflict, or the fewest and mildest, that moves little.
 * Simulated annealing: seeded and bounded by a number of steps, so that the same input gives the
 * same answer; it yields now and then, so that its caller can show progress or stop it.
 */
import type { ArrangeProblem, Piece, Place } from "./arrange-problem.ts";
import { heldPlace, proposedSteps } from "./arrange-moves.ts";
import {
  NO_TROUBLE,
  type ArrangeState,
  type Trouble,
  added,
  energyOf,
  isLess,
  mildness,
  put,
  startState,
  troubleOf,
  wholeTrouble,
} from "./arrange-state.ts";
import { seededRandom } from "./seeded.ts";

export interface AnnealSettings {
  readonly seed: number;
  /** Steps to try at most. */
  readonly steps: number;
}

export interface AnnealProgress {
  readonly done: number;
  readonly best: Trouble;
}

export interface Arrangement {
  readonly places: readonly (Place | null)[];
  readonly trouble: Trouble;
}

/** How much more trouble a step may bring, at the start and the end of a round. */
const HOT = 1.2;
const COLD = 0.0008;
const YIELD_EVERY = 400;
/** Pieces in trouble are picked this often; else any. */
const IN_TROUBLE = 0.7;
const TIDY_PASSES = 12;
const ROUNDS = 5;
/**
 * How much missing distance counts. It leads the way where there is room for all; where the rounds
 * before found none, fewest conflicts may want a few that are bad: every other round minds it little.
 */
const SHORT_WEIGHT = { leading: 2, minor: 0.2 } as const;

/**
 * Yields its progress; returns the best arrangement found, tidied up. Handed true when it goes
 * on, it stops with what it has.
 */
export function* anneal(
  problem: ArrangeProblem,
  { seed, steps }: AnnealSettings,
): Generator<AnnealProgress, Arrangement, boolean> {
  const random = seededRandom(seed);
  const state = startState(problem);
  let trouble = wholeTrouble(problem, state);
  let best: Arrangement = { places: [...state.places], trouble };
  const perRound = Math.max(1, Math.floor(steps / ROUNDS));
  let shortWeight: number = SHORT_WEIGHT.leading;
  for (let done = 0; done < perRound * ROUNDS && problem.pieces.length > 0; done += 1) {
    const share = (done % perRound) / perRound;
    if (done > 0 && share === 0) {
      if (isPerfect(best.trouble)) break;
      restore(problem, state, best.places);
      trouble = best.trouble;
      const isMinor = best.trouble.conflicts > 0 && (done / perRound) % 2 === 1;
      shortWeight = isMinor ? SHORT_WEIGHT.minor : SHORT_WEIGHT.leading;
    }
    const heat = HOT * (COLD / HOT) ** share;
    const index = pickPiece(problem, state, random);
    const reach = Math.max(0.02, problem.spanM * 0.25 * Math.sqrt(heat / HOT) * random());
    const change = tryStep(problem, state, { index, reach, heat, shortWeight }, random);
    if (change) {
      trouble = added(trouble, change);
      if (isLess(trouble, best.trouble)) best = { places: [...state.places], trouble };
    }
    if (done % YIELD_EVERY === 0 && (yield { done, best: best.trouble })) break;
  }
  return tidied(problem, best);
}

/** Nothing in conflict, nothing on ground it would not lie on, and nothing moved. */
function isPerfect({ overlaps, conflicts, wishes, disturbance }: Trouble): boolean {
  return overlaps === 0 && conflicts === 0 && wishes < 1e-9 && disturbance === 0;
}

function restore(problem: ArrangeProblem, state: ArrangeState, places: readonly (Place | null)[]) {
  places.forEach((place, index) => {
    if (state.places[index] !== place) put(problem, state, index, place);
  });
}

function pickPiece(problem: ArrangeProblem, state: ArrangeState, random: () => number): number {
  const any = () => Math.floor(random() * problem.pieces.length);
  let index = any();
  if (random() > IN_TROUBLE) return index;
  for (let tries = 0; tries < 4; tries += 1) {
    const { overlaps, conflicts, wishes } = troubleOf(problem, state, index);
    if (overlaps + conflicts + wishes > 0) return index;
    index = any();
  }
  return index;
}

interface Attempt {
  readonly index: number;
  readonly reach: number;
  readonly heat: number;
  readonly shortWeight: number;
}

/** Makes a step and says what it changed, or takes it back and says null. */
function tryStep(
  problem: ArrangeProblem,
  state: ArrangeState,
  { index, reach, heat, shortWeight }: Attempt,
  random: () => number,
): Trouble | null {
  const steps = proposedSteps(problem, state, index, reach, random);
  const before = steps.map((step) => state.places[step.index] ?? null);
  let change = NO_TROUBLE;
  for (const step of steps) change = added(change, moved(problem, state, step.index, step.place));
  const gain = energyOf(change, shortWeight);
  if (steps.length > 0 && (gain <= 0 || random() < Math.exp(-gain / heat))) return change;
  steps.forEach((step, at) => put(problem, state, step.index, before[at] ?? null));
  return null;
}

/** Moves one piece and says what that changed. */
function moved(
  problem: ArrangeProblem,
  state: ArrangeState,
  index: number,
  place: Place | null,
): Trouble {
  const before = troubleOf(problem, state, index);
  put(problem, state, index, place);
  return added(troubleOf(problem, state, index), before, -1);
}

/** What moved for nothing goes home or nearer to it, and lengths come to whole centimetres. */
function tidied(problem: ArrangeProblem, { places }: Arrangement): Arrangement {
  const state = startState(problem);
  restore(problem, state, places);
  let isCalmer = true;
  for (let pass = 0; isCalmer && pass < TIDY_PASSES; pass += 1) {
    isCalmer = false;
    for (let index = 0; index < problem.pieces.length; index += 1) {
      for (const place of calmerPlaces(problem, state, index)) {
        if (keep(problem, state, index, place, true)) isCalmer = true;
      }
    }
  }
  for (let index = 0; index < problem.pieces.length; index += 1) {
    const place = state.places[index];
    const piece = problem.pieces[index] as Piece;
    if (!place) continue;
    const rounded = heldPlace(piece, {
      ...place,
      across: onCm(place.across),
      along: onCm(place.along),
    });
    if (rounded) keep(problem, state, index, rounded, false);
  }
  return { places: [...state.places], trouble: wholeTrouble(problem, state) };
}

/** Home, and places part of the way home within the same bed. */
function calmerPlaces(
  problem: ArrangeProblem,
  state: ArrangeState,
  index: number,
): readonly (Place | null)[] {
  const now = state.places[index] ?? null;
  const home = problem.pieces[index]?.homePlace ?? null;
  if (now === null) return [];
  if (home?.bed !== now.bed) return [null];
  const between = [0.75, 0.5, 0.25, 0.1].map((share): Place => ({
    bed: now.bed,
    across: now.across + share * (home.across - now.across),
    along: now.along + share * (home.along - now.along),
  }));
  return [null, ...between];
}

/** Takes a place if it brings no trouble but (unless it must be calmer) a little more moving. */
function keep(
  problem: ArrangeProblem,
  state: ArrangeState,
  index: number,
  place: Place | null,
  mustBeCalmer: boolean,
): boolean {
  const old = state.places[index] ?? null;
  const change = moved(problem, state, index, place);
  const isHarmless = change.overlaps <= 0 && change.conflicts <= 0;
  // Half a millimetre is no calmer: coming ever nearer home must end.
  const isEnough = mustBeCalmer
    ? mildness(change) < -1e-6
    : change.shortfall <= 1e-3 && change.wishes <= 1e-9;
  if (isHarmless && isEnough) return true;
  put(problem, state, index, old);
  return false;
}

function onCm(metres: number): number {
  return Math.round(metres * 100) / 100;
}
