/** Effective population against values worked out elsewhere. */
import { describe, expect, test } from "vitest";
import { alleleKept } from "../../../src/core/generations/allele-kept.ts";
import { breedingOf, effectiveSize } from "../../../src/core/generations/breeding.ts";
import {
  foreignAfter,
  harmonicMean,
  inbreedingOver,
  partlySelfed,
  plantsOfBothSexes,
  plantsOfOneSex,
  unequalParents,
} from "../../../src/core/generations/effective-size.ts";
import { cropBook } from "../../../src/core/kinds/crop-book.ts";

const kind = (id: string) => {
  const found = cropBook().kind(id);
  if (!found) throw new Error(`no kind ${id}`);
  return found;
};
const parents = (seedPlants: number, pollenPlants: number, isEqualSeed = false) => ({
  seedPlants,
  pollenPlants,
  isEqualSeed,
});
const repeated = (size: number, times: number) => Array<number>(times).fill(size);

// Standard formulas (Wright 1931; Crow and Kimura 1970), values worked out by an independent script.
describe("published formulas", () => {
  test("inbreeding of one generation is 1/(2 Ne): 50 plants, 0.01", () => {
    expect(inbreedingOver([50])).toBeCloseTo(0.01, 12);
  });

  test.each([
    [5, 0.65132],
    [10, 0.40126],
    [20, 0.22367],
    [50, 0.09562],
    [100, 0.04889],
    [200, 0.02472],
    [500, 0.00996],
  ])("ten generations of %i plants: F %f", (size, inbreeding) => {
    expect(inbreedingOver(repeated(size, 10))).toBeCloseTo(inbreeding, 5);
  });

  test("popcorn: 200 plants over 10 regenerations lose 2.5 % (six populations, published)", () => {
    expect(inbreedingOver(repeated(200, 10))).toBeCloseTo(0.025, 3);
  });

  test.each([
    [10, 90, 36],
    [20, 80, 64],
    [1, 99, 3.96],
    [100, 1, 3.96],
  ])("unequal parents, %i and %i: %f", (pollen, seed, effective) => {
    expect(unequalParents(pollen, seed)).toBeCloseTo(effective, 2);
  });

  test.each([
    [[100, 10, 100], 25],
    [[200, 200, 200, 200, 20], 71.43],
  ])("harmonic mean of %j: %f", (sizes, mean) => {
    expect(harmonicMean(sizes)).toBeCloseTo(mean, 2);
  });

  // Vencovsky & Crossa 1999, Crop Sci. 39:1282, after Gale & Lawrence 1984.
  test.each([
    [0.3, 85],
    [0.9, 55],
    [1, 50],
  ])("100 plants with %f selfed: %i", (selfed, effective) => {
    expect(partlySelfed(100, selfed)).toBeCloseTo(effective, 9);
  });

  test.each([
    [0.1, 40, 0.999782],
    [0.05, 100, 0.999965],
    [0.01, 300, 0.997595],
    [0.05, 20, 0.871488],
  ])("an allele of %f in %i plants is kept with %f", (share, plants, chance) => {
    expect(alleleKept(share, [plants])).toBeCloseTo(chance, 6);
  });

  // Crossa 1989, TAG 77:153-161: 40 plants keep alleles above 10 %, 100 keep 5 %, 300-400 are needed for 1 %.
  test("the numbers printed for keeping alleles are near certain", () => {
    for (const [share, plants] of [
      [0.1, 40],
      [0.05, 100],
      [0.01, 300],
    ] as const) {
      expect(alleleKept(share, [plants])).toBeGreaterThan(0.99);
    }
  });

  test.each([
    [0.01, 10, 0.04889],
    [0.05, 10, 0.2237],
    [0.001, 20, 0.00995],
  ])("foreign seed of %f over %i generations: %f of the heritage", (share, times, foreign) => {
    expect(foreignAfter(share, times)).toBeCloseTo(foreign, 4);
  });
});

