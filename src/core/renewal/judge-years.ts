/**
 * What stands against a lay-out of the years. One path for the page, for paper, for the command
 * line, and for what search and solver answer: nothing is called good that this finds fault with.
 */
import { diesBy, itemPoints } from "./item-years.ts";
import { type SeasonWork, restGround, seasonWork } from "./season-work.ts";
import { type Years, type YearsProblem, isFirstYear, isGrown, seasonsOf } from "./years-problem.ts";

export type YearsFault =
  /** Not grown in time: its seed may be dead in the season after. */
  | { readonly kind: "dies"; readonly item: number; readonly season: number }
  /** A biennial that would have had to be sown in the season before the first. */
  | { readonly kind: "too soon"; readonly item: number; readonly season: number }
  /** Varieties of one crossing set that find no place apart and no cover. */
  | {
      readonly kind: "together";
      readonly season: number;
      readonly set: number;
      readonly items: readonly number[];
      readonly tooMany: number;
    }
  /** Pollen from around the garden reaches it wherever it stands, and it has no cover. */
  | { readonly kind: "exposed"; readonly item: number; readonly season: number }
  /** More covers than the grower has. */
  | {
      readonly kind: "covers";
      readonly season: number;
      readonly cover: "cage" | "bag";
      readonly items: readonly number[];
      readonly has: number;
    }
  | {
      readonly kind: "ground";
      readonly season: number;
      readonly needsM2: number;
      readonly hasM2: number;
    }
  | {
      readonly kind: "rest";
      readonly season: number;
      readonly rest: number;
      readonly needsM2: number;
      readonly hasM2: number;
    }
  | {
      readonly kind: "work";
      readonly season: number;
      readonly varieties: number;
      readonly most: number;
    };

export interface JudgedYears {
  readonly faults: readonly YearsFault[];
  readonly seasons: readonly SeasonWork[];
  /** What it costs: growing, covers, waiting, uneven work; points of item-years.ts. */
  readonly points: number;
}

/** Square metres that rounding may be off. */
const GROUND_TOLERANCE_M2 = 1e-6;

export function judgeYears(problem: YearsProblem, years: Years): JudgedYears {
  const bitsOf = (item: number) => years[item] ?? 0;
  const numbers = Array.from({ length: problem.seasons }, (_, season) => season);
  const seasons = numbers.map((season) => seasonWork(problem, bitsOf, season));
  const points =
    problem.items.reduce(
      (sum, item, index) => sum + itemPoints(item, bitsOf(index), problem.seasons),
      0,
    ) + seasons.reduce((sum, work) => sum + work.points, 0);
  const faults = [
    ...problem.items.flatMap((_, index) => itemFaults(problem, index, bitsOf(index))),
    ...numbers.flatMap((season) => [
      ...seasonFaults(problem, seasons[season] as SeasonWork, season),
      ...restFaults(problem, bitsOf, season),
    ]),
  ];
  return { faults, seasons, points };
}

function itemFaults(problem: YearsProblem, index: number, bits: number): readonly YearsFault[] {
  const item = problem.items[index];
  if (!item) return [];
  const dies = diesBy(item, bits, problem.seasons);
  const soon = seasonsOf(bits).filter((season) => season < item.first);
  return [
    ...(dies === null ? [] : [{ kind: "dies", item: index, season: dies } as const]),
    ...soon.map((season) => ({ kind: "too soon", item: index, season }) as const),
  ];
}

function seasonFaults(
  problem: YearsProblem,
  work: SeasonWork,
  season: number,
): readonly YearsFault[] {
  const { groundM2, mostVarieties, covers, sets } = problem;
  const faults: YearsFault[] = work.tooMany.map(([set, tooMany]) => ({
    kind: "together",
    season,
    set,
    items: work.grown.filter((index) => sets[set]?.members.includes(index)),
    tooMany,
  }));
  const covered = new Set(work.covered);
  for (const item of work.grown) {
    if (problem.items[item]?.isExposed === true && !covered.has(item)) {
      faults.push({ kind: "exposed", item, season });
    }
  }
  for (const cover of ["cage", "bag"] as const) {
    const items = work.covered.filter((index) => problem.items[index]?.cover === cover);
    if (items.length > covers[cover]) {
      faults.push({ kind: "covers", season, cover, items, has: covers[cover] });
    }
  }
  if (work.groundM2 > groundM2 + GROUND_TOLERANCE_M2) {
    faults.push({ kind: "ground", season, needsM2: work.groundM2, hasM2: groundM2 });
  }
  if (work.grown.length > mostVarieties) {
    faults.push({ kind: "work", season, varieties: work.grown.length, most: mostVarieties });
  }
  return faults;
}

/** Whether all the ground a set bears seed on within its years of rest can be different ground. */
function restFaults(
  problem: YearsProblem,
  bitsOf: (item: number) => number,
  season: number,
): readonly YearsFault[] {
  return problem.rests.flatMap((rest, index): readonly YearsFault[] => {
    const here = restGround(problem, rest, bitsOf, season);
    if (here === 0) return [];
    let needsM2 = here;
    for (let back = 1; back <= rest.years; back += 1) {
      needsM2 += restGround(problem, rest, bitsOf, season - back);
    }
    if (needsM2 <= problem.landM2 + GROUND_TOLERANCE_M2) return [];
    return [{ kind: "rest", season, rest: index, needsM2, hasM2: problem.landM2 }];
  });
}

/** Whether a variety stands in a season and how: for tables. */
export function standing(
  problem: YearsProblem,
  years: Years,
  index: number,
  season: number,
): "seed" | "first-year" | null {
  const item = problem.items[index];
  const bits = years[index] ?? 0;
  if (!item) return null;
  if (isGrown(bits, season)) return "seed";
  return isFirstYear(item, bits, season) ? "first-year" : null;
}

/** One variety in one season, as a table shows it. */
export interface YearsCell {
  readonly grown: "seed" | "first-year" | null;
  readonly isCovered: boolean;
  /** Set by the grower. */
  readonly byHand: boolean;
  /** The early end, and the likely end, of its best lot fall in this season. */
  readonly endsEarly: boolean;
  readonly endsLikely: boolean;
  readonly hasFault: boolean;
}
