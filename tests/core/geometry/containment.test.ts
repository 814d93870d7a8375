import { describe, expect, test } from "vitest";
import { overlapDepth, protrusion } from "../../../src/core/geometry/containment.ts";
import { outlineOf } from "../../../src/core/geometry/outline.ts";
import { polygonOf, rectangle } from "../../support/shape-pairs.ts";

const bed = outlineOf(rectangle(0, 0, 2, 10));
const lShape = polygonOf([
  [0, 0],
  [2, 0],
  [2, 1],
  [1, 1],
  [1, 2],
  [0, 2],
]);

describe("protrusion", () => {
  test.each([
    ["within", rectangle(0, 1, 1, 2), 0],
    ["filling it", rectangle(0, 0, 2, 10), 0],
    ["past one end", rectangle(0, 5, 1, 2), 1],
    ["past one side, no corner inside", rectangle(0, 0, 5, 1), 1.5],
    ["beside it", rectangle(4, 0, 1, 1), 3.5],
    ["a point within", { shape: "point", x: 0, y: 0 }, 0],
  ] as const)("%s", (_, shape, expected) => {
    expect(protrusion(outlineOf(shape), bed).distanceM).toBeCloseTo(expected, 9);
  });

  test("finds an edge that leaves a concave outline between two corners inside it", () => {
    const bridge = polygonOf([
      [0.1, 1.8],
      [0.2, 1.9],
      [1.9, 0.2],
      [1.8, 0.1],
    ]);
    expect(protrusion(outlineOf(bridge), outlineOf(lShape)).distanceM).toBeGreaterThan(0.01);
  });
});

test("a planting over the whole of a bed's hole reaches out of the bed", () => {
  const square = (half: number): readonly (readonly [number, number])[] => [
    [-half, -half],
    [half, -half],
    [half, half],
    [-half, half],
  ];
  const hollowBed = outlineOf(polygonOf(square(5), [square(1)]));
  expect(protrusion(outlineOf(rectangle(0, 0, 4, 4)), hollowBed).distanceM).toBeCloseTo(1, 9);
  expect(protrusion(outlineOf(rectangle(3, 0, 2, 4)), hollowBed).distanceM).toBe(0);
});

describe("overlapDepth", () => {
  test.each([
    ["side by side", rectangle(2, 0, 2, 10), 0],
    ["corner to corner", rectangle(2, 10, 2, 10), 0],
    ["apart", rectangle(5, 0, 2, 10), 0],
    ["30 cm into the side", rectangle(1.7, 0, 2, 1), 0.3],
    ["the same ground", rectangle(0, 0, 2, 10), 1],
    ["crossing", rectangle(0, 0, 8, 1), 1],
    ["inside", rectangle(0.25, 0, 0.5, 0.5), 1],
  ] as const)("%s", (_, shape, expected) => {
    expect(overlapDepth(outlineOf(shape), bed).distanceM).toBeCloseTo(expected, 9);
    expect(overlapDepth(bed, outlineOf(shape)).distanceM).toBeCloseTo(expected, 9);
  });

  test("a bar in the notch of a U shares no ground with it", () => {
    const u = polygonOf([
      [-3, 0],
      [3, 0],
      [3, 5],
      [2, 5],
      [2, 1],
      [-2, 1],
      [-2, 5],
      [-3, 5],
    ]);
    expect(overlapDepth(outlineOf(u), outlineOf(rectangle(0, 3, 3, 2))).distanceM).toBe(0);
  });

  test("an L over itself, whose bounds have their middle on its corner", () => {
    expect(overlapDepth(outlineOf(lShape), outlineOf(lShape)).distanceM).toBeGreaterThan(0.2);
  });
});
