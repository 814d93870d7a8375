/**
 * A lay-out of the years at once: varieties that have least choice first, each where it costs least,
 * then changes of one or two varieties while they help. The same problem gives the same answer.
 */
import { seededRandom } from "../arrange/seeded.ts";
import { type ItemYears, yearsOfItem } from "./item-years.ts";
import type { Years, YearsProblem } from "./years-problem.ts";
import { FAULT, type YearsState, changeYears, emptyYears } from "./years-state.ts";

/** Changes tried for each variety that has a choice, and of large collections in all. */
const TRIES_EACH = 300;
const MOST_TRIES = 200_000;
const SEED = 1;

type Choices = readonly (readonly ItemYears[])[];

/**
 * The best lay-out found. Where a variety has no way at all, and where no lay-out without fault was
 * found, faults stay: judge it.
 */
export function firstAnswer(problem: YearsProblem): Years {
  const choices = problem.items.map((_, index) => {
    const ways = yearsOfItem(problem, index);
    const byHand = problem.byHand[index]?.grown ?? 0;
    return ways.length > 0 ? ways : [{ bits: byHand, points: FAULT }];
  });
  const state = emptyYears(problem);
  placeAll(state, choices);
  improve(state, choices);
  return state.years;
}

function placeAll(state: YearsState, choices: Choices): void {
  const order = [...choices.keys()].sort(
    (a, b) => (choices[a]?.length ?? 0) - (choices[b]?.length ?? 0) || a - b,
  );
  for (const item of order) {
    let best: { readonly bits: number; readonly points: number } | null = null;
    for (const { bits, points: own } of choices[item] ?? []) {
      const points = own + changeYears(state, [[item, bits]]);
      changeYears(state, [[item, 0]]);
      if (best === null || points < best.points) best = { bits, points };
    }
    if (best) changeYears(state, [[item, best.bits]]);
  }
}

function improve(state: YearsState, choices: Choices): void {
  const { years } = state;
  const next = seededRandom(SEED);
  const below = (count: number) => Math.floor(next() * count);
  const free = [...choices.keys()].filter((item) => (choices[item]?.length ?? 0) > 1);
  if (free.length === 0) return;
  const points = years.map(
    (bits, item) => choices[item]?.find((way) => way.bits === bits)?.points ?? 0,
  );
  const wayOf = (item: number) => {
    const ways = choices[item] as readonly ItemYears[];
    return ways[below(ways.length)] as ItemYears;
  };
  const tries = Math.min(TRIES_EACH * free.length, MOST_TRIES);
  for (let at = 0; at < tries; at += 1) {
    // One other way for one variety, and now and then for two at once, so that they can change places.
    const one = free[below(free.length)] as number;
    const two = next() < 0.5 ? (free[below(free.length)] as number) : one;
    const ways = new Map([[one, wayOf(one)]]);
    if (two !== one) ways.set(two, wayOf(two));
    const change = [...ways].map(([item, way]) => [item, way.bits] as const);
    const back = change.map(([item]) => [item, years[item] ?? 0] as const);
    const own = [...ways].reduce((sum, [item, way]) => sum + way.points - (points[item] ?? 0), 0);
    if (own + changeYears(state, change) > 1e-9) changeYears(state, back);
    else for (const [item, way] of ways) points[item] = way.points;
  }
}
