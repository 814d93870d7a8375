import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { resolveStands } from "../../../src/core/checks/stand.ts";
import { gapBetween } from "../../../src/core/geometry/gap.ts";
import {
  type CrossingEstimate,
  type ShareEstimate,
  crossingEstimate,
  crossingEstimates,
} from "../../../src/core/crossing-share/estimate.ts";
import type { Plan, Planting, RectangleShape } from "../../../src/core/model/plan.ts";
import { fieldPlan } from "../../bench/field.ts";
import { type TrialPlanting, bloom, book, source, trialPlan } from "../../support/trial-plan.ts";

const block = (x: number, sideM: number, y = 0): RectangleShape => ({
  shape: "rectangle",
  x,
  y,
  widthM: sideM,
  lengthM: sideM,
  turnDeg: 0,
});

function estimates(plan: Plan): ReadonlyMap<string, CrossingEstimate> {
  const [layout] = plan.layouts;
  if (!layout) throw new Error("a trial plan has a layout");
  const stands = resolveStands(plan, layout, book);
  return new Map(crossingEstimates(stands, book).map((each) => [each.seedParent, each]));
}

function estimateOf(plan: Plan, id = "a"): ShareEstimate {
  const found = estimates(plan).get(id);
  if (found?.way !== "estimate") throw new Error(`${id} has no estimate: ${found?.way}`);
  return found;
}

const maize = (x: number, more: Partial<TrialPlanting> = {}): TrialPlanting => ({
  at: 0,
  kind: "sweet-corn",
  outline: block(x, 5),
  ...more,
});

describe("maize", () => {
  test("the two curves give the ends of the range", () => {
    const { shares, by } = estimateOf(trialPlan({ a: maize(0), b: maize(15) }));
    expect(by).toBe("maize");
    // Reference: 5 x 5 m beds 10 m apart, fit 0.406 %, published kernel 1.105 %. The lower end
    // counts blooms that may lie apart by no day here, both being dated alike.
    expect(100 * shares[0]).toBeCloseTo(0.406, 2);
    expect(100 * shares[1]).toBeCloseTo(1.105, 2);
  });

  test("several sources are added before dividing: two are less than twice one", () => {
    const one = estimateOf(trialPlan({ a: maize(0), b: maize(7) }));
    const two = estimateOf(trialPlan({ a: maize(0), b: maize(7), c: maize(-7) }));
    expect(two.shares[1]).toBeGreaterThan(one.shares[1]);
    expect(two.shares[1]).toBeLessThan(2 * one.shares[1]);
    expect(two.bySource.map((each) => each.source)).toEqual(["b", "c"]);
  });

  test("more of its own variety beside it thins the foreign pollen", () => {
    const variety = { id: "same", name: "Same" };
    const alone = estimateOf(trialPlan({ a: maize(0), b: maize(15) }));
    const withKin = estimateOf(
      trialPlan({ a: maize(0, { variety }), kin: maize(-5, { variety }), b: maize(15) }),
    );
    expect(withKin.shares[1]).toBeLessThan(alone.shares[1]);
  });

  test("two weeks between silks and tassels leave little, but never nothing", () => {
    const early = { bloom: bloom("07-01", "07-10") };
    const late = { bloom: bloom("07-15", "07-24") };
    const apart = estimateOf(trialPlan({ a: maize(0, early), b: maize(15, late) }));
    const together = estimateOf(trialPlan({ a: maize(0, early), b: maize(15, early) }));
    // exp(-14^2 / (4 s^2)): 0.089 for a spread of 4.5 days (open-pollinated stand).
    expect(apart.shares[1] / together.shares[1]).toBeCloseTo(0.089, 2);
    expect(apart.shares[0]).toBeGreaterThan(0);
    expect(apart.shares[0]).toBeLessThan(apart.shares[1] / 100);
  });

  test("farther than any trial is said", () => {
    expect(estimateOf(trialPlan({ a: maize(0), b: maize(150) })).isBeyondTrials).toBe(false);
    const far = estimateOf(trialPlan({ a: maize(0), b: maize(400) }));
    expect(far.isBeyondTrials).toBe(true);
    expect(far.shares[0]).toBeGreaterThan(0);
  });
});

describe("rape and turnip", () => {
  const plot = (kind: string, x: number, more: Partial<TrialPlanting> = {}): TrialPlanting => ({
    at: 0,
    kind,
    outline: block(x, 5),
    ...more,
  });

  test("separate plots of rape follow the published bins", () => {
    const { shares, by } = estimateOf(
      trialPlan({ a: plot("oilseed-rape", 0), b: plot("oilseed-rape", 40) }),
    );
    expect(by).toBe("rape");
    expect(shares.map((share) => 100 * share)).toEqual([
      expect.closeTo(0.14, 9),
      expect.closeTo(0.36, 9),
    ]);
  });

  test("plots that touch cross more than those with a gap", () => {
    const touching = estimateOf(
      trialPlan({ a: plot("oilseed-rape", 0), b: plot("oilseed-rape", 5) }),
    );
    expect(100 * touching.shares[1]).toBeCloseTo(6.74, 6);
  });

  test("self-incompatible turnip has the trial of turnip rape as its upper end, open when nearer", () => {
    const near = estimateOf(trialPlan({ a: plot("turnip", 0), b: plot("turnip", 20) }));
    expect(near).toMatchObject({ by: "turnip", isOpenAbove: true });
    expect(100 * near.shares[1]).toBeCloseTo(8.5, 0);
    const far = estimateOf(trialPlan({ a: plot("turnip", 0), b: plot("turnip", 142) }));
    expect(far.isOpenAbove).toBe(false);
    expect(100 * far.shares[1]).toBeCloseTo(5.6, 1);
  });

  test("blooms that miss each other are left out, and that is said", () => {
    const plan = trialPlan({
      a: plot("turnip", 0, { bloom: bloom("05-01", "05-20") }),
      b: plot("turnip", 20, { bloom: bloom("07-01", "07-20") }),
    });
    expect(estimates(plan).get("a")).toMatchObject({
      way: "trials",
      leftOut: [{ source: "b", why: "time" }],
    });
  });
});

