/** Days a walk can be written down for: the last seven by one press, any earlier one by its date. */
import { type DayNumber, dayFromIso } from "../../core/model/day.ts";

const AT_ONCE = 7;
/** Nobody writes down later what was longer ago than this before the season; years half typed are. */
const BEFORE_SEASON = 366;

/** The days offered at once, today the last: every day of the week is among them. */
export function daysAtOnce(today: DayNumber): readonly DayNumber[] {
  return Array.from({ length: AT_ONCE }, (_, index) => today - AT_ONCE + 1 + index);
}

/** The first day that can be picked. */
export function earliestDay(seasonFirst: DayNumber, today: DayNumber): DayNumber {
  return Math.min(seasonFirst - BEFORE_SEASON, today - AT_ONCE + 1);
}

/** A date as the browser's own field gives it; null while it is no day that can be written for. */
export function pickedDay(
  text: string,
  seasonFirst: DayNumber,
  today: DayNumber,
): DayNumber | null {
  const day = dayFromIso(text);
  if (day === null || day > today || day < earliestDay(seasonFirst, today)) return null;
  return day;
}
