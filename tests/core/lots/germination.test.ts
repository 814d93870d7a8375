/**
 * Against published figures: exact binomial limits as computed with scipy's beta distribution,
 * standard probits, and the tolerance tables of 7 CFR 201.55 and 201.63 as printed.
 */
import { describe, expect, test } from "vitest";
import {
  latestTest,
  meetsWithTolerance,
  replicatesAgree,
  seedsToTest,
  testResult,
} from "../../../src/core/lots/germination.ts";
import { exactLimits, normalBelow, probit } from "../../../src/core/lots/normal.ts";
import { rangeRows } from "../../../src/core/lots/replicate-table.ts";
import { testConditions } from "../../../src/core/lots/test-conditions.ts";
import { cropBook } from "../../../src/core/kinds/crop-book.ts";

test.each([
  [0.95, 1.6449],
  [0.9, 1.2816],
  [0.75, 0.6745],
  [0.7, 0.5244],
  [0.5, 0],
])("the probit of %d is %d, as normal tables print it", (p, z) => {
  expect(probit(p)).toBeCloseTo(z, 4);
  expect(probit(1 - p)).toBeCloseTo(-z, 4);
});

test("normal and probit undo each other, far into the tails", () => {
  for (const p of [1e-9, 1e-4, 0.02, 0.31, 0.5, 0.69, 0.975, 0.9999, 1 - 1e-9]) {
    expect(normalBelow(probit(p))).toBeCloseTo(p, 11);
  }
  expect([probit(0), probit(1), normalBelow(-60), normalBelow(60)]).toEqual([
    -Infinity,
    Infinity,
    0,
    1,
  ]);
});

test.each([
  [9, 10, 0.555, 0.9975],
  [10, 10, 0.6915, 1],
  [8, 10, 0.4439, 0.9748],
  [5, 10, 0.1871, 0.8129],
  [0, 10, 0, 0.3085],
  [18, 20, 0.683, 0.9877],
  [45, 50, 0.7819, 0.9667],
  [50, 50, 0.9289, 1],
  [85, 100, 0.7647, 0.9135],
  [340, 400, 0.8112, 0.8835],
])("%d of %d sprouted: 95 %% limits %d to %d (Clopper-Pearson)", (k, n, low, high) => {
  const [least, most] = exactLimits(k, n);
  expect([least.toFixed(4), most.toFixed(4)]).toEqual([low.toFixed(4), high.toFixed(4)]);
});

test("hard seed is not sprouted, but counts for the standard", () => {
  const result = testResult({ id: "t", date: 0, sown: 100, sprouted: 80, hard: 5 });
  expect([result.rate, result.rateWithHard]).toEqual([0.8, 0.85]);
  expect(result.limits[0]).toBeLessThan(result.limitsWithHard[0]);
});

test("the latest test speaks, whatever the order they stand in", () => {
  const tests = [3, 9, 5].map((date) => ({ id: `t${date}`, date, sown: 10, sprouted: 5 }));
  expect(latestTest({ tests })?.date).toBe(9);
  expect(latestTest({})).toBeNull();
});

describe("seeds to test", () => {
  test.each([
    [0.7, 9],
    [0.75, 11],
    [0.8, 14],
  ])("all of them sprouting proves %d from %d seeds on (one-sided 95 %%)", (wanted, seeds) => {
    expect(seedsToTest(wanted, 1)).toBe(seeds);
  });

  test("grow as the lot comes near the rate that is to be shown", () => {
    const far = seedsToTest(0.75, 0.95) ?? 0;
    const near = seedsToTest(0.75, 0.85) ?? 0;
    expect(far).toBeGreaterThan(11);
    expect(near).toBeGreaterThan(far);
    expect(seedsToTest(0.75, 0.75)).toBeNull();
    expect(seedsToTest(0.75, 0.751)).toBeNull();
  });
});

describe("replicates of an official test (7 CFR 201.55)", () => {
  test.each([
    [90, 12],
    [85, 14],
    [80, 16],
    [75, 17],
    [60, 19],
  ])("at a mean of %d four parts may lie %d points apart", (mean, four) => {
    expect(rangeRows.find(([high]) => high === mean)?.[2]).toBe(four);
  });

  test("two parts may lie 9 points apart at 90, 13 at 80", () => {
    const two = [90, 80].map((mean) => rangeRows.find(([high]) => high === mean)?.[3]);
    expect(two).toEqual([9, 13]);
  });

  test("the table holds each mean from 99 down to 2 once", () => {
    const means = rangeRows.flatMap(([high, low]) => [high, low]).sort((a, b) => a - b);
    expect(means).toEqual(Array.from({ length: 98 }, (_, index) => index + 2));
  });

  test("agree up to the printed range and not a point beyond", () => {
    const four = (replicates: readonly number[]) => replicatesAgree({ sown: 400, replicates });
    expect(four([84, 96, 90, 90])).toMatchObject({ meanPct: 90, rangePct: 12, agree: true });
    expect(four([84, 97, 90, 90])).toMatchObject({ meanPct: 90, rangePct: 13, agree: false });
    expect(replicatesAgree({ sown: 200, replicates: [85, 95] })).toMatchObject({
      allowedPct: 9,
      agree: false,
    });
  });

  test("of small parts are not held against a table made for hundreds", () => {
    expect(replicatesAgree({ sown: 40, replicates: [9, 8, 10, 9] })).toBeNull();
    expect(replicatesAgree({ sown: 400 })).toBeNull();
  });
});

test("a test against a standard: the mean of both decides the tolerance (7 CFR 201.63)", () => {
  expect(meetsWithTolerance(69, 75, 400)).toEqual({ meanPct: 72, allowedPct: 8, meets: true });
  expect(meetsWithTolerance(66, 75, 400)).toEqual({ meanPct: 70.5, allowedPct: 8, meets: false });
  expect(meetsWithTolerance(66, 75, 200)).toEqual({ meanPct: 70.5, allowedPct: 10, meets: true });
  expect(meetsWithTolerance(66, 75, 100)).toBeNull();
});

describe("test conditions (7 CFR 201.58 Table 2) and sealed packs (201.36c)", () => {
  test.each([
    ["cabbage", "B,P,T", "20-30", 3, 10, 5],
    ["carrot", "B,T", "20-30", 6, 14, 7],
    ["celeriac", "P", "15-25", 10, 21, 7],
    ["sweet-corn", "B,T,S,TC", "20-30", 4, 7, 8],
    ["beet", "B,T,S", "20-30", 3, 14, 7.5],
    ["tomato", "B,P,RB,T", "20-30", 5, 14, 5.5],
    ["watermelon", "B,T,S", "20-30", 4, 14, 6.5],
  ])("%s", (kind, substrata, temperature, firstDays, lastDays, sealedMoisturePct) => {
    expect(testConditions(kind)).toMatchObject({
      substrata,
      temperature,
      firstDays,
      lastDays,
      sealedMoisturePct,
    });
  });

  test("every row is of a kind of the crop base", () => {
    const kinds = cropBook().kinds.filter(({ id }) => testConditions(id) !== undefined);
    expect(kinds.length).toBeGreaterThan(70);
  });
});
