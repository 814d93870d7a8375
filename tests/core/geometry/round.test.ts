import { expect, test } from "vitest";
import { outlineArea, outlineOf, turnShape } from "../../../src/core/geometry/outline.ts";
import { circleOf, roundShape } from "../../../src/core/geometry/round.ts";
import { ringProblem } from "../../../src/core/model/ring.ts";

test("a round bed is an outline of the circle's size, and its diameter can be read back", () => {
  const shape = roundShape({ x: 3, y: -2, diameterM: 5 });
  expect(ringProblem(shape.corners)).toBeNull();
  const circle = circleOf(shape);
  expect(circle?.x).toBeCloseTo(3, 5);
  expect(circle?.y).toBeCloseTo(-2, 5);
  expect(circle?.diameterM).toBeCloseTo(5, 5);
  // The area of a regular polygon of n corners on a circle of radius r is n r² sin(2π/n) / 2.
  expect(outlineArea(outlineOf(shape))).toBeCloseTo((64 * 6.25 * Math.sin(Math.PI / 32)) / 2, 4);
});

test("turned and moved it is still round; pulled at one corner it is not", () => {
  const shape = roundShape({ x: 0, y: 0, diameterM: 2 });
  expect(circleOf(turnShape(shape, { x: 9, y: 4 }, 31))?.diameterM).toBeCloseTo(2, 5);
  const corners = shape.corners.map(([x, y], index): [number, number] =>
    index === 0 ? [x + 0.01, y] : [x, y],
  );
  expect(circleOf({ shape: "polygon", corners })).toBeNull();
});

test("an octagon is drawn as one, and neither a rectangle nor a point is round", () => {
  const corners = Array.from({ length: 8 }, (_, index): [number, number] => [
    Math.cos((index * Math.PI) / 4),
    Math.sin((index * Math.PI) / 4),
  ]);
  expect(circleOf({ shape: "polygon", corners })).toBeNull();
  expect(circleOf({ shape: "point", x: 0, y: 0 })).toBeNull();
});
