import { expect, test } from "vitest";
import type { Bounds } from "../../../src/core/geometry/bounds.ts";
import { boundsGap } from "../../../src/core/geometry/bounds.ts";
import { boxesOf, curveOrder, gridOf } from "../../../src/core/geometry/boxes.ts";
import { nearPairs } from "../../../src/core/nearness/near-pairs.ts";
import { type Stand, resolveStands } from "../../../src/core/checks/stand.ts";
import type { Layout } from "../../../src/core/model/plan.ts";
import { REQUIRED_M, book, fieldPlan } from "../../bench/field.ts";
import { seededRandom } from "../../properties/seeded-random.ts";

interface Reaching {
  readonly bounds: Bounds;
  /** Metres; less than 0: none counts for it. */
  readonly reachM: number;
}

/** Beds and points, some as large as the field, in a cluster with a few far away. */
function things(count: number, seed: number): readonly Reaching[] {
  const random = seededRandom(seed);
  const [spread, reaches] = random.pick([
    [200, [-1, 0, 3, 10, 80]],
    [200, [5, 20, Infinity]],
    [1, [-1, 0, 0.02]],
    [0, [-1, 0, 1]],
    [1e6, [1000, 3000, 1e7]],
  ] as const);
  return Array.from({ length: count }, () => {
    const far = random.chance(0.02) ? 1e5 : 0;
    const minX = far + random.between(-spread, spread);
    const minY = far + random.between(-spread, spread);
    const size = random.pick([0, 0, 1, 3, random.chance(0.05) ? spread : 2]);
    const bounds = { minX, minY, maxX: minX + size, maxY: minY + size * random.next() };
    return { bounds, reachM: random.pick(reaches) };
  });
}

test("what is told is what holding each against each finds, once, in whatever order they come", () => {
  let found = 0;
  for (let seed = 1; seed <= 60; seed += 1) {
    const items = things([0, 1, 2, 7, 8, 9, 64, 65, 150][seed % 9] ?? 0, seed);
    const boxes = boxesOf(items);
    const grid = gridOf(boxes);
    const order = seed % 2 === 0 ? curveOrder(grid) : Uint32Array.from(items.keys());
    const squares = Float64Array.from(order, (place) => {
      const { reachM } = items[place] as Reaching;
      return reachM < 0 ? -1 : reachM ** 2;
    });
    const told: string[] = [];
    nearPairs({ boxes, grid, order, squares }, (one, other, square) => {
      expect(one).toBeLessThan(other);
      const [a, b] = [items[order[one] ?? -1], items[order[other] ?? -1]] as [Reaching, Reaching];
      expect(Math.sqrt(square)).toBe(boundsGap(a.bounds, b.bounds));
      told.push([order[one] ?? 0, order[other] ?? 0].sort((x, y) => x - y).join());
    });
    const expected = items.flatMap((a, one) =>
      items.flatMap((b, other) =>
        one < other && boundsGap(a.bounds, b.bounds) < Math.max(a.reachM, b.reachM)
          ? `${one},${other}`
          : [],
      ),
    );
    expect(told.toSorted(), `seed ${seed}`).toEqual(expected.toSorted());
    found += expected.length;
  }
  expect(found).toBeGreaterThan(5000);
});

test("in a large field each is near a few alone", () => {
  const plan = fieldPlan(10_000, 1);
  const stands: readonly Stand[] = resolveStands(plan, plan.layouts[0] as Layout, book);
  const boxes = boxesOf(stands.map(({ outline }) => outline));
  let told = 0;
  const squares = new Float64Array(stands.length).fill(REQUIRED_M ** 2);
  const grid = gridOf(boxes);
  nearPairs({ boxes, grid, order: curveOrder(grid), squares }, () => (told += 1));
  // About eight neighbours within reach, each two told once.
  expect(told / stands.length).toBeGreaterThan(3.5);
  expect(told / stands.length).toBeLessThan(4.5);
});
