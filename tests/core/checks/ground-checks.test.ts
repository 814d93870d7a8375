/** Checks of where plantings lie: outside their bed, on each other's ground. */
import { describe, expect, test } from "vitest";
import type { AreaShape, Bed, Plan } from "../../../src/core/model/plan.ts";
import {
  book,
  check,
  findingsOf,
  layoutOf,
  squareAt,
  trialPlan,
  wordsOf,
} from "../../support/trial-plan.ts";

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

  test("a planting that stands in no bed is named where there are beds, and only there", () => {
    const alone = trialPlan({ p: { at: 90, kind: "tomato" } });
    expect(findingsOf(alone, "outside")).toEqual([]);
    const plan = withBeds(alone, [bed]);
    const found = findingsOf(plan, "outside");
    expect(found).toMatchObject([{ id: "outside|p|beds", inner: "p", outer: "beds" }]);
    expect(wordsOf(plan, "outside")).toEqual([
      expect.stringContaining("P Variety p lies in no bed"),
    ]);
  });

  test("a planting in no bed is held to the site's outline", () => {
    const corners: [number, number][] = [
      [0, -9],
      [20, -9],
      [20, 9],
      [0, 9],
    ];
    const outline = { shape: "polygon" as const, corners };
    const site = { name: "Garden", upBearingDeg: 0, outline };
    const plan = trialPlan({ p: { at: 19.6, kind: "tomato" } }, [], { site });
    const [found] = findingsOf(plan, "outside");
    expect(found).toMatchObject({ id: "outside|p", outer: "site" });
    expect(found?.measuredM).toBeCloseTo(0.6, 9);
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

describe("crowded", () => {
  // A square metre; how many fit follows from the kind's own spacing.
  const tomato = book.kind("tomato");
  const across = (spacingM: number) => Math.max(1, Math.floor(1 / spacingM + 1e-6));
  const fits =
    across(tomato?.spacing?.inRowM.value ?? 0) * across(tomato?.spacing?.betweenRowsM.value ?? 0);
  const limit = fits * 2;
  const planted = (plants: number) => trialPlan({ p: { at: 0, kind: "tomato", plants } });

  test("twice as many as fit pass, one more does not", () => {
    expect(findingsOf(planted(limit), "crowded")).toEqual([]);
    const plan = planted(limit + 1);
    const [found] = findingsOf(plan, "crowded");
    expect(found).toMatchObject({ severity: "caution", plants: limit + 1, fits });
    expect(wordsOf(plan, "crowded")[0]).toContain(`holds ${limit + 1} plants where ${fits} fit`);
  });

  test("rows may run the other way", () => {
    const outline = rectangle(0, 0, 0.3, 30);
    const turned = rectangle(0, 0, 30, 0.3);
    const found = [outline, turned].map((shape) =>
      findingsOf(
        trialPlan({ p: { at: 0, kind: "tomato", plants: 500, outline: shape } }),
        "crowded",
      ).map((finding) => (finding.check === "crowded" ? finding.fits : 0)),
    );
    expect(found[0]).toEqual(found[1]);
  });
});
