/**
 * Why no lay-out can be: varieties that cannot all be kept, of which any one left out lets the
 * others be. Found by a deletion filter: each is left out in turn, and stays out where what
 * is left still cannot be.
 */
import type { Highs } from "highs";
import { canAllBe } from "./solve-years.ts";
import { type YearsProblem, withoutItems } from "./years-problem.ts";

export interface Clash {
  readonly items: readonly number[];
  /** Whether each of them was shown to be needed; time may run out before. */
  readonly isSmallest: boolean;
}

/** Clashes named at most: whoever has more begins with these. */
const MOST_CLASHES = 6;

/** Clashes that have no variety in common, until what is left can be, or time runs out. */
export function clashesOf(
  problem: YearsProblem,
  highs: Highs,
  clock: () => number,
): readonly Clash[] {
  const clashes: Clash[] = [];
  const left = new Set<number>();
  while (clashes.length < MOST_CLASHES && clock() > 0) {
    const rest = withoutItems(problem, left);
    if (canAllBe(rest, highs, clock()) !== false) break;
    const clash = smallestClash(rest, highs, clock);
    clashes.push(clash);
    for (const item of clash.items) left.add(item);
  }
  return clashes;
}

/**
 * @param problem one of which it is proven that not all can be
 * @param clock seconds left, asked before each look
 */
export function smallestClash(problem: YearsProblem, highs: Highs, clock: () => number): Clash {
  const all = problem.items.map((_, index) => index);
  const start = startOf(problem, all, highs, clock);
  let kept = [...start];
  let isSmallest = true;
  for (const item of start) {
    const fewer = kept.filter((each) => each !== item);
    const left = clock();
    if (left <= 0) return { items: kept, isSmallest: false };
    const isStill = canAllBe(only(problem, fewer), highs, left);
    if (isStill === false) kept = fewer;
    if (isStill === null) isSmallest = false;
  }
  return { items: kept, isSmallest };
}

function only(problem: YearsProblem, items: readonly number[]): YearsProblem {
  const kept = new Set(items);
  return withoutItems(
    problem,
    new Set(problem.items.flatMap((_, index) => (kept.has(index) ? [] : [index]))),
  );
}

/** A single crossing set or variety that cannot be by itself, else all: most clashes lie in one. */
function startOf(
  problem: YearsProblem,
  all: readonly number[],
  highs: Highs,
  clock: () => number,
): readonly number[] {
  const inSets = new Set(problem.sets.flatMap(({ members }) => members));
  const parts = [
    ...problem.sets.map(({ members }) => members),
    ...all.filter((item) => !inSets.has(item)).map((item) => [item]),
  ];
  for (const part of parts) {
    const left = clock();
    if (left <= 0) break;
    if (canAllBe(only(problem, part), highs, left) === false) return part;
  }
  return all;
}
