/** Which day a walk is written down for. */
import { expect, test } from "vitest";
import { weekday } from "../../../src/core/calendar/week.ts";
import { dayFromIso } from "../../../src/core/model/day.ts";
import { daysAtOnce, pickedDay } from "../../../src/panel/walk/walk-days.ts";

const day = (iso: string) => dayFromIso(iso) ?? Number.NaN;
const TODAY = day("2027-07-06");
const FIRST = day("2027-01-01");

test("last Saturday is one of the seven days offered, and so is every other weekday", () => {
  const days = daysAtOnce(TODAY);
  expect(days.at(-1)).toBe(TODAY);
  expect(days).toContain(day("2027-07-03"));
  expect(new Set(days.map(weekday)).size).toBe(7);
});

test("a date is taken until today, and not while its year is half typed", () => {
  expect(pickedDay("2027-05-20", FIRST, TODAY)).toBe(day("2027-05-20"));
  expect(pickedDay("2026-11-02", FIRST, TODAY)).toBe(day("2026-11-02"));
  expect(pickedDay("2027-07-07", FIRST, TODAY)).toBeNull();
  expect(pickedDay("0002-05-20", FIRST, TODAY)).toBeNull();
  expect(pickedDay("", FIRST, TODAY)).toBeNull();
  // A plan of a season to come: the days just gone can be written all the same.
  expect(pickedDay("2027-07-03", day("2029-01-01"), TODAY)).toBe(day("2027-07-03"));
});
