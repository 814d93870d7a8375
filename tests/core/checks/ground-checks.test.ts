/** Checks of where plantings lie: outside their bed, on each other's ground. */
import { describe, expect, test } from "vitest";
import type { AreaShape, Bed, Plan } from "../../../src/core/model/plan.ts";
import { check, findingsOf, layoutOf, squareAt, trialPlan, wordsOf } from "./trial-plan.ts";

function rectangle(x: number, y: number, widthM: number, lengthM: number): AreaShape {
  return { shape: "rectangle", x, y, widthM, lengthM, turnDeg: 0 };
}

function withBeds(plan: Plan, beds: readonly Bed[], more: Partial<Plan> = {}): Plan {
  return { ...plan, layouts: [{ ...layoutOf(plan), beds }], ...more };
}

const bed: Bed = { id: "b", code: "B01", outline: rectangle(2, 0, 4, 2) };

describe("outside", () => {
  const plantedAt = (at: number) =>
    findingsOf(withBeds(trialPlan({ p: { at, kind: "tomato", bed: "b" } }), [bed]), "outside");

  test.each([
    ["within its bed", 1, null],
    ["to the edge", 0, null],
    ["over by less than a stake's width", -0.009, null],
    ["over by a little more", -0.02, 0.02],
    ["over by half", -0.5, 0.5],
  ])("%s", (_, at, reachM) => {
    const found = plantedAt(at);
    expect(found).toHaveLength(reachM === null ? 0 : 1);
    if (reachM !== null) {
      expect(found[0]).toMatchObject({
        id: "outside|b|p",
        severity: "caution",
        inner: "p",
        outer: "b",
      });
      expect(found[0]?.measuredM).toBeCloseTo(reachM, 9);
    }
  });

  test("a planting that belongs to no bed is outside nothing", () => {
    const plan = withBeds(trialPlan({ p: { at: 90, kind: "tomato" } }), [bed]);
    expect(findingsOf(plan, "outside")).toEqual([]);
  });

  test("a bed that reaches out of the site", () => {
    const site = {
      name: "Garden",
      upBearingDeg: 0,
      outline: {
        shape: "polygon" as const,
        corners: [
          [1, -9],
          [9, -9],
          [9, 9],
          [1, 9],
        ] as [number, number][],
      },
    };
    const plan = withBeds(trialPlan({}), [bed], { site });
    expect(findingsOf(plan, "outside")).toMatchObject([
      { id: "outside|b", inner: "b", outer: "site" },
    ]);
    expect(wordsOf(plan, "outside")).toEqual([
      "bed B01 reaches out of the site It sticks out by 1 m.",
    ]);
  });
});

describe("overlap", () => {
  test.each([
    ["side by side", 1, null],
    ["within drawing accuracy", 0.985, null],
    ["3 cm into each other", 0.97, 0.03],
    ["half and half", 0.5, 0.5],
    ["on the same ground", 0, 0.5],
  ])("%s", (_, at, depthM) => {
    const plan = trialPlan({ p: { at: 0, kind: "tomato" }, q: { at, kind: "lettuce" } });
    const found = findingsOf(plan, "overlap");
    expect(found).toHaveLength(depthM === null ? 0 : 1);
    if (depthM !== null) {
      expect(found[0]).toMatchObject({
        id: "overlap|p|q",
        severity: "caution",
        subjects: ["p", "q"],
      });
      expect(found[0]?.measuredM).toBeCloseTo(depthM, 9);
    }
  });

  test("is measured the same whichever of the two moved last", () => {
    const start = trialPlan({
      a: { at: 0, kind: "tomato" },
      b: { at: 5, kind: "lettuce" },
      c: { at: 5, kind: "lettuce" },
    });
    const moved = (id: string, plan: Plan): Plan => ({
      ...plan,
      layouts: [
        {
          ...layoutOf(plan),
          plantings: layoutOf(plan).plantings.map((planting) =>
            planting.id === id
              ? { ...planting, outline: squareAt(id === "a" ? 0.25 : 0.75) }
              : planting,
          ),
        },
      ],
    });
    const bThenA = moved("a", moved("b", start));
    const aThenB = check(moved("b", moved("a", start)), check(moved("a", start)));
    expect(aThenB.findings).toEqual(check(bThenA).findings);
    expect(check(bThenA, check(moved("b", start))).findings).toEqual(check(bThenA).findings);
  });
});
