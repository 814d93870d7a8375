/** Moves the search tries: a shift along the bed, a jump to another, a swap, and back home. */
import type { RectangleShape } from "../model/plan.ts";
import type { ArrangeProblem, Piece, Place, Room } from "./arrange-problem.ts";
import type { ArrangeState } from "./arrange-state.ts";

export interface Step {
  readonly index: number;
  readonly place: Place | null;
}

/** Share of steps of each sort, added up. */
const SHIFTS = 0.5;
const JUMPS = 0.78;
const SWAPS = 0.94;

/** One or, for a swap, two steps; none when the piece cannot do what was drawn. */
export function proposedSteps(
  problem: ArrangeProblem,
  state: ArrangeState,
  index: number,
  reach: number,
  random: () => number,
): readonly Step[] {
  const drawn = random();
  if (drawn < SHIFTS) return shifted(problem, state, index, reach, random);
  if (drawn < JUMPS) return [{ index, place: jumped(problem, state, index, random) }];
  if (drawn < SWAPS) return swapped(problem, state, index, random);
  return state.places[index] === null ? [] : [{ index, place: null }];
}

/** Where a piece lies in bed terms; null when it lies in no bed, or crooked. */
export function placeOf(
  { pieces }: ArrangeProblem,
  state: ArrangeState,
  index: number,
): Place | null {
  return state.places[index] ?? pieces[index]?.homePlace ?? null;
}

/** A place held within the room a piece has in a bed. */
export function heldPlace({ rooms }: Piece, { bed, across, along }: Place): Place | null {
  const room = rooms.find((entry) => entry.bed === bed);
  if (!room) return null;
  return {
    bed,
    across: Math.min(room.across, Math.max(-room.across, across)),
    along: Math.min(room.along, Math.max(-room.along, along)),
  };
}

function shifted(
  problem: ArrangeProblem,
  state: ArrangeState,
  index: number,
  reach: number,
  random: () => number,
): readonly Step[] {
  const from = placeOf(problem, state, index);
  const piece = problem.pieces[index] as Piece;
  if (!from) return [{ index, place: jumped(problem, state, index, random) }];
  const place = heldPlace(piece, {
    bed: from.bed,
    across: from.across + reach * bell(random),
    along: from.along + reach * bell(random),
  });
  return place ? [{ index, place }] : [];
}

/** Somewhere in a bed: anywhere, at one of its ends, or close beside what lies there. */
function jumped(
  problem: ArrangeProblem,
  state: ArrangeState,
  index: number,
  random: () => number,
): Place {
  const piece = problem.pieces[index] as Piece;
  const room = pick(piece.rooms, random);
  const across = random() < 0.5 ? 0 : (random() * 2 - 1) * room.across;
  return { bed: room.bed, across, along: alongFor(problem, state, room, index, random) };
}

function alongFor(
  problem: ArrangeProblem,
  state: ArrangeState,
  room: Room,
  index: number,
  random: () => number,
): number {
  const drawn = random();
  if (drawn < 0.3) return room.along * (random() < 0.5 ? 1 : -1);
  if (drawn < 0.6) {
    const other = Math.floor(random() * problem.pieces.length);
    const there = other === index ? null : placeOf(problem, state, other);
    const theirs = problem.pieces[other]?.rooms.find(({ bed }) => bed === room.bed);
    if (there?.bed === room.bed && theirs) {
      const half = (problem.beds[room.bed] as RectangleShape).lengthM / 2;
      const apart = half - room.along + (half - theirs.along);
      const along = there.along + apart * (random() < 0.5 ? 1 : -1);
      if (Math.abs(along) <= room.along) return along;
    }
  }
  return (random() * 2 - 1) * room.along;
}

function swapped(
  problem: ArrangeProblem,
  state: ArrangeState,
  index: number,
  random: () => number,
): readonly Step[] {
  const other = Math.floor(random() * problem.pieces.length);
  const [here, there] = [placeOf(problem, state, index), placeOf(problem, state, other)];
  if (other === index || !here || !there) return [];
  const to = heldPlace(problem.pieces[index] as Piece, there);
  const back = heldPlace(problem.pieces[other] as Piece, here);
  return to && back
    ? [
        { index, place: to },
        { index: other, place: back },
      ]
    : [];
}

/** About a bell: mostly near 0, at most 1.5 either way. */
function bell(random: () => number): number {
  return random() + random() + random() - 1.5;
}

function pick<T>(list: readonly T[], random: () => number): T {
  return list[Math.floor(random() * list.length)] as T;
}
