import { expect, test } from "vitest";
import type { PolygonShape } from "../../../src/core/model/plan.ts";
import {
  addCornerAfter,
  moveCorner,
  removeCorner,
} from "../../../src/panel/particulars/corner-edits.ts";

const square: PolygonShape = {
  shape: "polygon",
  corners: [
    [0, 0],
    [4, 0],
    [4, 4],
    [0, 4],
  ],
};

test("a corner moves alone", () => {
  const edit = moveCorner(square, 2, 6, 5);
  expect(edit.ok && edit.outline.corners).toEqual([
    [0, 0],
    [4, 0],
    [6, 5],
    [0, 4],
  ]);
});

test("a move that makes the outline cross itself is refused and says so", () => {
  const edit = moveCorner(square, 2, -2, 1);
  expect(edit).toMatchObject({ ok: false });
  expect(edit.ok ? "" : edit.reason).toContain("crosses or touches itself");
});

test("a new corner lies halfway to the next, across the closing edge too", () => {
  expect(addCornerAfter(square, 3).corners.at(-1)).toEqual([0, 2]);
});

test("three corners stay", () => {
  const removed = removeCorner(square, 0);
  expect(removed.ok && removed.outline.corners).toHaveLength(3);
  const triangle: PolygonShape = { shape: "polygon", corners: square.corners.slice(1) };
  expect(removeCorner(triangle, 0)).toEqual({ ok: false, reason: "Three corners must stay" });
});
