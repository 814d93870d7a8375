import { describe, expect, test } from "vitest";
import { type Bounds, boundsGap } from "../../../src/core/geometry/bounds.ts";
import { around, boxGap, boxTouches, curveOrder } from "../../../src/core/geometry/boxes.ts";
import { seededRandom } from "../../properties/seeded-random.ts";

/** Points as boxes without size. */
function dots(places: readonly (readonly [number, number])[]): Float64Array {
  return Float64Array.from(places.flatMap(([x, y]) => [x, y, x, y]));
}

describe("curveOrder", () => {
  test("walks the four quarters one after the other, along the Z of G. M. Morton", () => {
    const far = 100;
    const boxes = dots([
      [far, far],
      [0, 0],
      [0, far],
      [far, 0],
      [1, 1],
    ]);
    expect([...curveOrder(boxes)]).toEqual([1, 4, 3, 2, 0]);
  });

  test("names every box once, whatever they look like", () => {
    const random = seededRandom(5);
    for (const count of [1, 2, 7, 100, 5000]) {
      const spread = random.pick([0, 1e-9, 1, 1e6]);
      const boxes = dots(
        Array.from({ length: count }, () => [random.between(0, spread), random.between(0, spread)]),
      );
      const sorted = [...curveOrder(boxes)].sort((a, b) => a - b);
      expect(sorted).toEqual(Array.from({ length: count }, (_, place) => place));
    }
  });

  test("keeps neighbours together", () => {
    const side = 64;
    const boxes = dots(
      Array.from({ length: side * side }, (_, place) => [place % side, Math.floor(place / side)]),
    );
    const order = curveOrder(boxes);
    // Blocks of 16 along the curve are squares of 4 by 4.
    for (let from = 0; from < order.length; from += 16) {
      const { minX, minY, maxX, maxY } = around(boxes, order.subarray(from, from + 16));
      expect([maxX - minX, maxY - minY]).toEqual([3, 3]);
    }
  });
});

test("boxes touch when they share an edge or a corner", () => {
  const boxes = Float64Array.from([0, 0, 2, 1]);
  const touches = (minX: number, minY: number, maxX: number, maxY: number) =>
    boxTouches(boxes, 0, minX, minY, maxX, maxY);
  expect(touches(2, 1, 3, 3)).toBe(true);
  expect(touches(-1, -1, 0, 5)).toBe(true);
  expect(touches(0.5, 0.2, 0.6, 0.3)).toBe(true);
  expect(touches(2.1, 0, 3, 1)).toBe(false);
  expect(touches(0, 1.1, 2, 2)).toBe(false);
  expect(touches(-2, 0, -0.1, 1)).toBe(false);
  expect(touches(0, -2, 2, -0.1)).toBe(false);
});

test("the gap of two boxes is the gap of the bounds they are made of", () => {
  const random = seededRandom(8);
  const places = [-2, -1, 0, 1, 2.5];
  let apart = 0;
  for (let count = 0; count < 2000; count += 1) {
    const [one, other] = [0, 1].map((): Bounds => {
      const [minX, minY] = [random.pick(places), random.between(-3, 3)];
      return { minX, minY, maxX: minX + random.pick([0, 1, 2]), maxY: minY + random.next() };
    }) as [Bounds, Bounds];
    const boxes = Float64Array.from(
      [one, other].flatMap(({ minX, minY, maxX, maxY }) => [minX, minY, maxX, maxY]),
    );
    expect(boxGap(boxes, 0, 1)).toBe(boundsGap(one, other));
    expect(boxGap(boxes, 1, 0)).toBe(boundsGap(one, other));
    if (boundsGap(one, other) > 0) apart += 1;
  }
  expect(apart).toBeGreaterThan(200);
  expect(apart).toBeLessThan(1950);
});
