/** Plantings that change beds, arrows along beds, beds drawn beside beds. */
import { describe, expect, test } from "vitest";
import { liveIds } from "../../../src/canvas/sheet/live-ids.ts";
import { turnAndMove, turnBetweenBeds } from "../../../src/canvas/tools/move-edit.ts";
import { nudgeDirection, nudgeStep } from "../../../src/canvas/input/nudge.ts";
import { outlineCrossings } from "../../../src/canvas/tools/outline-crossings.ts";
import { bedBetween } from "../../../src/canvas/tools/draw-bed-shape.ts";
import { rectangleCorners } from "../../../src/core/geometry/outline.ts";
import { bedOf, drawnPlan, plantingOf, rectangle, sourceAt } from "../../support/drawn-plan.ts";

const level = bedOf("b1", rectangle(0, 0, 1.2, 10, 80));
const standing = bedOf("b2", rectangle(20, 0, 1.2, 10, 0));
const planting = plantingOf("p1", rectangle(1, 0.2, 1, 3, 80), { bed: "b1", code: "B1-1" });
const { plan, layout } = drawnPlan({ beds: [level, standing], plantings: [planting] });

describe("the turn between beds", () => {
  test("is as much as the beds differ, the shorter way", () => {
    expect(turnBetweenBeds(planting.outline, level, standing)).toBeCloseTo(-80);
    const opposite = bedOf("b3", rectangle(0, 0, 1, 5, -85));
    expect(turnBetweenBeds(planting.outline, level, opposite)).toBeCloseTo(15);
  });

  test("from no bed is to the nearest direction along the new one", () => {
    expect(turnBetweenBeds(rectangle(0, 0, 1, 3, 10), undefined, standing)).toBeCloseTo(-10);
    expect(turnBetweenBeds(rectangle(0, 0, 1, 3, 70), undefined, standing)).toBeCloseTo(20);
    expect(turnBetweenBeds(rectangle(0, 0, 1, 3, -100), undefined, standing)).toBeCloseTo(10);
  });

  test("is none onto open ground or a bed without a direction", () => {
    expect(turnBetweenBeds(planting.outline, level, undefined)).toBe(0);
    const corners = [
      [0, 0],
      [4, 0],
      [2, 5],
    ] as const;
    expect(
      turnBetweenBeds(planting.outline, level, bedOf("b4", { shape: "polygon", corners })),
    ).toBe(0);
  });
});

test("a planting turned and moved stays under the pointer and belongs to its new bed", () => {
  const grip = { x: 2, y: 0.2 };
  const edit = turnAndMove(
    layout.id,
    ["p1"],
    { about: grip, turnDeg: -80 },
    { x: 18, y: 0 },
    "Move B1-1",
  );
  const moved = edit.apply(plan).layouts[0]?.plantings[0];
  expect(edit.title).toBe("Move B1-1");
  expect(moved).toMatchObject({ bed: "b2", code: "B2-1" });
  expect(moved?.outline).toMatchObject({ turnDeg: 0 });
  const [near, , far] = rectangleCorners(moved?.outline as ReturnType<typeof rectangle>);
  expect(near && far && near.x < 20 && 20 < far.x && near.y < 0.2 && 0.2 < far.y).toBe(true);
});

describe("arrows", () => {
  const right = { x: 1, y: 0 };

  test("go along the bed everything selected lies in", () => {
    const direction = nudgeDirection(layout, ["p1"], right);
    expect(direction.x).toBeCloseTo(Math.cos((10 * Math.PI) / 180));
    expect(direction.y).toBeCloseTo(Math.sin((10 * Math.PI) / 180));
  });

  test("else as they point", () => {
    expect(nudgeDirection(layout, ["b1"], right)).toEqual(right);
    expect(nudgeDirection(layout, ["p1", "b2"], right)).toEqual(right);
  });

  test("step by round lengths of the plan's unit", () => {
    expect([nudgeStep("m", false), nudgeStep("m", true)]).toEqual([0.1, 1]);
    expect(nudgeStep("ft", true)).toBe(0.3048);
    expect(nudgeStep("ft", false) / 0.0254).toBeCloseTo(3);
  });
});

