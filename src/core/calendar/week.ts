import { type DayNumber, civilFromDay, dayFromCivil } from "../model/day.ts";
import { fullMonths, week } from "../words/month-words.ts";

/** ISO 8601 week: Monday first, week 1 holds the year's first Thursday. */
export interface IsoWeek {
  /** Week-numbering year, which differs from the calendar year around New Year. */
  readonly year: number;
  readonly week: number;
}

/** 1 Monday to 7 Sunday. Day 0, 1 January 1970, was a Thursday. */
export function weekday(day: DayNumber): number {
  return ((((day + 3) % 7) + 7) % 7) + 1;
}

/** The Monday of the week a day lies in. */
export function mondayOf(day: DayNumber): DayNumber {
  return day - weekday(day) + 1;
}

export function isoWeek(day: DayNumber): IsoWeek {
  const thursday = mondayOf(day) + 3;
  const { year } = civilFromDay(thursday);
  const newYear = dayFromCivil({ year, month: 1, day: 1 });
  return { year, week: Math.floor((thursday - newYear) / 7) + 1 };
}

/** `Week 14: 5 to 11 April`; both years where it runs over New Year. @param monday of the week */
export function weekInWords(monday: DayNumber): string {
  const [first, last] = [civilFromDay(monday), civilFromDay(monday + 6)];
  const name = (month: number) => fullMonths[month - 1] ?? "?";
  const isOneMonth = first.month === last.month;
  const isOneYear = first.year === last.year;
  const start = [first.day, isOneMonth ? "" : name(first.month), isOneYear ? "" : first.year];
  const end = [last.day, name(last.month), isOneYear ? "" : last.year];
  const joined = (parts: readonly (string | number)[]) =>
    parts.filter((part) => part !== "").join(" ");
  return week(isoWeek(monday).week, joined(start), joined(end));
}
