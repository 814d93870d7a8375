/**
 * Whether dates belong to a season. A date of another year says nothing about this one: a carrot of
 * 2027 beside a wild carrot dated 2026 is not kept apart by a year, it is a date left behind.
 */
import { type DayNumber, civilFromDay } from "../model/day.ts";
import type { Bloom, DayWindow } from "./bloom-window.ts";
import { yearsLater } from "./yearly.ts";

/** Sown or set out so many days before the season at most: overwintered plants. No source; our choice. */
const EARLIEST_START_DAYS = 366;
/** The last spring frost may lie so many days before a season that begins late. No source; our choice. */
const EARLIEST_FROST_DAYS = 60;
const YEAR_DAYS = 365;

/** The season, or the whole year it begins where it is shorter. */
function reachOf({ first, last }: DayWindow): DayWindow {
  return { first, last: Math.max(last, first + YEAR_DAYS - 1) };
}

/** Whether a bloom meets the season. */
export function isBloomInSeason(bloom: DayWindow, season: DayWindow): boolean {
  const { first, last } = reachOf(season);
  return bloom.first <= last && bloom.last >= first;
}

/** Whether the bloom of a stand, if it has one, is of the season. */
export function isDatedHere({
  bloom,
  season,
}: {
  readonly bloom: Pick<Bloom, "outer"> | null;
  readonly season: DayWindow;
}): boolean {
  return bloom === null || isBloomInSeason(bloom.outer, season);
}

/** Whether something sown or set out on a day can be of the season. */
export function isStartInSeason(day: DayNumber, season: DayWindow): boolean {
  const { first, last } = reachOf(season);
  return day >= first - EARLIEST_START_DAYS && day <= last;
}

export function isFrostInSeason(
  which: "spring" | "autumn",
  day: DayNumber,
  season: DayWindow,
): boolean {
  const { first, last } = reachOf(season);
  return day >= first - (which === "spring" ? EARLIEST_FROST_DAYS : 0) && day <= last;
}

/** The first autumn frost in the season's own year, whatever year it was typed for. */
export function autumnFrostOf(season: DayWindow, frost: DayNumber): DayNumber {
  if (isFrostInSeason("autumn", frost, season)) return frost;
  const years = civilFromDay(season.first).year - civilFromDay(frost).year;
  const same = yearsLater(frost, years);
  return same < season.first ? yearsLater(frost, years + 1) : same;
}