describe("a bed between two corners", () => {
  const sheet = { origin: { x: 0, y: 0 }, turnDeg: 0 };
  const free = { widthM: null, lengthM: null };

  test("has its length along the longer side", () => {
    expect(bedBetween(sheet, { x: 1, y: 1 }, { x: 11, y: 2.2 }, free, false)).toEqual({
      shape: "rectangle",
      x: 6,
      y: 1.6,
      widthM: 1.2,
      lengthM: 10,
      turnDeg: 90,
    });
  });

  test("is the same from whichever corner", () => {
    const [a, b] = [
      { x: 3, y: 4 },
      { x: 1, y: 9 },
    ];
    expect(bedBetween(sheet, a, b, free, false)).toEqual(bedBetween(sheet, b, a, free, false));
  });

  test("keeps free sizes, and is square when asked for", () => {
    const drawn = bedBetween(sheet, { x: 0, y: 0 }, { x: 1.234, y: 5.678 }, free, false);
    expect(drawn).toMatchObject({ widthM: 1.234, lengthM: 5.678 });
    const square = bedBetween(sheet, { x: 0, y: 0 }, { x: 1, y: -3 }, free, true);
    expect(square).toMatchObject({ widthM: 3, lengthM: 3, x: 1.5, y: -1.5 });
  });

  test("takes typed sizes, and its first corner stays", () => {
    const typed = { widthM: 1.2, lengthM: 8 };
    const across = bedBetween(sheet, { x: 0, y: 0 }, { x: -5, y: 1 }, typed, false);
    expect(across).toMatchObject({ widthM: 1.2, lengthM: 8, x: -4, y: 0.6, turnDeg: 90 });
    const up = bedBetween(sheet, { x: 0, y: 0 }, { x: 1, y: 5 }, { ...free, lengthM: 8 }, false);
    expect(up).toMatchObject({ widthM: 1, lengthM: 8, x: 0.5, y: 4, turnDeg: 0 });
  });
});

test("an outline being drawn tells where its sides cross", () => {
  const open = [
    { x: 0, y: 0 },
    { x: 4, y: 0 },
    { x: 4, y: 4 },
  ];
  expect(outlineCrossings([...open, { x: 0, y: 4 }])).toEqual([]);
  const [crossing, ...more] = outlineCrossings([...open, { x: 2, y: -4 }]);
  expect(crossing?.at).toEqual({ x: 3, y: 0 });
  expect(more).toEqual([]);
});

describe("drawn anew on every frame", () => {
  test("are selected plantings, selected beds with theirs, and what the preview changes", () => {
    const live = (ids: readonly string[]) => [...liveIds(plan, layout, plan, layout, ids)].sort();
    expect(live([])).toEqual([]);
    expect(live(["p1"])).toEqual(["p1"]);
    expect(live(["b1"])).toEqual(["b1", "p1"]);
    const shown = turnAndMove(
      layout.id,
      ["b2"],
      { about: { x: 0, y: 0 }, turnDeg: 0 },
      { x: 1, y: 0 },
      "Move",
    ).apply(plan);
    const after = shown.layouts[0] ?? layout;
    expect([...liveIds(plan, layout, shown, after, [])]).toEqual(["b2"]);
  });

  test("surroundings only once they move", () => {
    const around = drawnPlan({ surroundings: [sourceAt("s1", 0, 0)] });
    const ids = liveIds(around.plan, around.layout, around.plan, around.layout, ["s1"]);
    expect([...ids]).toEqual([]);
    const shown = turnAndMove(
      "layout-1",
      ["s1"],
      { about: { x: 0, y: 0 }, turnDeg: 0 },
      { x: 1, y: 0 },
      "Move",
    ).apply(around.plan);
    expect([...liveIds(around.plan, around.layout, shown, around.layout, ["s1"])]).toEqual(["s1"]);
  });
});
