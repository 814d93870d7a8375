import { describe, expect, test } from "vitest";
import { curveOrder, gridOf } from "../../../src/core/geometry/boxes.ts";
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
    expect([...curveOrder(gridOf(boxes))]).toEqual([1, 4, 3, 2, 0]);
  });

  test("names every box once, whatever they look like", () => {
    const random = seededRandom(5);
    for (const count of [1, 2, 7, 100, 5000]) {
      const spread = random.pick([0, 1e-9, 1, 1e6]);
      const boxes = dots(
        Array.from({ length: count }, () => [random.between(0, spread), random.between(0, spread)]),
      );
      const sorted = [...curveOrder(gridOf(boxes))].sort((a, b) => a - b);
      expect(sorted).toEqual(Array.from({ length: count }, (_, place) => place));
    }
  });

  test("keeps neighbours together", () => {
    const side = 64;
    const boxes = dots(
      Array.from({ length: side * side }, (_, place) => [place % side, Math.floor(place / side)]),
    );
    const order = curveOrder(gridOf(boxes));
    // Blocks of 16 along the curve are squares of 4 by 4.
    for (let from = 0; from < order.length; from += 16) {
      const block = [...order.subarray(from, from + 16)];
      const [xs, ys] = [
        block.map((place) => place % side),
        block.map((place) => Math.floor(place / side)),
      ];
      expect([Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)]).toEqual([
        3, 3,
      ]);
    }
  });

  test("few are in the order they have among many", () => {
    const random = seededRandom(8);
    const places = Array.from(
      { length: 120 },
      () => [random.between(0, 50), random.between(0, 50)] as const,
    );
    const few = curveOrder(gridOf(dots(places)));
    const thrice = curveOrder(gridOf(dots([...places, ...places, ...places])));
    expect([...thrice].filter((place) => place < places.length)).toEqual([...few]);
  });
});
