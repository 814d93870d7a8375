/** Seasons tried in words: `overlapped in 3 of 28 years, worst 1998 by 6 days`. */
import { days } from "../checks/day-words.ts";
import { civilFromDay } from "../model/day.ts";
import type { Climate } from "../model/plan.ts";
import type { SeasonsTried, YearTried } from "./seasons-tried.ts";
import { counted } from "../words/plurals.ts";

/** In how many of the years the two would have overlapped, and the worst of them. */
export function seasonsWords(seasons: SeasonsTried): string {
  const { tried, noBloom, leftOut, guardDays } = seasons;
  const total = tried.length;
  const met = tried.filter(({ overlapDays }) => overlapDays > 0);
  const short = tried.filter(
    ({ overlapDays, gapDays }) => overlapDays === 0 && gapDays < guardDays,
  );
  const more = short.length === 0 ? "" : shortWords(short, met.length > 0, guardDays);
  const parts = [
    total === 0 ? "" : `${metWords(met, tried)}${more}`,
    noBloom.length === 0
      ? ""
      : `in ${yearCount(noBloom.length)} (${yearList(noBloom)}) one of the two did not flower before growth ended`,
    leftOut.length === 0
      ? ""
      : `${yearCount(leftOut.length)} left out, as days are missing (${yearList(leftOut)})`,
  ];
  return parts.filter((part) => part !== "").join("; ");
}

function metWords(met: readonly YearTried[], tried: readonly YearTried[]): string {
  if (met.length > 0) {
    const worst = met.reduce((a, b) => (b.overlapDays > a.overlapDays ? b : a));
    return `overlapped in ${met.length} of ${yearCount(tried.length)}, worst ${worst.year} by ${days(worst.overlapDays)}`;
  }
  const nearest = tried.reduce((a, b) => (b.gapDays < a.gapDays ? b : a));
  return `overlapped in none of ${yearCount(tried.length)}, nearest ${nearest.year} with ${days(nearest.gapDays)} between`;
}

function shortWords(short: readonly YearTried[], isMore: boolean, guardDays: number): string {
  return `; less than the ${days(guardDays)} wanted lay between in ${short.length} ${isMore ? "more" : "of them"}`;
}

function yearCount(count: number): string {
  return counted(count, { one: "year", other: "years" });
}

/** Most years that are named one by one. */
const MOST_NAMED = 4;

function yearList(years: readonly number[]): string {
  if (years.length <= MOST_NAMED) return years.join(", ");
  return `${years.slice(0, MOST_NAMED - 1).join(", ")} and ${years.length - MOST_NAMED + 1} more`;
}

/** `Sown as planned in the years 1990 to 2017`, above what came of it. */
export function yearsTitle(climate: Climate | undefined): string {
  const record = climate?.days;
  if (!record) return "Seasons tried";
  const first = civilFromDay(record.first).year;
  const last = civilFromDay(record.first + record.minC.length - 1).year;
  return `Seasons tried: sown as planned, on the days recorded ${first === last ? `in ${first}` : `from ${first} to ${last}`}`;
}
