/** Changing the season of a plan, in words. */
import {
  type DatedCounts,
  type DatesThen,
  datedCounts,
  datesLeftBehind,
  yearsBetween,
} from "../../core/edits/change-season.ts";
import { longDate } from "../../core/model/day.ts";
import type { Plan } from "../../core/model/plan.ts";
import { counted } from "../state/selected-objects.ts";
import { formOf } from "../../core/words/plurals.ts";

/** `1 Jan 2028 to 31 Dec 2028`. */
export function seasonDays({ first, last }: Pick<Plan["season"], "first" | "last">): string {
  return `${longDate(first)} to ${longDate(last)}`;
}

/** What has dates, counted over all layouts; empty: nothing. */
export function datedWords({ starts, ends, blooms, neighbours, frosts }: DatedCounts): string {
  const parts = [
    ...(starts > 0 ? [`${counted(starts, "planting has", "plantings have")} a start`] : []),
    ...(ends > 0 ? [`${counted(ends, "planting", "plantings")} a day they are cleared`] : []),
    ...(blooms > 0 ? [`${counted(blooms, "planting", "plantings")} bloom dates of your own`] : []),
    ...(neighbours > 0
      ? [`${counted(neighbours, "pollen source", "pollen sources")} around bloom dates`]
      : []),
    ...(frosts > 0 ? [counted(frosts, "frost date", "frost dates")] : []),
  ];
  return parts.length === 0 ? "" : `Dates in the plan, all layouts counted: ${parts.join("; ")}.`;
}

/** How many of them the season would leave behind. */
export function leftWords(plan: Plan, next: Plan["season"]): string {
  const left = datesLeftBehind(plan, next);
  if (left === 0) return "All of them fit the new days.";
  const lie = formOf(left, { one: "1 date would lie", other: `${left} dates would lie` });
  return `Kept as they are, ${lie} outside the season: bloom, sowing and frost of another year, by which time clears nothing.`;
}

interface SeasonAnswer {
  readonly dates: DatesThen;
  readonly label: string;
}

/** What may become of the dates; the likeliest first. */
export function answersFor(plan: Plan, next: Plan["season"]): readonly SeasonAnswer[] {
  if (Object.values(datedCounts(plan)).every((count) => count === 0)) {
    return [{ dates: "keep", label: "Change the season" }];
  }
  const years = yearsBetween(plan.season, next);
  const by = `${counted(Math.abs(years), "year", "years")} ${years < 0 ? "back" : "on"}`;
  const move: SeasonAnswer = { dates: "move", label: `Move all dates ${by}` };
  const keep: SeasonAnswer = { dates: "keep", label: "Keep them as they are" };
  const drop: SeasonAnswer = { dates: "drop", label: "Clear all dates" };
  if (years === 0) return [keep, drop];
  return datesLeftBehind(plan, next) === 0 ? [keep, move, drop] : [move, keep, drop];
}