describe("where nothing is worked out", () => {
  test("a measured kind gets the trials nearest to its distance", () => {
    const plan = trialPlan({ a: { at: 0, kind: "tomato" }, b: { at: 6, kind: "tomato" } });
    const found = estimates(plan).get("a");
    expect(found).toMatchObject({ way: "trials", nearest: { source: "b" } });
    expect(found?.way === "trials" && found.trials.map(({ percent }) => percent[0])).toEqual([
      4.9, 0.59,
    ]);
  });

  test.each(["beet", "spinach", "carrot"])("%s gets no number at all", (kind) => {
    const found = estimates(trialPlan({ a: { at: 0, kind }, b: { at: 6, kind } })).get("a");
    expect(found).toMatchObject({ way: "trials", trials: [] });
  });

  test("what stands under cover is left out, and that is said", () => {
    const plan = trialPlan({ a: maize(0, { cover: "bags" }), b: maize(15) });
    expect(estimates(plan).get("a")).toMatchObject({ leftOut: [{ source: "b", why: "cover" }] });
  });

  test("food plantings, and seed with nothing to cross with, have no estimate", () => {
    const plan = trialPlan({ a: maize(0, { purpose: "food" }), b: { at: 9, kind: "turnip" } });
    expect(estimates(plan).size).toBe(0);
  });
});

describe("for any garden of maize", () => {
  const shapes = fc.oneof(
    fc.record({
      shape: fc.constant("rectangle" as const),
      x: fc.double({ min: -60, max: 60, noNaN: true }),
      y: fc.double({ min: -60, max: 60, noNaN: true }),
      widthM: fc.double({ min: 1e-6, max: 30, noNaN: true }),
      lengthM: fc.double({ min: 1e-6, max: 30, noNaN: true }),
      turnDeg: fc.double({ min: 0, max: 359, noNaN: true }),
    }),
    fc.record({
      shape: fc.constant("point" as const),
      x: fc.integer({ min: -9, max: 9 }),
      y: fc.integer({ min: -9, max: 9 }),
    }),
    // Corners that may coincide, lie in line or cross.
    fc.record({
      shape: fc.constant("polygon" as const),
      corners: fc.array(
        fc.tuple(fc.integer({ min: -5, max: 5 }), fc.integer({ min: -5, max: 5 })),
        { minLength: 3, maxLength: 6 },
      ),
    }),
  );

  /** A single plant as a seed parent is no plan's, but the estimate must bear it. */
  test("shares are numbers from 0 to 1, the lower end not above the upper", () => {
    fc.assert(
      fc.property(shapes, fc.array(shapes, { minLength: 1, maxLength: 4 }), (own, others) => {
        const plan = trialPlan(
          { a: maize(0, { outline: own as Planting["outline"] }) },
          others.map((outline, index) =>
            source(`s${index}`, "sweet-corn", outline, { bloom: bloom("07-01", "07-31") }),
          ),
        );
        const { shares, bySource } = estimateOf(plan);
        for (const [low, high] of [shares, ...bySource.map((each) => each.shares)]) {
          expect(low).toBeGreaterThanOrEqual(0);
          expect(low).toBeLessThanOrEqual(high);
          expect(high).toBeLessThanOrEqual(1);
        }
      }),
      { numRuns: 300, seed: 20 },
    );
  });

  test("going farther away never makes more", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 80, noNaN: true }),
        fc.double({ min: 0.1, max: 80, noNaN: true }),
        (gap, more) => {
          const at = (distance: number) =>
            estimateOf(trialPlan({ a: maize(0), b: maize(5 + distance) })).shares;
          const [near, far] = [at(gap), at(gap + more)];
          expect(far[0]).toBeLessThanOrEqual(near[0]);
          expect(far[1]).toBeLessThanOrEqual(near[1]);
        },
      ),
      { numRuns: 60, seed: 20 },
    );
  });
});

test("estimates of all are those of each among all, and the nearest source is the nearest of all", () => {
  const plan = fieldPlan(120, 8);
  const [layout] = plan.layouts;
  if (!layout) throw new Error("a field has a layout");
  const stands = resolveStands(plan, layout, book);
  const all = crossingEstimates(stands, book);
  expect(all).toEqual(stands.flatMap((parent) => crossingEstimate(parent, stands, book) ?? []));
  let measured = 0;
  for (const each of all) {
    if (each.way !== "trials") continue;
    const parent = stands.find(({ id }) => id === each.seedParent);
    if (!parent) throw new Error("an estimate is of a stand");
    const others = stands.filter(({ id, kind }) => id !== parent.id && kind === parent.kind);
    const distances = others.map(({ outline }) => gapBetween(parent.outline, outline).distanceM);
    expect(each.nearest?.distanceM).toBe(Math.min(...distances));
    measured += 1;
  }
  expect(measured).toBeGreaterThan(50);
});
