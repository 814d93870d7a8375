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

/**
 * A yearly window in the year it meets the season; unchanged when it meets the season as it is.
 * Of two years that would do, the earlier; when none does, the first that begins in it or after.
 */
export function repeatedInto(window: DayWindow, season: DayWindow): DayWindow {
  if (meets(window, season)) return window;
  const years = civilFromDay(season.first).year - civilFromDay(window.last).year;
  for (let shift = years - 1; ; shift += 1) {
    const moved = { first: yearsLater(window.first, shift), last: yearsLater(window.last, shift) };
    if (meets(moved, season) || moved.first > season.last) return moved;
  }
}

function meets(a: DayWindow, b: DayWindow): boolean {
  return a.first <= b.last && b.first <= a.last;
}
