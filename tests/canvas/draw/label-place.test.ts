import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { uprightAngle } from "../../../src/canvas/draw/label-place.ts";
import { besideBoxes, endBoxes, insideBoxes } from "../../../src/canvas/draw/label-boxes.ts";
import { ringsInPixels } from "../../../src/canvas/draw/label-room.ts";
import { handleSizes } from "../../../src/canvas/scene/handles.ts";
import { itemHandles } from "../../../src/canvas/scene/item-handles.ts";
import { type SheetItem, sheetItems } from "../../../src/canvas/scene/sheet-items.ts";
import { type LabelBox, isInRings } from "../../../src/core/page/label-box.ts";
import type { View } from "../../../src/canvas/scene/viewport.ts";
import { outlineContains, outlineOf } from "../../../src/core/geometry/outline.ts";
import type { Bed, Shape } from "../../../src/core/model/plan.ts";
import { bedOf, book, drawnPlan, rectangle } from "../../support/drawn-plan.ts";

const view: View = { scale: 20, x: 0, y: 0 };
const size = { width: 60, height: 19 };
const seen = { left: -2000, top: -2000, width: 4000, height: 4000 };

/** The first box for a code of 30 x 13 px beside a bed's end. */
function endOf(outline: Bed["outline"]): LabelBox {
  const { plan, layout } = drawnPlan({ beds: [bedOf("b1", outline)] });
  const item = sheetItems(plan, layout, book).byId.get("b1") as SheetItem;
  const [first] = endBoxes(item, { view, seen, size: { width: 30, height: 13 } });
  return first as LabelBox;
}

/** The first box for words on the ground itself, and beside its edges. */
function at(shape: Shape): LabelBox | undefined {
  const placed = { shape, outline: outlineOf(shape) };
  const { rings, box } = ringsInPixels(view, placed);
  const [first] = insideBoxes(placed, { view, seen: box, size }, (label) =>
    isInRings(label, rings),
  );
  return first;
}

function beside(shape: Shape): LabelBox {
  const [first] = besideBoxes({ shape, outline: outlineOf(shape) }, { view, seen, size });
  return first as LabelBox;
}

test("no label stands on its head", () => {
  fc.assert(
    fc.property(fc.double({ min: -360, max: 360, noNaN: true }), (turnDeg) => {
      const shape = rectangle(0, 0, 1.2, 8, turnDeg);
      const angles = [at(shape)?.turnDeg ?? NaN, endOf(shape).turnDeg, beside(shape).turnDeg];
      for (const angle of angles) {
        expect(angle).toBeGreaterThanOrEqual(-90 - 1e-6);
        expect(angle).toBeLessThan(90);
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
    expect(at(rectangle(0, 0, 1.2, 8, 82))?.turnDeg).toBeCloseTo(-8);
  });

  test("reads level on ground that is wide enough, else upward", () => {
    expect(at(rectangle(0, 0, 4, 8, 0))?.turnDeg).toBeCloseTo(0);
    expect(at(rectangle(0, 0, 1.2, 8, 0))?.turnDeg).toBeCloseTo(-90);
  });

  test("is left out where it does not fit", () => {
    expect(at(rectangle(0, 0, 0.5, 8, 82))).toBeUndefined();
    expect(at(rectangle(0, 0, 1.2, 1.5, 82))).toBeUndefined();
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
    const place = at(hook)?.centre ?? { x: NaN, y: NaN };
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
  const shape = rectangle(3, 4, 2, 30, 85);
  const { centre: place } = beside(shape);
  expect(outlineContains(outlineOf(shape), place.x / 20, -place.y / 20)).toBe(false);
  expect(place.y).toBeLessThan(-80);
});
