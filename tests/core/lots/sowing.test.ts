/** Worked values of seed needs from lecture slides on maize and from hand reckoning with 7 CFR 201.46. */
import { describe, expect, test } from "vitest";
import { plantsForSeed, seedYield } from "../../../src/core/lots/seed-yield.ts";
import { seedsFor, sowingRows } from "../../../src/core/lots/sowing.ts";
import type { Lot, Plan } from "../../../src/core/model/plan.ts";
import { book, day, layoutOf, trialPlan } from "../../support/trial-plan.ts";

test("40 plants/m2 of 50 g a thousand, 90 and 80 %: 27.778 kg/ha", () => {
  const seeds = seedsFor(40 * 10_000, 0, 0.9, 0.8);
  expect((seeds * 50) / 1e6).toBeCloseTo(27.778, 3);
});

test.each([
  [100, 0.1, 0.8, 0.6, 405, 230, 0.568],
  [60, 0.2, 0.85, 0.9, 405, 95, 0.23],
  [400, 0.1, 0.6, 0.5, 825, 1467, 1.78],
  [300, 0.1, 0.75, 0.6, 340, 734, 2.16],
])(
  "%d plants and %d spare at %d and %d, %d seeds a gram: %d seeds, %d g",
  (plants, spare, germination, emergence, perGram, seeds, grams) => {
    const needed = seedsFor(plants, spare, germination, emergence);
    expect(needed).toBe(seeds);
    expect(Math.abs(needed / perGram - grams)).toBeLessThan(0.005);
  },
);

test("wanted 100 at half: sow 200", () => {
  expect(seedsFor(100, 0, 0.5, 1)).toBe(200);
});

describe("seed to expect", () => {
  const onion = book.kind("onion");
  const tomato = book.kind("tomato");
  if (!onion || !tomato) throw new Error("kinds");

  test("300 g of onion at 5.5 g take 55 plants, but never fewer than keep the variety", () => {
    expect(plantsForSeed(300, 5.5, {})).toBe(55);
    expect(
      plantsForSeed(300, 5.5, { population: { maintenance: { value: 80, source: "x" } } }),
    ).toBe(80);
  });

  test("is a range, its source named, recalled figures as such", () => {
    expect(seedYield(onion, [])).toMatchObject({ gramsPerPlant: [5, 6], basis: "published" });
    expect(seedYield(tomato, [])?.basis).toBe("from memory");
  });

  test("follows own harvests once there are any, and one alone stays a range", () => {
    const own = (plants: number, cleanedGrams: number): Lot => ({
      id: `l${plants}`,
      code: `L${plants}`,
      variety: "v",
      state: "in stock",
      from: { what: "own", plants, cleanedGrams },
    });
    const two = seedYield(onion, [own(10, 30), own(20, 80)]);
    expect(two).toEqual({ gramsPerPlant: [3, 4], basis: "own", source: "2 own harvests" });
    const [least = 0, most = 0] = seedYield(onion, [own(10, 30)])?.gramsPerPlant ?? [];
    expect([least, most]).toEqual([3 * (2 / 3), 3 * (4 / 3)]);
  });
});

const lot = (id: string, more: Partial<Lot>): Lot => ({
  id,
  code: id.toUpperCase(),
  variety: "v-a",
  state: "in stock",
  ...more,
});
const fresh = (date: string, sprouted: number) => [
  { id: "t1", date: day(date), sown: 100, sprouted },
];

function shelfPlan(lots: readonly Lot[], more: Partial<Plan> = {}): Plan {
  return {
    ...trialPlan({
      a: {
        at: 0,
        kind: "lettuce",
        plants: 100,
        start: { method: "sown", date: day("2027-04-10") },
      },
      b: {
        at: 5,
        kind: "lettuce",
        variety: { id: "v-a" },
        plants: 100,
        start: { method: "sown", date: day("2027-03-10") },
      },
    }),
    lots,
    ...more,
  };
}

describe("what to sow", () => {
  test("comes in order of the day, and what is sown first is gone for the next", () => {
    const plan = shelfPlan([
      lot("one", { tests: fresh("2027-03-01", 90), amount: { unit: "seeds", value: 250 } }),
    ]);
    const rows = sowingRows(plan, layoutOf(plan), book);
    expect(rows.map(({ planting }) => planting.id)).toEqual(["b", "a"]);
    const [first, second] = rows;
    expect(first?.missingPlants).toBe(0);
    expect((first?.parts[0]?.seeds ?? 0) + (second?.parts[0]?.seeds ?? 0)).toBe(250);
    expect(second?.missingPlants).toBeGreaterThan(50);
    expect(second?.isEmergenceOwn).toBe(false);
  });

  test("goes from lot to lot, the best first, never from one that is used up", () => {
    const plan = shelfPlan([
      lot("weak", { tests: fresh("2027-03-01", 60), amount: { unit: "g", value: 100 } }),
      lot("good", { tests: fresh("2027-03-01", 95), amount: { unit: "seeds", value: 50 } }),
      lot("used", {
        tests: fresh("2027-03-01", 99),
        state: "used up",
        amount: { unit: "g", value: 9 },
      }),
    ]);
    const [row] = sowingRows(plan, layoutOf(plan), book);
    expect(row?.parts.map((part) => part.lot.id)).toEqual(["good", "weak"]);
    expect(row?.missingPlants).toBe(0);
    expect(row?.isNamed).toBe(false);
  });

  test("more of a weaker lot is needed, and own emergence goes before rules of thumb", () => {
    const seeds = (sprouted: number, more: Partial<Plan> = {}) => {
      const plan = shelfPlan([lot("one", { tests: fresh("2027-03-10", sprouted) })], more);
      return sowingRows(plan, layoutOf(plan), book)[0]?.seeds;
    };
    expect(seeds(80)).toBe(seedsFor(100, 0.1, 0.8, 0.6));
    expect(seeds(40)).toBe(seedsFor(100, 0.1, 0.4, 0.6));
    expect(seeds(80, { sowing: { emergence: 1, spare: 0 } })).toBe(125);
  });

  test("without a shelf of the variety nothing is missing; without a count nothing is reckoned", () => {
    const bare = shelfPlan([]);
    expect(sowingRows(bare, layoutOf(bare), book).map(({ missingSeeds }) => missingSeeds)).toEqual([
      0, 0,
    ]);
    const uncounted = trialPlan({ a: { at: 0, kind: "lettuce" } });
    expect(sowingRows(uncounted, layoutOf(uncounted), book)[0]?.seeds).toBeNull();
  });

  test("roots of a second year are set out, not sown", () => {
    const plan = trialPlan({
      root: { at: 0, kind: "beet", start: { method: "transplanted", date: day("2027-04-01") } },
      first: {
        at: 9,
        kind: "beet",
        flowering: "first-year",
        start: { method: "sown", date: day("2027-05-01") },
      },
    });
    expect(sowingRows(plan, layoutOf(plan), book).map(({ planting }) => planting.id)).toEqual([
      "first",
    ]);
  });
});
