/** What the grower says of the years ahead, with what stands in where nothing is said. */
import { seasonLater } from "../edits/change-season.ts";
import { civilFromDay } from "../model/day.ts";
import type { Plan, RenewalYears } from "../model/plan.ts";
import type { SeedEnd } from "./seed-life.ts";

export const LEAST_SEASONS = 2;
export const MOST_SEASONS = 6;
/** Seasons laid out unless told otherwise. No source; our choice. */
export const USUAL_SEASONS = 4;

export interface YearsSettings {
  readonly seasons: number;
  readonly end: SeedEnd;
  /** Null: all beds. */
  readonly groundM2: number | null;
  readonly cages: number;
  readonly bags: number;
  /** Null: no limit. */
  readonly mostVarieties: number | null;
  readonly leftOut: ReadonlySet<string>;
}

export function yearsSettings({ renewalYears: kept }: Pick<Plan, "renewalYears">): YearsSettings {
  return {
    seasons: kept?.seasons ?? USUAL_SEASONS,
    end: kept?.end ?? "likely",
    groundM2: kept?.groundM2 ?? null,
    cages: kept?.cages ?? 0,
    bags: kept?.bags ?? 0,
    mostVarieties: kept?.mostVarieties ?? null,
    leftOut: new Set(kept?.leftOut),
  };
}

/** Calendar year in which the plan's own season begins. */
export function firstYear({ season }: Pick<Plan, "season">): number {
  return civilFromDay(season.first).year;
}

/** Names of the seasons, the plan's own first: `2027`, or `2027/28`; its year where it has none. */
export function seasonNames({ season }: Pick<Plan, "season">, seasons: number): readonly string[] {
  return Array.from({ length: seasons }, (_, later) => {
    const { name, first } = seasonLater(season, later);
    const isYear = /\d{4}/.test(name);
    return isYear ? name : String(civilFromDay(first).year);
  });
}

export type YearChoice = RenewalYears["choices"][number];
