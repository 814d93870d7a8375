/** Perennials flower each year; seasons may cross New Year. */
import { describe, expect, test } from "vitest";
import { settingOfClimate } from "../../support/climate-rows.ts";
import { plantingBloom } from "../../../src/core/calendar/planting-bloom.ts";
import { repeatsIn, yearsLater } from "../../../src/core/calendar/yearly.ts";
import { cropBook } from "../../../src/core/kinds/crop-book.ts";
import { dayFromIso, isoFromDay } from "../../../src/core/model/day.ts";
import type { Planting } from "../../../src/core/model/plan.ts";

const day = (iso: string): number => dayFromIso(iso) ?? Number.NaN;
const window = (first: string, last: string) => ({ first: day(first), last: day(last) });
const season = window("2027-01-01", "2027-12-31");
const southern = window("2027-07-01", "2028-06-30");

test.each([
  ["2024-02-29", 3, "2027-02-28"],
  ["2024-02-29", 4, "2028-02-29"],
  ["2024-02-29", -24, "2000-02-29"],
  ["2024-12-31", 1, "2025-12-31"],
])("%s and %d years is %s", (from, years, to) => {
  expect(isoFromDay(yearsLater(day(from), years))).toBe(to);
});

test.each([
  [
    "stays where it meets the season",
    ["2027-06-01", "2027-06-30"],
    season,
    ["2027-06-01", "2027-06-30"],
  ],
  ["of three years ago", ["2024-06-01", "2024-06-30"], season, ["2027-06-01", "2027-06-30"]],
  ["of a later year", ["2029-06-01", "2029-06-30"], season, ["2027-06-01", "2027-06-30"]],
  [
    "in autumn of a season across New Year",
    ["2024-10-01", "2024-11-20"],
    southern,
    ["2027-10-01", "2027-11-20"],
  ],
  [
    "in summer of a season across New Year",
    ["2024-01-05", "2024-02-29"],
    southern,
    ["2028-01-05", "2028-02-29"],
  ],
  ["across New Year itself", ["2023-12-10", "2024-01-20"], southern, ["2027-12-10", "2028-01-20"]],
  [
    "across New Year, in a calendar year",
    ["2023-12-10", "2024-01-20"],
    season,
    ["2026-12-10", "2027-01-20"],
  ],
  [
    "outside a short season",
    ["2024-03-01", "2024-03-10"],
    window("2027-05-01", "2027-09-30"),
    ["2028-03-01", "2028-03-10"],
  ],
] as const)("a yearly window %s", (_, [first, last], within, expected) => {
  const [moved] = repeatsIn(window(first, last), within);
  expect([isoFromDay(moved.first), isoFromDay(moved.last)]).toEqual(expected);
});

describe("a perennial", () => {
  const kind = cropBook().kind("chives");
  if (!kind) throw new Error("no chives");
  const variety = {
    id: "v",
    name: "Old Border",
    kind: "chives",
    sownToFlower: [80, 90],
    bloomDays: [30, 30],
  } as const;
  const planting: Planting = {
    id: "p",
    code: "P",
    variety: "v",
    outline: { shape: "rectangle", x: 0, y: 0, widthM: 1, lengthM: 1, turnDeg: 0 },
    purpose: "seed",
    flowering: "yes",
    cover: "none",
  };
  const outer = (by: Partial<Planting>, of = kind) =>
    plantingBloom({ ...planting, ...by }, variety, of, { ...settingOfClimate(undefined), season })
      ?.whole.outer;

  test("is one in the crop base", () => expect(kind.lifeCycle).toBe("perennial"));

  test("flowers on its own dates each year", () => {
    expect(outer({ bloom: window("2025-05-20", "2025-06-20") })).toEqual(
      window("2027-05-20", "2027-06-20"),
    );
    const annual = { ...kind, lifeCycle: "annual" } as const;
    const asTyped = window("2025-05-20", "2025-06-20");
    expect(outer({ bloom: asTyped }, annual)).toEqual(asTyped);
  });

  test("has no counted bloom after its first one: dates are asked for", () => {
    expect(outer({ start: { method: "sown", date: day("2025-04-01") } })).toBeUndefined();
    expect(outer({ start: { method: "sown", date: day("2027-04-01") } })).toBeDefined();
  });
});
