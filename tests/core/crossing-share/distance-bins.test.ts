import { describe, expect, test } from "vitest";
import {
  adjoiningShares,
  separateShares,
  turnipRapeShare,
} from "../../../src/core/crossing-share/distance-bins.ts";
import {
  allTrials,
  isBeyondTrials,
  nearestTrials,
} from "../../../src/core/crossing-share/trials.ts";
import { cropBook } from "../../../src/core/kinds/crop-book.ts";

// Huesken & Dietz-Pfeilstetter 2007 in OECD volume 5 (2016), table 3.8: mean and sd, percent.
describe("published bins of oilseed rape", () => {
  test.each([
    [5, 0.94, 0.51],
    [15, 0.4, 0.47],
    [35, 0.14, 0.11],
    [75, 0.11, 0.11],
    [250, 0.05, 0.05],
  ])("separate plots %d m apart", (metres, mean, sd) => {
    const [low, high] = separateShares(metres);
    expect(100 * low).toBeCloseTo(mean, 9);
    expect(100 * high).toBeCloseTo(mean + 2 * sd, 9);
  });

  test.each([
    [5, 1.78, 2.48],
    [15, 0.33, 0.45],
    [35, 0.05, 0.05],
    [75, 0.04, 0.04],
  ])("one field, %d m from the edge", (metres, mean, sd) => {
    const [low, high] = adjoiningShares(metres);
    expect(100 * low).toBeCloseTo(mean, 9);
    expect(100 * high).toBeCloseTo(mean + 2 * sd, 9);
  });

  test("never rise with distance", () => {
    for (let metres = 0; metres < 600; metres++) {
      for (const shares of [separateShares, adjoiningShares]) {
        expect(shares(metres + 1)[0]).toBeLessThanOrEqual(shares(metres)[0]);
        expect(shares(metres + 1)[1]).toBeLessThanOrEqual(shares(metres)[1]);
      }
      expect(turnipRapeShare(metres + 1)).toBeLessThanOrEqual(turnipRapeShare(metres));
    }
  });
});

test.each([
  [46, 8.5],
  [137, 5.8],
  [366, 3.7],
])("turnip rape at %d m is within a tenth of the trial", (metres, percent) => {
  expect(Math.abs((100 * turnipRapeShare(metres)) / percent - 1)).toBeLessThan(0.1);
});

describe("trials", () => {
  test("are of species the kinds know", () => {
    const species = new Set([...cropBook().kinds].map((kind) => kind.species));
    expect(allTrials.filter((trial) => !species.has(trial.species))).toEqual([]);
  });

  test("the nearest come first, the larger share first of two as near", () => {
    expect(nearestTrials("Zea mays", 9, 3).map(({ metres }) => metres[0])).toEqual([10, 10, 8]);
    expect(nearestTrials("Phaseolus vulgaris", 6).map(({ percent }) => percent[0])).toEqual([
      66.8, 19.3,
    ]);
    expect(nearestTrials("Daucus carota", 10)).toEqual([]);
  });

  test("a bait without pollen of its own stretches no one's distances", () => {
    expect(isBeyondTrials("Brassica napus", 60)).toBe(false);
    expect(isBeyondTrials("Brassica napus", 61)).toBe(true);
  });
});
