/**
 * A lay-out of the years as a search changes it: what each season and each rule of rest costs, kept
 * so that a change of a variety looks only at its seasons and its crossing set.
 */
import { COVERED, FIRST_YEAR_LOAD, SEED_LOAD, loadPrice } from "./item-years.ts";
import { coversOfSet, restGround } from "./season-work.ts";
import { type YearsItem, type YearsProblem, isFirstYear, isGrown } from "./years-problem.ts";

/** Points of what must not be, so that a search leaves it before all else. */
export const FAULT = 10_000;
/** Square metres that rounding may be off. */
const TOLERANCE_M2 = 1e-6;

/** What one season holds. */
interface Held {
  groundM2: number;
  grown: number;
  firstYear: number;
  cages: number;
  bags: number;
  tooMany: number;
}

type SetHeld = Pick<Held, "cages" | "bags" | "tooMany">;

export interface YearsState {
  readonly problem: YearsProblem;
  /** For each item its seasons, as bits. */
  readonly years: number[];
  readonly seasons: readonly Held[];
  /** By set, then by season. */
  readonly sets: readonly (readonly SetHeld[])[];
  readonly seasonPoints: number[];
  readonly restPoints: number[];
  readonly setsOf: readonly (readonly number[])[];
  readonly restsOf: readonly (readonly number[])[];
  readonly price: number;
}

/** Nothing is grown yet. */
export function emptyYears(problem: YearsProblem): YearsState {
  const perSeason = <T>(make: () => T) => Array.from({ length: problem.seasons }, make);
  const homes = (lists: readonly { readonly members: readonly number[] }[]) =>
    problem.items.map((_, item) =>
      lists.flatMap(({ members }, at) => (members.includes(item) ? [at] : [])),
    );
  return {
    problem,
    years: problem.items.map(() => 0),
    seasons: perSeason(() => ({
      groundM2: 0,
      grown: 0,
      firstYear: 0,
      cages: 0,
      bags: 0,
      tooMany: 0,
    })),
    sets: problem.sets.map(() => perSeason(() => ({ cages: 0, bags: 0, tooMany: 0 }))),
    seasonPoints: perSeason(() => 0),
    restPoints: problem.rests.map(() => 0),
    setsOf: homes(problem.sets),
    restsOf: homes(problem.rests),
    price: loadPrice(problem),
  };
}

export type YearsChange = readonly (readonly [item: number, bits: number])[];

/** Makes a change; gives what it adds to the points of seasons and ground, without the items' own. */
export function changeYears(state: YearsState, change: YearsChange): number {
  let seasonBits = 0;
  const sets = new Set<number>();
  const rests = new Set<number>();
  for (const [item, to] of change) {
    const from = state.years[item] ?? 0;
    seasonBits |= (from ^ to) | ((from ^ to) >> 1);
    hold(state, item, from, -1);
    hold(state, item, to, 1);
    state.years[item] = to;
    for (const set of state.setsOf[item] ?? []) sets.add(set);
    for (const rest of state.restsOf[item] ?? []) rests.add(rest);
  }
  let difference = 0;
  for (let season = 0; season < state.problem.seasons; season += 1) {
    if ((seasonBits & (1 << season)) === 0) continue;
    for (const set of sets) holdSet(state, set, season);
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

/** Adds what an item takes in its seasons, or takes it out. */
function hold({ problem, seasons }: YearsState, index: number, bits: number, by: 1 | -1): void {
  const item = problem.items[index] as YearsItem;
  for (const [season, held] of seasons.entries()) {
    const grown = isGrown(bits, season) ? by : 0;
    const firstYear = isFirstYear(item, bits, season) ? by : 0;
    held.grown += grown;
    held.firstYear += firstYear;
    held.groundM2 += (grown + firstYear) * item.groundM2;
  }
}

/** Works out anew what a set needs in a season. */
function holdSet({ problem, years, seasons, sets }: YearsState, at: number, season: number): void {
  const set = problem.sets[at];
  const was = sets[at]?.[season];
  const held = seasons[season];
  if (!set || !was || !held) return;
  const grown = set.members.filter((item) => isGrown(years[item] ?? 0, season));
  const { covered, tooMany } = coversOfSet(problem, set, grown);
  const cages = covered.filter((item) => problem.items[item]?.cover === "cage").length;
  const bags = covered.length - cages;
  held.cages += cages - was.cages;
  held.bags += bags - was.bags;
  held.tooMany += tooMany - was.tooMany;
  Object.assign(was, { cages, bags, tooMany });
}

function seasonPointsOf({ problem, seasons, price }: YearsState, season: number): number {
  const held = seasons[season] as Held;
  const { covers, groundM2, mostVarieties } = problem;
  const over =
    held.tooMany +
    Math.max(0, held.cages - covers.cage) +
    Math.max(0, held.bags - covers.bag) +
    Math.max(0, held.grown - mostVarieties) +
    (held.groundM2 > groundM2 + TOLERANCE_M2 ? held.groundM2 / groundM2 : 0);
  const load = held.grown * SEED_LOAD + held.firstYear * FIRST_YEAR_LOAD;
  return (held.cages + held.bags) * COVERED + (price * load * (load + 1)) / 2 + FAULT * over;
}

function restPointsOf({ problem, years }: YearsState, index: number): number {
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
    if (sum > problem.landM2 + TOLERANCE_M2) over += sum / problem.landM2;
  }
  return over * FAULT;
}
