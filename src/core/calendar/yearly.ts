/** What comes again each year on the same dates. */
import { type DayNumber, civilFromDay, dayFromCivil, daysInMonth } from "../model/day.ts";
import type { DayWindow } from "./bloom-window.ts";

/** The same date some years later (negative: earlier); 29 February becomes the 28th where there is none. */
export function yearsLater(day: DayNumber, years: number): DayNumber {
  const { year, month, day: dayOfMonth } = civilFromDay(day);
  const then = year + years;
  return dayFromCivil({
    year: then,
    month,
    day: Math.min(dayOfMonth, daysInMonth(then, month)),
  });
}

/** Longest season, years, through which a yearly window is followed year by year. */
const MOST_REPEATS = 60;

/**
 * Every repeat of a yearly window that meets the season, in order; when none does, the first that
 * begins after it. A season too long to follow is taken as one window: open all the time.
 */
export function repeatsIn(
  window: DayWindow,
  season: DayWindow,
): readonly [DayWindow, ...DayWindow[]] {
  const years = civilFromDay(season.first).year - civilFromDay(window.last).year;
  const span = civilFromDay(season.last).year - civilFromDay(season.first).year;
  if (span > MOST_REPEATS) return [season];
  const inYear = (shift: number): DayWindow => ({
    first: yearsLater(window.first, shift),
    last: yearsLater(window.last, shift),
  });
  let shift = years - 1;
  let first = inYear(shift);
  while (first.last < season.first) first = inYear((shift += 1));
  const later: DayWindow[] = [];
  for (let next = inYear(shift + 1); next.first <= season.last; next = inYear((shift += 1) + 1)) {
    later.push(next);
  }
  return [first, ...later];
}
