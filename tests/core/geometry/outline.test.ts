import { describe, expect, test } from "vitest";
import { boundsGap, growBounds, joinBounds } from "../../../src/core/geometry/bounds.ts";
import {
  moveShape,
  normalTurn,
  outlineArea,
  outlineContains,
  outlineOf,
  rectangleCorners,
  shapeCentre,
  shapeCorners,
  turnShape,
} from "../../../src/core/geometry/outline.ts";
import { directionDeg, pointDistance, turnPoint } from "../../../src/core/geometry/point.ts";
import type { RectangleShape } from "../../../src/core/model/plan.ts";
import { seededRandom } from "../../properties/seeded-random.ts";
import { polygonOf, randomStar, rectangle } from "../../support/shape-pairs.ts";
import { compassWord } from "../../../src/core/words/compass-words.ts";

describe("a rectangle", () => {
  test("at no turn has its length up the sheet", () => {
    const corners = rectangleCorners(rectangle(10, 20, 2, 6) as RectangleShape);
    expect(corners).toEqual([
      { x: 9, y: 17 },
      { x: 9, y: 23 },
      { x: 11, y: 23 },
      { x: 11, y: 17 },
    ]);
  });

  test("turned a quarter clockwise has its length to the right", () => {
    const { bounds } = outlineOf(rectangle(0, 0, 2, 6, 90));
    expect(bounds.maxX).toBeCloseTo(3, 12);
    expect(bounds.maxY).toBeCloseTo(1, 12);
    // What was its far end now points right.
    expect(rectangleCorners(rectangle(0, 0, 2, 6, 90) as RectangleShape)[1]?.x).toBeCloseTo(3, 12);
  });

  test("keeps its ground however it is turned", () => {
    for (const turn of [0, 12, 45, 90, -133]) {
      expect(outlineArea(outlineOf(rectangle(500, -90, 1.2, 9, turn)))).toBeCloseTo(10.8, 9);
    }
  });
});

test("holes count as no ground and hold nothing", () => {
  const square = (half: number) =>
    [
      [-half, -half],
      [half, -half],
      [half, half],
      [-half, half],
    ] as const;
  const outline = outlineOf(polygonOf(square(5), [square(2)]));
  expect(outlineArea(outline)).toBe(100 - 16);
  expect([
    outlineContains(outline, 4, 0),
    outlineContains(outline, 1, 0),
    outlineContains(outline, 6, 0),
  ]).toEqual([true, false, false]);
});

test("moving and turning there and back gives the shape again, and turns agree with corners", () => {
  for (let seed = 1; seed <= 200; seed += 1) {
    const random = seededRandom(seed);
    const shape = random.chance(0.5)
      ? randomStar(random)
      : rectangle(random.between(-9, 9), 3, 1, 4, random.between(-180, 180));
    const centre = { x: random.between(-9, 9), y: random.between(-9, 9) };
    const turn = random.between(-400, 400);
    const turned = turnShape(shape, centre, turn);
    shapeCorners(turned).forEach((corner, index) => {
      const was = shapeCorners(shape)[index] ?? centre;
      expect(pointDistance(corner, turnPoint(was, centre, turn))).toBeLessThan(1e-9);
    });
    const back = turnShape(moveShape(moveShape(turned, 7, -3), -7, 3), centre, -turn);
    shapeCorners(back).forEach((corner, index) => {
      expect(pointDistance(corner, shapeCorners(shape)[index] ?? centre)).toBeLessThan(1e-9);
    });
    expect(outlineArea(outlineOf(turned))).toBeCloseTo(outlineArea(outlineOf(shape)), 9);
  }
});

test("a turn is told between -180 (not reached) and 180 degrees", () => {
  expect([0, 360, 370, -10, 180, -180, 540, 719].map(normalTurn)).toEqual([
    0, 0, 10, -10, 180, 180, 180, -1,
  ]);
});

test("the middle of a shape", () => {
  expect(shapeCentre(rectangle(3, 4, 1, 9, 33))).toEqual({ x: 3, y: 4 });
  expect(
    shapeCentre(
      polygonOf([
        [0, 0],
        [6, 0],
        [0, 4],
      ]),
    ),
  ).toEqual({ x: 3, y: 2 });
  expect(shapeCentre({ shape: "point", x: 1, y: 2 })).toEqual({ x: 1, y: 2 });
});

test("bounds", () => {
  const a = { minX: 0, minY: 0, maxX: 2, maxY: 2 };
  const b = { minX: 5, minY: 6, maxX: 7, maxY: 8 };
  expect(boundsGap(a, b)).toBe(5);
  expect(boundsGap(a, growBounds(a, 1))).toBe(0);
  expect(joinBounds([a, b])).toEqual({ minX: 0, minY: 0, maxX: 7, maxY: 8 });
  expect(joinBounds([])).toBeNull();
});

test("directions and compass words run clockwise from north", () => {
  const from = { x: 0, y: 0 };
  expect([
    directionDeg(from, { x: 0, y: 1 }),
    directionDeg(from, { x: 1, y: 0 }),
    directionDeg(from, { x: -1, y: 0 }),
  ]).toEqual([0, 90, 270]);
  expect([0, 44, 46, 90, 225, 359, -90, 720].map(compassWord)).toEqual([
    "north",
    "north-east",
    "north-east",
    "east",
    "south-west",
    "north",
    "west",
    "north",
  ]);
});
