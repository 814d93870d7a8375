import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { labelPlace, sideLabelPlace, uprightAngle } from "../../../src/canvas/draw/label-place.ts";
import { endBoxes } from "../../../src/canvas/draw/label-boxes.ts";
import { handleSizes } from "../../../src/canvas/scene/handles.ts";
import { itemHandles } from "../../../src/canvas/scene/item-handles.ts";
import { type SheetItem, sheetItems } from "../../../src/canvas/scene/sheet-items.ts";
import type { LabelBox } from "../../../src/core/page/label-box.ts";
import type { View } from "../../../src/canvas/scene/viewport.ts";
import { outlineContains, outlineOf } from "../../../src/core/geometry/outline.ts";
import type { Bed, Shape } from "../../../src/core/model/plan.ts";
import { bedOf, book, drawnPlan, rectangle } from "../../support/drawn-plan.ts";

const view: View = { scale: 20, x: 0, y: 0 };
const words = { widthPx: 60, heightPx: 19 };

/** The first box for a code of 30 x 13 px beside a bed's end. */
function endOf(outline: Bed["outline"]): LabelBox {
  const { plan, layout } = drawnPlan({ beds: [bedOf("b1", outline)] });
  const item = sheetItems(plan, layout, book).byId.get("b1") as SheetItem;
  const seen = { left: -2000, top: -2000, width: 4000, height: 4000 };
  const [first] = endBoxes(item, { view, seen, size: { width: 30, height: 13 } });
  return first as LabelBox;
}

const at = (shape: Shape) => labelPlace(shape, outlineOf(shape), view, words);

test("no label stands on its head", () => {
  fc.assert(
    fc.property(fc.double({ min: -360, max: 360, noNaN: true }), (turnDeg) => {
      const shape = rectangle(0, 0, 1.2, 8, turnDeg);
      const angles = [
        at(shape)?.angle ?? NaN,
        endOf(shape).turnDeg * (Math.PI / 180),
        sideLabelPlace(outlineOf(shape), view, 6).angle,
      ];
      for (const angle of angles) {
        expect(angle).toBeGreaterThanOrEqual(-Math.PI / 2 - 1e-9);
        expect(angle).toBeLessThan(Math.PI / 2);
      }
    }),
  );
});

test("upright angles stay on the same line", () => {
  expect(uprightAngle(Math.PI)).toBeCloseTo(0);
  expect(uprightAngle(Math.PI / 2)).toBeCloseTo(-Math.PI / 2);
  expect(uprightAngle(-3)).toBeCloseTo(Math.PI - 3);
});

describe("a code", () => {
  test("runs along the bed when it lies across the screen", () => {
    expect(at(rectangle(0, 0, 1.2, 8, 82))?.angle).toBeCloseTo((-8 * Math.PI) / 180);
  });

  test("reads level on ground that is wide enough, else upward", () => {
    expect(at(rectangle(0, 0, 4, 8, 0))?.angle).toBeCloseTo(0);
    expect(at(rectangle(0, 0, 1.2, 8, 0))?.angle).toBeCloseTo(-Math.PI / 2);
  });

  test("is left out where it does not fit", () => {
    expect(at(rectangle(0, 0, 0.5, 8, 82))).toBeNull();
    expect(at(rectangle(0, 0, 1.2, 1.5, 82))).toBeNull();
  });

  test("stands on the ground of a hooked outline, not in its bay", () => {
    const corners = [
      [0, 0],
      [12, 0],
      [12, 2],
      [4, 2],
      [4, 8],
      [12, 8],
      [12, 10],
      [0, 10],
    ] as const;
    const hook: Shape = { shape: "polygon", corners };
    const place = at(hook)?.at ?? { x: NaN, y: NaN };
    expect(outlineContains(outlineOf(hook), place.x / 20, -place.y / 20)).toBe(true);
  });
});

describe("a bed's code", () => {
  test("stands to the left of a bed that lies across", () => {
    const { centre, bounds } = endOf(rectangle(0, 0, 1.2, 8, 90));
    expect(bounds.left + bounds.width).toBeCloseTo(-85);
    expect(centre.y).toBeCloseTo(0);
  });

  test("stands over the upper end of a bed that stands", () => {
    const { bounds, turnDeg } = endOf(rectangle(0, 0, 1.2, 8, 0));
    expect(bounds.top + bounds.height).toBeCloseTo(-85);
    expect(turnDeg).toBeCloseTo(0);
  });

  test("is out of the way of the handle that turns it", () => {
    for (const turnDeg of [0, 90, 180, 270]) {
      const outline = rectangle(0, 0, 1.2, 8, turnDeg);
      const { bounds } = endOf(outline);
      const { plan, layout } = drawnPlan({ beds: [bedOf("b1", outline)] });
      const items = sheetItems(plan, layout, book);
      const bed = items.byId.get("b1") as SheetItem;
      const handles = itemHandles(bed, items, view, handleSizes(true));
      const { x, y } = handles.find(({ handle }) => handle.kind === "turn")?.at ?? { x: 0, y: 0 };
      const isOver = x > bounds.left - 20 && x < bounds.left + bounds.width + 20;
      expect(isOver && y > bounds.top - 20 && y < bounds.top + bounds.height + 20).toBe(false);
    }
  });
});

test("a label beside an outline lies outside it", () => {
  const outline = outlineOf(rectangle(3, 4, 2, 30, 85));
  const { at: place } = sideLabelPlace(outline, view, 13);
  expect(outlineContains(outline, place.x / 20, -place.y / 20)).toBe(false);
  expect(place.y).toBeLessThan(-80);
});
