import { expect, test } from "vitest";
import { tiles } from "../../../src/core/geometry/tiles.ts";
import { seededRandom } from "../../properties/seeded-random.ts";

function boxesAt(points: readonly (readonly [number, number])[]): Float64Array {
  return Float64Array.from(points.flatMap(([x, y]) => [x, y, x + 1, y + 1]));
}

test("Every box is in one tile, and no tile holds more than it may", () => {
  for (let seed = 1; seed <= 50; seed += 1) {
    const random = seededRandom(seed);
    const count = random.whole(0, 300);
    const most = random.whole(1, 40);
    const spot = () => [random.whole(0, 20), random.between(-50, 50)] as const;
    const dealt = [...tiles(boxesAt(Array.from({ length: count }, spot)), most)];
    expect(dealt.flatMap((tile) => [...tile]).sort((a, b) => a - b)).toEqual(
      Array.from({ length: count }, (_, place) => place),
    );
    expect(dealt.every(({ length }) => length > 0 && length <= most)).toBe(true);
    expect(dealt.length).toBe(Math.ceil(count / most));
  }
});

test("Tiles are compact: a square field of four tiles is quartered", () => {
  const grid = Array.from({ length: 64 }, (_, at) => [at % 8, Math.floor(at / 8)] as const);
  for (const tile of tiles(boxesAt(grid), 16)) {
    const [xs, ys] = [0, 1].map((axis) => [...tile].map((place) => grid[place]?.[axis] ?? 0));
    for (const values of [xs ?? [], ys ?? []]) {
      expect(Math.max(...values) - Math.min(...values)).toBe(3);
    }
  }
});

test("Boxes all on one spot are dealt too", () => {
  const dealt = [...tiles(boxesAt(Array.from({ length: 10 }, () => [5, 5] as const)), 4)];
  expect(dealt.map((tile) => [...tile])).toEqual([
    [0, 1, 2, 3],
    [4, 5, 6, 7],
    [8, 9],
  ]);
});
