/** Binomial counts against sums of exact terms; the line against published check values. */
import { describe, expect, test } from "vitest";
import {
  binomialQuantile,
  foreignInLine,
  offTypesAmong,
  plantsToSeeOne,
} from "../../../src/core/crossing-share/off-types.ts";

/** Binomial chance of exactly k of n, by whole-number binomial coefficients. */
function chance(n: number, k: number, share: number): number {
  let ways = 1n;
  for (let i = 0; i < k; i++) ways = (ways * BigInt(n - i)) / BigInt(i + 1);
  return Number(ways) * share ** k * (1 - share) ** (n - k);
}

test("counts to expect hold the chance they claim, by exact terms", () => {
  for (const n of [1, 5, 40, 200]) {
    for (const share of [0.002, 0.03, 0.4, 0.97]) {
      for (const level of [0.025, 0.5, 0.975]) {
        const k = binomialQuantile(n, share, level);
        const atMost = (count: number) =>
          Array.from({ length: count + 1 }, (_, i) => chance(n, i, share)).reduce(
            (a, b) => a + b,
            0,
          );
        expect(atMost(k)).toBeGreaterThanOrEqual(level - 1e-9);
        if (k > 0) expect(atMost(k - 1)).toBeLessThan(level + 1e-9);
      }
    }
  }
});

test("many plants do not run out of numbers", () => {
  const k = binomialQuantile(100_000, 0.05, 0.975);
  // Normal approximation: mean 5000, sd 68.9.
  expect(Math.abs(k - (5000 + 1.96 * 68.9))).toBeLessThan(3);
});

test("a range of shares gives a range of counts", () => {
  const { expected, within } = offTypesAmong(200, [0.003, 0.02]);
  expect(expected).toEqual([0.6, 4]);
  expect(within).toEqual([0, 8]);
});

describe("plants to see one crossed plant", () => {
  test.each([
    [0.05, 59],
    [0.01, 299],
    [0.001, 2995],
  ])("at a share of %d", (share, plants) => {
    // The "rule of three": about 3 / share (Hanley and Lippman-Hand 1983, JAMA 249:1743).
    expect(plantsToSeeOne(share)).toBe(plants);
    expect(1 - (1 - share) ** plants).toBeGreaterThanOrEqual(0.95);
    expect(1 - (1 - share) ** (plants - 1)).toBeLessThan(0.95);
  });

  test("none is ever to be seen, or the first is", () => {
    expect(plantsToSeeOne(0)).toBeNull();
    expect(plantsToSeeOne(1)).toBe(1);
  });
});

describe("foreign blood in the line", () => {
  test.each([
    [0.01, 10, 0.04889],
    [0.05, 10, 0.2237],
    [0.001, 20, 0.00995],
  ])("share %d over %d seasons", (share, seasons, foreign) => {
    expect(foreignInLine(share, seasons)).toBeCloseTo(foreign, 4);
  });

  test("roguing all of it leaves nothing, roguing half about half", () => {
    expect(foreignInLine(0.05, 10, 1)).toBe(0);
    expect(foreignInLine(1, 3, 1)).toBe(0);
    expect(foreignInLine(0.01, 5, 0.5) / foreignInLine(0.01, 5)).toBeCloseTo(0.5, 1);
  });
});
