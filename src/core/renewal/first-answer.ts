/**
 * A lay-out of the years at once: varieties that have least choice first, each where it costs least,
 * then changes of one or two varieties while they help. The same problem gives the same answer.
 */
import { seededRandom } from "../arrange/seeded.ts";
import { type ItemYears, yearsOfItem } from "./item-years.ts";
import { restGround, seasonWork } from "./season-work.ts";
import type { Years, YearsProblem } from "./years-problem.ts";

/** Points of what must not be, so that a search leaves it before all else. */
const FAULT = 10_000;
/** Changes tried for each variety that has a choice; of large collections fewer, as each takes longer. */
const TRIES_EACH = 80;
const MOST_LOOKS = 10_000_000;
const SEED = 1;

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
  const state = startState(problem, choices);
  improve(state);
  return state.years;
}

interface State {
  readonly problem: YearsProblem;
  readonly choices: readonly (readonly ItemYears[])[];
  readonly years: number[];
  /** Points of each season and of each rule of rest as they stand. */
  readonly seasonPoints: number[];
  readonly restPoints: number[];
  readonly restsOf: readonly (readonly number[])[];
}

function startState(problem: YearsProblem, choices: State["choices"]): State {
  const years = problem.items.map(() => 0);
  const state: State = {
    problem,
    choices,
    years,
    seasonPoints: Array.from({ length: problem.seasons }, () => 0),
    restPoints: problem.rests.map(() => 0),
    restsOf: problem.items.map((_, item) =>
      problem.rests.flatMap(({ members }, rest) => (members.includes(item) ? [rest] : [])),
    ),
  };
  refresh(state, [], (1 << problem.seasons) - 1, problem.rests.keys());
  const order = [...choices.keys()].sort(
    (a, b) => (choices[a]?.length ?? 0) - (choices[b]?.length ?? 0) || a - b,
  );
  for (const item of order) {
    let best: { readonly way: ItemYears; readonly points: number } | null = null;
    for (const way of choices[item] ?? []) {
      const points = way.points + changePoints(state, [[item, way.bits]]);
      if (best === null || points < best.points) best = { way, points };
    }
    if (best) apply(state, [[item, best.way.bits]]);
  }
  return state;
}

type Change = readonly (readonly [item: number, bits: number])[];

function seasonPointsOf({ problem, years }: State, season: number): number {
  const work = seasonWork(problem, (item) => years[item] ?? 0, season);
  const { covers, groundM2, mostVarieties } = problem;
  const over =
    work.tooMany.reduce((sum, [, count]) => sum + count, 0) +
    Math.max(0, work.cages - covers.cage) +
    Math.max(0, work.bags - covers.bag) +
    Math.max(0, work.grown.length - mostVarieties) +
    (work.groundM2 > groundM2 + 1e-6 ? 1 + (work.groundM2 - groundM2) / groundM2 : 0);
  return work.points + FAULT * over;
}

function restPointsOf({ problem, years }: State, index: number): number {
  const rest = problem.rests[index];
  if (!rest) return 0;
  const bitsOf = (item: number) => years[item] ?? 0;
  let over = 0;
  for (let season = 0; season < problem.seasons; season += 1) {
    const here = restGround(problem, rest, bitsOf, season);
    if (here === 0) continue;
    let sum = here;
    for (let back = 1; back <= rest.years; back += 1) {
      sum += restGround(problem, rest, bitsOf, season - back);
    }
    if (sum > problem.landM2 + 1e-6) over += 1 + (sum - problem.landM2) / problem.landM2;
  }
  return over * FAULT;
}

/** Works out anew what seasons and rules of rest cost after items changed; gives the difference. */
function refresh(
  state: State,
  changed: Change,
  seasonBits: number,
  rests: Iterable<number>,
): number {
  for (const [item, bits] of changed) state.years[item] = bits;
  let difference = 0;
  for (let season = 0; season < state.problem.seasons; season += 1) {
    if ((seasonBits & (1 << season)) === 0) continue;
    const points = seasonPointsOf(state, season);
    difference += points - (state.seasonPoints[season] ?? 0);
    state.seasonPoints[season] = points;
  }
  for (const rest of rests) {
    const points = restPointsOf(state, rest);
    difference += points - (state.restPoints[rest] ?? 0);
    state.restPoints[rest] = points;
  }
  return difference;
}

/** Seasons that a change touches, and those before in which a biennial stands. */
function touched(state: State, change: Change): number {
  let bits = 0;
  for (const [item, to] of change) bits |= (state.years[item] ?? 0) ^ to;
  return bits | (bits >> 1);
}

function apply(state: State, change: Change): number {
  const rests = new Set(change.flatMap(([item]) => state.restsOf[item] ?? []));
  return refresh(state, change, touched(state, change), rests);
}

/** What a change adds to the points of seasons and ground; the state is left as it was. */
function changePoints(state: State, change: Change): number {
  const back = change.map(([item]) => [item, state.years[item] ?? 0] as const);
  const difference = apply(state, change);
  apply(state, back);
  return difference;
}

function improve(state: State): void {
  const { choices, years } = state;
  const next = seededRandom(SEED);
  const below = (count: number) => Math.floor(next() * count);
  const free = [...choices.keys()].filter((item) => (choices[item]?.length ?? 0) > 1);
  if (free.length === 0) return;
  const points = years.map(
    (bits, item) => choices[item]?.find((way) => way.bits === bits)?.points ?? 0,
  );
  const tries = Math.min(TRIES_EACH * free.length, MOST_LOOKS / years.length);
  for (let at = 0; at < tries; at += 1) {
    // One other way for one variety, and now and then for two at once, so that they can change places.
    const one = free[below(free.length)] as number;
    const two = next() < 0.5 ? (free[below(free.length)] as number) : one;
    const wayOf = (item: number) => {
      const ways = choices[item] as readonly ItemYears[];
      return ways[below(ways.length)] as ItemYears;
    };
    const ways = new Map([[one, wayOf(one)]]);
    if (two !== one) ways.set(two, wayOf(two));
    const change = [...ways].map(([item, way]) => [item, way.bits] as const);
    const back = change.map(([item]) => [item, years[item] ?? 0] as const);
    const own = [...ways].reduce((sum, [item, way]) => sum + way.points - (points[item] ?? 0), 0);
    if (own + apply(state, change) > 1e-9) apply(state, back);
    else for (const [item, way] of ways) points[item] = way.points;
  }
}
