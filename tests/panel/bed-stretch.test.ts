import { expect, test } from "vitest";
import type { Bed, Planting, RectangleShape } from "../../src/core/model/plan.ts";
import { alongBedOf, onStretch, stretchProblem } from "../../src/panel/bed-stretch.ts";

const bedShape: RectangleShape = {
  shape: "rectangle",
  x: 3,
  y: -2,
  widthM: 1.2,
  lengthM: 10,
  turnDeg: 35,
};
const bed: Bed = { id: "bed-1", code: "B01", outline: bedShape };

function planting(outline: Planting["outline"]): Planting {
  return {
    id: "planting-1",
    code: "B01-1",
    variety: "variety-1",
    bed: "bed-1",
    outline,
    purpose: "seed",
    flowering: "yes",
    cover: "none",
  };
}

test("a planting turned with its bed has a stretch that can be typed back", () => {
  const along = alongBedOf(planting(bedShape), [bed]);
  expect(along?.stretch.fromM).toBeCloseTo(0, 9);
  expect(along?.stretch.toM).toBeCloseTo(10, 9);
  if (!along) throw new Error("no stretch");
  const moved = onStretch(along, { fromM: 2.5, toM: 6 });
  expect(moved.lengthM).toBeCloseTo(3.5, 9);
  const again = alongBedOf(planting(moved), [bed]);
  expect(again?.stretch.fromM).toBeCloseTo(2.5, 9);
  expect(again?.stretch.toM).toBeCloseTo(6, 9);
});

test("width and place across the bed stay", () => {
  const narrow = { ...bedShape, widthM: 0.4, x: bedShape.x + 0.2, lengthM: 2 };
  const along = alongBedOf(planting(narrow), [bed]);
  if (!along) throw new Error("no stretch");
  const same = onStretch(along, along.stretch);
  expect(same.x).toBeCloseTo(narrow.x, 9);
  expect(same.y).toBeCloseTo(narrow.y, 9);
  expect(same.widthM).toBe(0.4);
});

test("a planting that lies otherwise, is no rectangle or has no bed has no stretch", () => {
  expect(alongBedOf(planting({ ...bedShape, turnDeg: 80 }), [bed])).toBeNull();
  expect(alongBedOf(planting(bedShape), [])).toBeNull();
  const corners: [number, number][] = [
    [0, 0],
    [1, 0],
    [0, 1],
  ];
  expect(alongBedOf(planting({ shape: "polygon", corners }), [bed])).toBeNull();
});

test("half a turn is the same lie", () => {
  expect(alongBedOf(planting({ ...bedShape, turnDeg: -145 }), [bed])).not.toBeNull();
});

test("a stretch must go forward", () => {
  expect(stretchProblem({ fromM: 3, toM: 3 })).not.toBeNull();
  expect(stretchProblem({ fromM: 3, toM: 4 })).toBeNull();
});
