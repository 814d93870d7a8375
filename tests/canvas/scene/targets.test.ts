/**
 * How large what can be clicked on the sheet is: WCAG 2.2, 2.5.8 Target Size (Minimum), 24 by 24
 * CSS pixels, and 44 by 44 (2.5.5) for fingers; at every size of bed and any turn.
 */
import { describe, expect, test } from "vitest";
import { handleAt, handleSizes, handlesOf } from "../../../src/canvas/scene/handles.ts";
import { itemsAt } from "../../../src/canvas/scene/hit-test.ts";
import { sheetItems } from "../../../src/canvas/scene/sheet-items.ts";
import { pointDistance } from "../../../src/core/geometry/point.ts";
import type { AreaShape } from "../../../src/core/model/plan.ts";
import {
  bedOf,
  book,
  drawnPlan,
  plantingOf,
  rectangle,
  sourceAt,
} from "../../support/drawn-plan.ts";

const VIEW = { scale: 1, x: 0, y: 0 };
const SIDES = [3, 8, 16, 23, 24, 30, 35, 36, 47, 48, 60, 96, 250];

const shapes: readonly AreaShape[] = [
  ...SIDES.flatMap((width) =>
    SIDES.filter((length) => length >= width).flatMap((length) =>
      [0, 30, 82].map((turnDeg) => rectangle(0, 0, width, length, turnDeg)),
    ),
  ),
  ...SIDES.map((side): AreaShape => ({
    shape: "polygon",
    corners: [
      [0, 0],
      [side, 0],
      [side * 1.2, side * 0.5],
      [side, side],
      [side * 0.5, side * 0.8],
      [0, side],
    ],
  })),
];

describe.each([
  ["a mouse", false, 24],
  ["a finger", true, 44],
])("for %s", (_, isCoarse, targetPx) => {
  const sizes = handleSizes(isCoarse);

  test(`every handle is taken ${targetPx} px wide, and none reaches into another`, () => {
    expect(sizes.reachPx * 2).toBeGreaterThanOrEqual(targetPx);
    for (const shape of shapes) {
      const handles = handlesOf(shape, VIEW, sizes);
      handles.forEach((one, index) => {
        expect(handleAt(handles, one.at, sizes)).toEqual(one.handle);
        for (const other of handles.slice(index + 1)) {
          if (other.handle.kind === "turn" && shape.shape === "polygon") continue;
          expect(pointDistance(one.at, other.at)).toBeGreaterThanOrEqual(targetPx - 1e-9);
        }
      });
    }
  });

  test("a bed of any size can still be taken by its middle", () => {
    for (const shape of shapes.filter((each) => each.shape === "rectangle")) {
      expect(handleAt(handlesOf(shape, VIEW, sizes), { x: 0, y: 0 }, sizes)).toBeNull();
    }
  });
});

describe("things of the sheet are met as if 24 px wide:", () => {
  // One pixel is a metre here.
  const { plan, layout } = drawnPlan({
    beds: [bedOf("bed", rectangle(0, 0, 60, 60)), bedOf("thin", rectangle(100, 0, 3, 80))],
    plantings: [plantingOf("small", rectangle(0, 0, 4, 4, 0), { bed: "bed" })],
    surroundings: [sourceAt("plant", 200, 0)],
  });
  const items = sheetItems(plan, layout, book);
  const top = (x: number, y: number) => itemsAt(items, { x, y }, 4, 24)[0]?.id;

  test.each([
    ["a planting of 4 px within a bed", 11.9, 0, "small"],
    ["the bed beside it, 13 px from its middle", 13, 0, "bed"],
    ["a bed 3 px thin", 111.9, 30, "thin"],
    ["a single plant", 211.9, 0, "plant"],
  ])("%s", (_, x, y, id) => {
    expect(top(x, y)).toBe(id);
  });

  test("ground farther off than that is empty", () => {
    expect(top(116, 30)).toBeUndefined();
    expect(top(213, 0)).toBeUndefined();
  });
});
