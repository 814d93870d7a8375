import { describe, expect, test } from "vitest";
import { alignObjects } from "../../../src/core/edits/align.ts";
import { distributeObjects, spreadProblem } from "../../../src/core/edits/distribute.ts";
import { gapBetween } from "../../../src/core/geometry/gap.ts";
import { outlineOf } from "../../../src/core/geometry/outline.ts";
import { turnedBounds } from "../../../src/core/geometry/turned-bounds.ts";
import type { Bed, Layout, Plan, RectangleShape } from "../../../src/core/model/plan.ts";
import { LAYOUT, littlePlan, planting, rectangle } from "../../support/little-plan.ts";

function bed(id: string, outline: RectangleShape, more: Partial<Bed> = {}): Bed {
  return { id, code: id.toUpperCase(), outline, ...more };
}

function planOf(beds: readonly Bed[], plantings: Layout["plantings"] = []): Plan {
  return { ...littlePlan, layouts: [{ id: LAYOUT, name: "One", beds, plantings }] };
}

const layoutOf = (plan: Plan): Layout => plan.layouts[0] as Layout;
const outlines = (plan: Plan) => layoutOf(plan).beds.map(({ outline }) => outline);
const ids = ["b1", "b2", "b3"];

describe("align", () => {
  const beds = [
    bed("b1", rectangle(0, 0, 1, 10)),
    bed("b2", rectangle(5, 3, 2, 4)),
    bed("b3", rectangle(9, -2, 1, 6)),
  ];

  test("brings sides into the line of the first, which stays", () => {
    const plan = planOf(beds);
    const near = alignObjects(LAYOUT, ids, "near", "first", "Align").apply(plan);
    expect(outlines(near).map((shape) => turnedBounds(shape, 0).minY)).toEqual([-5, -5, -5]);
    expect(layoutOf(near).beds[0]).toBe(beds[0]);
    const right = alignObjects(LAYOUT, ["b2", "b1"], "right", "first", "Align").apply(plan);
    expect(outlines(right).map((shape) => turnedBounds(shape, 0).maxX)).toEqual([6, 6, 9.5]);
  });

  test("in the sheet's frame goes to the outermost side of all", () => {
    const far = alignObjects(LAYOUT, ids, "far", "sheet", "Align").apply(planOf(beds));
    expect(outlines(far).map((shape) => turnedBounds(shape, 0).maxY)).toEqual([5, 5, 5]);
    const middle = alignObjects(LAYOUT, ids, "middle", "sheet", "Align").apply(planOf(beds));
    const centres = outlines(middle).map((shape) => turnedBounds(shape, 0));
    for (const { minX, maxX } of centres) expect((minX + maxX) / 2).toBeCloseTo(4.5, 9);
  });

  test("works along a turned bed's own directions", () => {
    const turned = [
      bed("b1", rectangle(0, 0, 1, 10, 30)),
      bed("b2", rectangle(5, 3, 2, 4, 30)),
      bed("b3", rectangle(9, -2, 1, 6, 30)),
    ];
    const far = alignObjects(LAYOUT, ids, "far", "first", "Align").apply(planOf(turned));
    for (const shape of outlines(far)) expect(turnedBounds(shape, 30).maxY).toBeCloseTo(5, 9);
  });

  test("leaves what is locked where it is, and takes plantings along with their bed", () => {
    const held = [
      beds[0] as Bed,
      bed("b2", rectangle(5, 3, 2, 4), { locked: true }),
      beds[2] as Bed,
    ];
    const inside = planting("p1", "B3-1", rectangle(9, -2, 1, 2), "b3");
    const plan = planOf(held, [inside]);
    const next = alignObjects(LAYOUT, [...ids, "p1"], "near", "first", "Align").apply(plan);
    expect(layoutOf(next).beds[1]).toBe(held[1]);
    expect(layoutOf(next).beds[2]?.outline).toMatchObject({ y: -2 });
    expect(layoutOf(next).plantings[0]).toMatchObject({ bed: "b3", outline: { y: -2 } });
    const lower = alignObjects(LAYOUT, ["b1", "b3", "p1"], "far", "first", "Align").apply(plan);
    expect(layoutOf(lower).plantings[0]?.outline).toMatchObject({ x: 9, y: 2 });
  });
});

describe("distribute", () => {
  const beds = [
    bed("b1", rectangle(0, 0, 1, 10)),
    bed("b2", rectangle(2, 0, 2, 10)),
    bed("b3", rectangle(10, 0, 1, 10)),
  ];
  const gaps = (plan: Plan) => {
    const [first, second, third] = outlines(plan).map(outlineOf);
    if (!first || !second || !third) throw new Error("three beds");
    return [gapBetween(first, second).distanceM, gapBetween(second, third).distanceM];
  };

  test("makes gaps equal, not centres, and keeps the outermost and the order", () => {
    const next = distributeObjects(
      LAYOUT,
      ids,
      { axis: "across", frame: "first", gapM: null },
      "Space",
    ).apply(planOf(beds));
    // 0.5 to 9.5 less 2 m of bed leaves 7 m for two gaps.
    for (const gap of gaps(next)) expect(gap).toBeCloseTo(3.5, 9);
    expect(outlines(next)[0]).toBe(beds[0]?.outline);
    expect(outlines(next)[2]).toMatchObject({ x: 10 });
  });

  test("takes a typed gap, the first staying", () => {
    const next = distributeObjects(
      LAYOUT,
      ids,
      { axis: "across", frame: "first", gapM: 0.6 },
      "Space",
    ).apply(planOf(beds));
    for (const gap of gaps(next)) expect(gap).toBeCloseTo(0.6, 9);
    expect(outlines(next)[0]).toMatchObject({ x: 0 });
  });

  test("spaces turned beds along their own directions", () => {
    const turned = beds.map((entry) =>
      bed(entry.id, { ...entry.outline, turnDeg: 25 } as RectangleShape),
    );
    const next = distributeObjects(
      LAYOUT,
      ids,
      { axis: "across", frame: "first", gapM: 1 },
      "Space",
    ).apply(planOf(turned));
    const sides = outlines(next).map((shape) => turnedBounds(shape, 25));
    expect((sides[1]?.minX ?? 0) - (sides[0]?.maxX ?? 0)).toBeCloseTo(1, 9);
    expect((sides[2]?.minX ?? 0) - (sides[1]?.maxX ?? 0)).toBeCloseTo(1, 9);
  });

  test("says why it cannot, and then changes nothing", () => {
    const plan = planOf(beds);
    const layout = layoutOf(plan);
    expect(
      spreadProblem(plan, layout, ["b1", "b2"], { axis: "across", frame: "first", gapM: null }),
    ).toContain("3");
    expect(
      spreadProblem(plan, layout, ids, { axis: "along", frame: "first", gapM: null }),
    ).toContain("room");
    const held = planOf(beds.map((entry) => ({ ...entry, locked: entry.id === "b2" })));
    expect(
      spreadProblem(held, layoutOf(held), ids, { axis: "across", frame: "first", gapM: 1 }),
    ).toBe("B2 is locked");
    expect(
      distributeObjects(LAYOUT, ids, { axis: "across", frame: "first", gapM: 1 }, "Space").apply(
        held,
      ),
    ).toBe(held);
  });
});
