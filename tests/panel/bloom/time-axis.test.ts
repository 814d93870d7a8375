import { expect, test } from "vitest";
import { dayFromIso, isoFromDay } from "../../../src/core/model/day.ts";
import { startPercent, timeAxis, widthPercent } from "../../../src/panel/bloom/time-axis.ts";

const day = (iso: string) => dayFromIso(iso) ?? Number.NaN;
const season = { first: day("2027-01-01"), last: day("2027-12-31") };

test("the axis covers whole months around its days", () => {
  const axis = timeAxis([day("2027-06-12"), day("2027-08-03")], season);
  expect([isoFromDay(axis.first), isoFromDay(axis.last)]).toEqual(["2027-06-01", "2027-08-31"]);
  expect(axis.months.map((month) => month.label)).toEqual(["Jun", "Jul", "Aug"]);
});

test("a new year is named where it begins", () => {
  const axis = timeAxis([day("2027-11-12"), day("2028-02-29")], season);
  expect(axis.months.map((month) => month.label)).toEqual(["Nov", "Dec", "Jan 2028", "Feb"]);
  expect(isoFromDay(axis.last)).toBe("2028-02-29");
});

test("without days the axis is the season", () => {
  const axis = timeAxis([], season);
  expect(axis.months).toHaveLength(12);
  expect([axis.first, axis.last]).toEqual([season.first, season.last]);
});

test("a month's share starts at its tick and the shares add up", () => {
  const axis = timeAxis([day("2027-06-01"), day("2027-07-31")], season);
  expect(startPercent(axis, axis.first)).toBe(0);
  expect(widthPercent(axis, axis.first, axis.last)).toBe(100);
  expect(startPercent(axis, day("2027-07-01"))).toBeCloseTo((30 / 61) * 100, 2);
});
