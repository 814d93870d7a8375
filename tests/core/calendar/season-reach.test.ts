/** Which dates are of a season, in both halves of the world. */
import { expect, test } from "vitest";
import {
  autumnFrostOf,
  isBloomInSeason,
  isDatedHere,
  isFrostInSeason,
  isStartInSeason,
} from "../../../src/core/calendar/season-reach.ts";
import { isoFromDay } from "../../../src/core/model/day.ts";
import { day } from "../../support/trial-plan.ts";

const NORTH = { first: day("2027-01-01"), last: day("2027-12-31") };
const SOUTH = { first: day("2026-07-01"), last: day("2027-06-30") };
/** Only the months of growth: the season then reaches over a whole year. */
const SHORT = { first: day("2027-04-01"), last: day("2027-10-31") };

test.each([
  ["2027-07-01", "2027-07-20", NORTH, true],
  ["2026-07-01", "2026-07-20", NORTH, false],
  ["2026-12-20", "2027-01-01", NORTH, true],
  ["2027-02-01", "2027-02-20", SOUTH, true],
  ["2027-07-01", "2027-07-20", SOUTH, false],
  ["2028-03-20", "2028-04-20", SHORT, true],
  ["2028-04-01", "2028-04-20", SHORT, false],
])("a bloom of %s to %s", (first, last, season, isIn) => {
  expect(isBloomInSeason({ first: day(first), last: day(last) }, season)).toBe(isIn);
  const outer = { first: day(first), last: day(last) };
  expect(isDatedHere({ bloom: { outer }, season })).toBe(isIn);
});

test("what has no bloom is not of another season", () => {
  expect(isDatedHere({ bloom: null, season: NORTH })).toBe(true);
});

test("a biennial sown the summer before is of the season, what was sown two years before is not", () => {
  expect(isStartInSeason(day("2026-07-15"), NORTH)).toBe(true);
  expect(isStartInSeason(day("2025-07-15"), NORTH)).toBe(false);
  expect(isStartInSeason(day("2028-01-01"), NORTH)).toBe(false);
});

test("the last spring frost may lie shortly before a season that begins late, the first autumn frost may not", () => {
  expect(isFrostInSeason("spring", day("2027-03-01"), SHORT)).toBe(true);
  expect(isFrostInSeason("spring", day("2027-01-15"), SHORT)).toBe(false);
  expect(isFrostInSeason("autumn", day("2027-03-01"), SHORT)).toBe(false);
  expect(isFrostInSeason("autumn", day("2027-10-20"), SHORT)).toBe(true);
});

test.each([
  [NORTH, "2027-10-12", "2027-10-12"],
  [NORTH, "2024-10-12", "2027-10-12"],
  [SOUTH, "2025-05-02", "2027-05-02"],
  [NORTH, "2024-02-29", "2027-02-28"],
])("the autumn frost typed as %2$s falls in the season", (season, typed, meant) => {
  expect(isoFromDay(autumnFrostOf(season, day(typed)))).toBe(meant);
});