describe("plants that are seed and pollen parents at once", () => {
  test("are as many as they are, where seed is taken of all", () => {
    expect(plantsOfBothSexes(parents(100, 100))).toBeCloseTo(100, 9);
  });

  test("with equal seed of all and pollen at random give 4N/3: 133.3", () => {
    expect(plantsOfBothSexes(parents(100, 100, true))).toBeCloseTo(133.33, 2);
  });

  // (4N - 2)/(Vk + 2): equal seed leaves the pollen's variance alone, Vk about 1; at random Vk is 2.
  test.each([
    [2, 49.5, false],
    [1, 198 / 3, true],
  ])("agree with the formula of family sizes, variance %i", (variance, effective, isEqualSeed) => {
    expect((4 * 50 - 2) / (variance + 2)).toBeCloseTo(effective, 9);
    expect(plantsOfBothSexes(parents(50, 50, isEqualSeed)) / effective).toBeCloseTo(1, 1);
  });

  test("one ear of a hundred plants weighs as four, not more than separate parents would", () => {
    const one = plantsOfBothSexes(parents(1, 100));
    expect(one).toBeLessThan(unequalParents(100, 1));
    expect(one / unequalParents(100, 1)).toBeGreaterThan(0.97);
    // Equal seed of a single plant changes nothing.
    expect(plantsOfBothSexes(parents(1, 100, true))).toBeCloseTo(one, 9);
  });

  test("never count for more than separate parents, nor than equal seed of all", () => {
    for (let seed = 1; seed <= 60; seed += 1) {
      for (let pollen = 1; pollen <= 60; pollen += 1) {
        const effective = plantsOfBothSexes(parents(seed, pollen));
        expect(effective).toBeLessThanOrEqual(unequalParents(pollen, seed) + 1e-9);
        expect(plantsOfBothSexes(parents(seed, pollen, true))).toBeGreaterThanOrEqual(effective);
      }
    }
  });

  test.each([
    [30, 100],
    [100, 12],
    [5, 5],
  ])(
    "%i seed and %i pollen plants: as often as genes drawn by lot meet in one plant",
    (seed, pollen) => {
      const draws = 400_000;
      const random = lot(seed * 1000 + pollen);
      let together = 0;
      for (let draw = 0; draw < draws; draw += 1) {
        const [one, other] = [0, 1].map(() =>
          Math.floor(random() * (random() < 0.5 ? seed : pollen)),
        );
        if (one === other) together += 1;
      }
      expect(draws / together / plantsOfBothSexes(parents(seed, pollen))).toBeCloseTo(1, 1);
    },
  );
});

/** Numbers from a seed, the same each run. */
function lot(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 1_664_525 + 1_013_904_223) % 4_294_967_296;
    return state / 4_294_967_296;
  };
}

describe("kinds", () => {
  test("spinach has females and males: Wright's figure as it is printed", () => {
    expect(breedingOf(kind("spinach")).sexes).toBe("one");
    expect(plantsOfOneSex(parents(90, 10))).toBeCloseTo(36, 9);
    expect(effectiveSize(breedingOf(kind("spinach")), parents(80, 20))).toBeCloseTo(64, 9);
  });

  test("a selfer counts by its seed plants alone, and as half of them", () => {
    expect(effectiveSize(breedingOf(kind("lettuce")), parents(12, 500))).toBeCloseTo(6, 9);
    expect(effectiveSize(breedingOf(kind("pea")), parents(12, 1))).toBeCloseTo(6, 9);
  });

  // 35 % outcrossed on average (Street 2008, after Bond and Poulsen 1983).
  test("broad bean by its published share", () => {
    expect(effectiveSize(breedingOf(kind("broad-bean")), parents(40, 40))).toBeCloseTo(27, 9);
  });

  test("nothing is reckoned with nought plants", () => {
    expect(effectiveSize(breedingOf(kind("carrot")), parents(0, 50))).toBeNull();
    expect(effectiveSize(breedingOf(kind("carrot")), parents(50, 0))).toBeNull();
  });
});

describe("a rare allele over several generations", () => {
  test("by hand: one plant, then one plant", () => {
    // Half and half, 2 copies: 0, 1, 2 with 1/4, 1/2, 1/4; from 1 copy it is lost with 1/4.
    expect(alleleKept(0.5, [1, 1])).toBeCloseTo(1 - (1 / 4 + 1 / 8), 12);
  });

  test("is no better kept for another generation, nor worse for a bigger one", () => {
    const kept = alleleKept(0.05, [20, 20]);
    expect(kept).toBeLessThan(alleleKept(0.05, [20]));
    expect(alleleKept(0.05, [20, 40])).toBeGreaterThan(kept);
    expect(alleleKept(0.05, [])).toBe(1);
  });

  test("stays a chance for sizes of every sort", () => {
    for (const sizes of [[0.7], [1e6, 1e6], [3.96, 200, 12], repeated(30, 25)]) {
      const chance = alleleKept(0.05, sizes);
      expect(chance).toBeGreaterThanOrEqual(0);
      expect(chance).toBeLessThanOrEqual(1);
    }
  });
});
