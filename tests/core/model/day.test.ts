import { describe, expect, test, vi } from "vitest";
import {
  civilFromDay,
  dayFromCivil,
  dayFromIso,
  daysInMonth,
  isLeapYear,
  isoFromDay,
  longDate,
  shortDate,
} from "../../../src/core/model/day.ts";

vi.setConfig({ testTimeout: 60_000 });

const DAY_MS = 86_400_000;

test("every day from 1890 to 2110 agrees with Date.UTC, both ways", () => {
  const first = Date.UTC(1890, 0, 1) / DAY_MS;
  const last = Date.UTC(2110, 11, 31) / DAY_MS;
  expect(last - first).toBeGreaterThan(80_000);
  for (let day = first; day <= last; day += 1) {
    const date = new Date(day * DAY_MS);
    const civil = {
      year: date.getUTCFullYear(),
      month: date.getUTCMonth() + 1,
      day: date.getUTCDate(),
    };
    const iso = date.toISOString().slice(0, 10);
    const isSame =
      dayFromCivil(civil) === day &&
      isoFromDay(day) === iso &&
      dayFromIso(iso) === day &&
      JSON.stringify(civilFromDay(day)) === JSON.stringify(civil);
    if (!isSame) throw new Error(`${iso}: ${isoFromDay(day)}, ${dayFromCivil(civil)} of ${day}`);
  }
});

test("the far ends of the calendar agree as well", () => {
  for (const iso of ["0001-01-01", "0400-02-29", "1582-10-15", "2400-02-29", "9999-12-31"]) {
    const day = Date.parse(`${iso}T00:00:00Z`) / DAY_MS;
    expect(dayFromIso(iso)).toBe(day);
    expect(isoFromDay(day)).toBe(iso);
  }
});

test.each([
  [2000, true],
  [2024, true],
  [2027, false],
  [1900, false],
  [2100, false],
])("%d is a leap year: %s", (year, isLeap) => {
  expect(isLeapYear(year)).toBe(isLeap);
  expect(daysInMonth(year, 2)).toBe(isLeap ? 29 : 28);
});

describe("dayFromIso refuses", () => {
  test.each([
    "2027-02-30",
    "2027-02-29",
    "2100-02-29",
    "2027-04-31",
    "2027-13-01",
    "2027-00-10",
    "2027-05-00",
    "2027-05-32",
    "0000-01-01",
    "2027-5-20",
    "27-05-20",
    "20270520",
    "2027-05-20T00:00:00Z",
    " 2027-05-20",
    "20 May 2027",
    "2027-W20",
    "",
  ])("%j", (text) => {
    expect(dayFromIso(text)).toBeNull();
  });
});

test("dates for reading", () => {
  const day = dayFromIso("2027-05-09") as number;
  expect(shortDate(day)).toBe("9 May");
  expect(longDate(day)).toBe("9 May 2027");
});
