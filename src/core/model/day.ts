/**
 * Whole day numbers. Day 0 is 1970-01-01 in the proleptic Gregorian calendar; there are no
 * hours and no time zones. Conversions follow the era arithmetic of Howard Hinnant,
 * "chrono-Compatible Low-Level Date Algorithms" (2013), exact for all years 0001 to 9999.
 */
import { months } from "../words/month-words.ts";

/** Days since 1970-01-01, a whole number. */
export type DayNumber = number;

export interface CivilDate {
  readonly year: number;
  /** 1 to 12. */
  readonly month: number;
  /** 1 to 31. */
  readonly day: number;
}

const DAYS_PER_ERA = 146_097;

export function isLeapYear(year: number): boolean {
  return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
}

/** Days in a month (1 to 12) of a year. */
export function daysInMonth(year: number, month: number): number {
  if (month === 2) return isLeapYear(year) ? 29 : 28;
  return month === 4 || month === 6 || month === 9 || month === 11 ? 30 : 31;
}

export function dayFromCivil({ year, month, day }: CivilDate): DayNumber {
  const shiftedYear = month <= 2 ? year - 1 : year;
  const era = Math.floor(shiftedYear / 400);
  const yearOfEra = shiftedYear - era * 400;
  const dayOfYear = Math.floor((153 * (month > 2 ? month - 3 : month + 9) + 2) / 5) + day - 1;
  const dayOfEra =
    yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  return era * DAYS_PER_ERA + dayOfEra - 719_468;
}

export function civilFromDay(day: DayNumber): CivilDate {
  const shifted = day + 719_468;
  const era = Math.floor(shifted / DAYS_PER_ERA);
  const dayOfEra = shifted - era * DAYS_PER_ERA;
  const yearOfEra = Math.floor(
    (dayOfEra -
      Math.floor(dayOfEra / 1460) +
      Math.floor(dayOfEra / 36_524) -
      Math.floor(dayOfEra / 146_096)) /
      365,
  );
  const dayOfYear =
    dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const monthIndex = Math.floor((5 * dayOfYear + 2) / 153);
  const month = monthIndex < 10 ? monthIndex + 3 : monthIndex - 9;
  return {
    year: yearOfEra + era * 400 + (month <= 2 ? 1 : 0),
    month,
    day: dayOfYear - Math.floor((153 * monthIndex + 2) / 5) + 1,
  };
}

const ISO_DATE = /^(\d{4})-(\d{2})-(\d{2})$/;

/** Reads an ISO 8601 calendar date, e.g. `2027-05-20`; null for anything else, 30 February included. */
export function dayFromIso(text: string): DayNumber | null {
  const match = ISO_DATE.exec(text);
  if (!match) return null;
  const date = { year: Number(match[1]), month: Number(match[2]), day: Number(match[3]) };
  const isReal =
    date.year >= 1 &&
    date.month >= 1 &&
    date.month <= 12 &&
    date.day >= 1 &&
    date.day <= daysInMonth(date.year, date.month);
  return isReal ? dayFromCivil(date) : null;
}

/** ISO 8601 calendar date, e.g. `2027-05-20`. */
export function isoFromDay(day: DayNumber): string {
  const { year, month, day: dayOfMonth } = civilFromDay(day);
  const pad = (value: number, width: number) => String(value).padStart(width, "0");
  return `${pad(year, 4)}-${pad(month, 2)}-${pad(dayOfMonth, 2)}`;
}

/** Short English month name for a month 1 to 12. */
export function monthName(month: number): string {
  return months[month - 1] ?? "?";
}

/** Day and month as people write them, e.g. `20 May`. */
export function shortDate(day: DayNumber): string {
  const { month, day: dayOfMonth } = civilFromDay(day);
  return `${dayOfMonth} ${monthName(month)}`;
}

/** Day, month and year, e.g. `20 May 2027`. */
export function longDate(day: DayNumber): string {
  return `${shortDate(day)} ${civilFromDay(day).year}`;
}
