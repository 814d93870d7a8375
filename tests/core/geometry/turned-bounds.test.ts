import { expect, test } from "vitest";
import { outlineOf } from "../../../src/core/geometry/outline.ts";
import { outlinePerimeter } from "../../../src/core/geometry/perimeter.ts";
import { shiftOnSheet, turnedBounds } from "../../../src/core/geometry/turned-bounds.ts";

const bed = { shape: "rectangle", x: 3, y: 4, widthM: 1.2, lengthM: 9, turnDeg: 30 } as const;

test("in its own directions a rectangle is as wide and long as it says", () => {
  const { minX, maxX, minY, maxY } = turnedBounds(bed, 30);
  expect(maxX - minX).toBeCloseTo(1.2, 12);
  expect(maxY - minY).toBeCloseTo(9, 12);
});

test("a shift along a bed turned by a quarter goes to the right of the sheet", () => {
  const { x, y } = shiftOnSheet(0, 2, 90);
  expect(x).toBeCloseTo(2, 12);
  expect(y).toBeCloseTo(0, 12);
});

test("the line around counts all edges, those of holes as well, and none of a point", () => {
  expect(outlinePerimeter(outlineOf(bed))).toBeCloseTo(2 * (1.2 + 9), 12);
  const corners: [number, number][] = [
    [0, 0],
    [4, 0],
    [4, 3],
  ];
  const hole: [number, number][] = [
    [2, 0.5],
    [3, 0.5],
    [3, 1.5],
    [2, 1.5],
  ];
  // Sides 3, 4 and 5, and a square metre cut out.
  const ring = outlineOf({ shape: "polygon", corners, holes: [hole] });
  expect(outlinePerimeter(ring)).toBeCloseTo(12 + 4, 12);
  expect(outlinePerimeter(outlineOf({ shape: "point", x: 1, y: 1 }))).toBe(0);
});
