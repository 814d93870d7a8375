/** The years by varieties as rows: for the page, for paper and for the command line. */
import {
  type JudgedYears,
  type YearsCell,
  type YearsFault,
  judgeYears,
  standing,
} from "./judge-years.ts";
import { lastSeasonBefore } from "./seed-life.ts";
import type { Plan } from "../model/plan.ts";
import { crossingParts } from "./crossing-sets.ts";
import type { CropBook } from "../kinds/crop-book.ts";
import type { PlanYears, YearsRow } from "./years-of-plan.ts";
import { partName } from "./fault-words.ts";
import { isGrown } from "./years-problem.ts";

export interface YearsLine {
  readonly row: YearsRow;
  readonly index: number;
  readonly cells: readonly YearsCell[];
}

export interface YearsPart {
  readonly name: string;
  readonly lines: readonly YearsLine[];
}

export interface YearsTable {
  readonly parts: readonly YearsPart[];
  readonly judged: JudgedYears;
}

/** Parts are crossing sets, in the order of the seed list; within one by kind and name. */
export function yearsTable(plan: Plan, book: CropBook, planYears: PlanYears): YearsTable {
  const { problem, rows, years } = planYears;
  const judged = judgeYears(problem, years);
  const parts = crossingParts(book, rows).map((members): YearsPart => {
    const sorted = [...members].sort((a, b) => {
      const [one, other] = [rows[a] as YearsRow, rows[b] as YearsRow];
      return (
        compare(one.kind.name, other.kind.name) || compare(one.variety.name, other.variety.name)
      );
    });
    return {
      name: partName(rows, members),
      lines: sorted.map((index) => ({
        row: rows[index] as YearsRow,
        index,
        cells: cellsOf(plan, planYears, judged, index),
      })),
    };
  });
  return { parts, judged };
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

function cellsOf(
  plan: Plan,
  { problem, rows, years }: PlanYears,
  judged: JudgedYears,
  index: number,
): readonly YearsCell[] {
  const row = rows[index] as YearsRow;
  const hand = problem.byHand[index];
  // Ripe seed of the season before was the last in time: the end falls in the one after.
  const endOf = (day: number | null | undefined) =>
    day === undefined ? -1 : lastSeasonBefore(day, plan) + 1;
  const [early, likely] = [endOf(row.end?.earliest), endOf(row.end?.likely)];
  return Array.from({ length: problem.seasons }, (_, season) => ({
    grown: standing(problem, years, index, season),
    isCovered: judged.seasons[season]?.covered.includes(index) ?? false,
    byHand: hand !== undefined && (isGrown(hand.grown, season) || isGrown(hand.notGrown, season)),
    endsEarly: early === season,
    endsLikely: likely === season,
    hasFault: judged.faults.some((fault) => isAt(fault, index, season)),
  }));
}

function isAt(fault: YearsFault, item: number, season: number): boolean {
  if (fault.season !== season) return false;
  if ("item" in fault) return fault.item === item;
  return "items" in fault && fault.items.includes(item);
}
