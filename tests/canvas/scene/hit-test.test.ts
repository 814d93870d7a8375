import { describe, expect, test } from "vitest";
import { boxBetween, edgeNear, itemsAt, itemsInside } from "../../../src/canvas/scene/hit-test.ts";
import { sheetItems } from "../../../src/canvas/scene/sheet-items.ts";
import {
  bedOf,
  book,
  drawnPlan,
  plantingOf,
  rectangle,
  sourceAt,
} from "../../support/drawn-plan.ts";

const { plan, layout } = drawnPlan({
  beds: [
    bedOf("b1", rectangle(0, 0, 2, 10)),
    bedOf("b2", {
      shape: "polygon",
      corners: [
        [10, 0],
        [16, 0],
        [16, 6],
        [13, 2],
        [10, 6],
      ],
    }),
  ],
  plantings: [plantingOf("p1", rectangle(0, 0, 2, 4, 0), { bed: "b1" })],
  surroundings: [
    { ...sourceAt("field", 0, 0), outline: rectangle(5, 0, 40, 40) },
    sourceAt("plant", 0.5, 0.5),
  ],
});
const items = sheetItems(plan, layout, book);
const ids = (x: number, y: number, reachM = 0) =>
  itemsAt(items, { x, y }, reachM).map(({ id }) => id);

describe("under a place lie", () => {
  test("plantings over beds over surroundings", () => {
    expect(ids(0, -1)).toEqual(["p1", "b1", "field"]);
    expect(ids(0, 4)).toEqual(["b1", "field"]);
  });

  test("a single plant over all of them, within the pointer's reach", () => {
    expect(ids(0.6, 0.5, 0.2)).toEqual(["plant", "p1", "b1", "field"]);
    expect(ids(0.8, 0.5, 0.2)).toEqual(["p1", "b1", "field"]);
  });

  test("only what the outline encloses, not its box", () => {
    expect(ids(13, 5)).toEqual(["field"]);
    expect(ids(11, 3)).toEqual(["b2", "field"]);
  });

  test("what lies just beside the pointer after what holds it", () => {
    expect(ids(0, 5.1, 0.2)).toEqual(["field", "b1"]);
  });

  test("nothing, where nothing is", () => {
    expect(ids(100, 100, 1)).toEqual([]);
  });
});

test("a box holds what lies wholly inside it, drawn in either direction", () => {
  const box = boxBetween({ x: 2, y: 6 }, { x: -2, y: -6 });
  expect(itemsInside(items, box).map(({ id }) => id)).toEqual(["plant", "b1", "p1"]);
});

test("the nearest edge is found from both sides of it", () => {
  const inside = edgeNear(items, { x: 0.9, y: 1 }, 0.3);
  expect(inside?.at.x).toBeCloseTo(1);
  expect(inside?.at.y).toBeCloseTo(1);
  expect(edgeNear(items, { x: 1.2, y: 4 }, 0.3)?.item.id).toBe("b1");
  expect(edgeNear(items, { x: 3, y: 4 }, 0.3)).toBeNull();
});
