/** Cold of a winter on the site, from which carrot and onion flower. */
import { describe, expect, test } from "vitest";
import {
  coldFelt,
  coldVerdict,
  coldestOnRecord,
  winterOf,
} from "../../../src/core/calendar/cold-felt.ts";
import { dayFromIso, isoFromDay } from "../../../src/core/model/day.ts";
import type { Climate } from "../../../src/core/model/plan.ts";
import { monthlyMeans } from "../../support/climate-rows.ts";

const day = (iso: string): number => dayFromIso(iso) ?? Number.NaN;
const medford: Climate = {
  normals: { minC: monthlyMeans("medford", "tmin"), maxC: monthlyMeans("medford", "tmax") },
};
const flipped = (values: readonly number[]) => [...values.slice(6), ...values.slice(0, 6)];
const southern: Climate = {
  normals: {
    minC: flipped(monthlyMeans("medford", "tmin")),
    maxC: flipped(monthlyMeans("medford", "tmax")),
  },
};
const even = (celsius: number): Climate => ({
  normals: { minC: Array<number>(12).fill(celsius), maxC: Array<number>(12).fill(celsius) },
});

test.each([
  ["2027-01-01", medford, "2026-10-01", "2027-03-31"],
  ["2026-11-01", medford, "2026-10-01", "2027-03-31"],
  ["2027-05-01", medford, "2027-10-01", "2028-03-31"],
  ["2027-07-01", southern, "2027-04-01", "2027-09-30"],
])("the winter of a season from %s", (season, climate, first, last) => {
  const winter = winterOf(day(season), climate);
  expect(winter && [isoFromDay(winter.first), isoFromDay(winter.last)]).toEqual([first, last]);
});

describe("cold felt", () => {
  // At 4 C a day counts 5 C-days for carrot; a winter has 182 days.
  test("by carrot at 4 C all winter", () => {
    expect(coldFelt("carrot", day("2027-01-01"), even(4))).toMatchObject({
      kind: "carrot",
      cDays: 182 * 5,
    });
  });
  test("by onion at 10 C all winter: every day counts in full", () => {
    const felt = coldFelt("onion", day("2027-01-01"), even(10));
    expect(felt?.kind === "onion" && felt.days).toBeCloseTo(182, 6);
    expect(felt?.kind === "onion" && felt.share).toBeGreaterThan(0.999);
  });
  test("is as much on a southern site with the same winter", () => {
    const north = coldFelt("carrot", day("2026-01-01"), medford);
    const south = coldFelt("carrot", day("2026-07-01"), southern);
    // Six months turned about are not quite the same days.
    const sum = (felt: typeof north) => (felt?.kind === "carrot" ? felt.cDays : 0);
    expect(Math.abs(sum(north) / sum(south) - 1)).toBeLessThan(0.02);
  });
  test("is told for no other kind, and not without temperatures", () => {
    expect(coldFelt("parsnip", day("2027-01-01"), medford)).toBeNull();
    expect(coldFelt("carrot", day("2027-01-01"), {})).toBeNull();
  });
});

describe("whether the cold is enough", () => {
  const verdict = (kind: string, celsius: number) => {
    const felt = coldFelt(kind, day("2027-01-01"), even(celsius));
    return felt && coldVerdict(felt);
  };

  // Cabbage: 4-7 C for 6-8 weeks (OECD 2016); 0-12 C works, above 16 undoes it (older study).
  // Leek: none at 18-20 C, 4-8 C over 42 days (Wurr and others 1999, Wiebe 1994, second hand).
  // Beet: 4 weeks at 4 C (Goodger 2013). Carrot: none from 16 C on (Atherton and others 1990).
  test.each([
    ["cabbage", 6, "met"],
    ["cabbage", 14, "not met"],
    ["kale", -3, "not met"],
    ["leek", 7, "met"],
    ["leek", 19, "not met"],
    ["beet", 4, "met"],
    ["chard", 15, "not met"],
    ["carrot", 5, "met"],
    ["carrot", 16, "not met"],
    ["carrot", 15, "partly"],
    ["onion", 10, "met"],
    ["onion", 17, "not met"],
  ] as const)("%s in a winter of %i C all through: %s", (kind, celsius, expected) => {
    expect(verdict(kind, celsius)).toBe(expected);
  });

  test("six weeks are the fewest for cabbage, eight are sure", () => {
    const days = (count: number) => {
      const felt = coldFelt("cabbage", day("2027-01-01"), even(6));
      if (felt?.kind !== "days") throw new Error("not told");
      return coldVerdict({ ...felt, days: count });
    };
    expect([41, 42, 55, 56].map(days)).toEqual(["not met", "partly", "partly", "met"]);
  });

  test("the coldest night is told of a record alone, never of means", () => {
    expect(coldestOnRecord(medford)).toBeNull();
    const days = { first: day("2020-01-01"), minC: [2, null, -13.5], maxC: [5, null, -2] };
    expect(coldestOnRecord({ days })).toBe(-13.5);
  });
});
