import { expect, test } from "vitest";
import { registerAreas } from "../../../src/core/exchange/register-areas.ts";
import { boundsGap } from "../../../src/core/geometry/bounds.ts";
import { seededRandom } from "../../properties/seeded-random.ts";

test("every feature has one area, and in it all that could matter to it", () => {
  for (let seed = 1; seed <= 30; seed += 1) {
    const random = seededRandom(seed);
    const count = random.whole(1, 150);
    const boxes = new Float64Array(count * 4);
    const reach = new Float64Array(count);
    const group = new Uint16Array(count);
    for (let place = 0; place < count; place += 1) {
      const [x, y] = [random.between(-500, 500), random.between(-500, 500)];
      boxes.set([x, y, x + random.between(0, 60), y + random.between(0, 60)], place * 4);
      reach[place] = random.pick([0, 5, 50, 300, Infinity]);
      group[place] = random.whole(0, 3);
    }
    const bounds = (place: number) => ({
      minX: boxes[place * 4] as number,
      minY: boxes[place * 4 + 1] as number,
      maxX: boxes[place * 4 + 2] as number,
      maxY: boxes[place * 4 + 3] as number,
    });
    const owners = new Map<number, number>();
    for (const { all, own } of registerAreas({ boxes, reach, group }, 9)) {
      const inside = new Set(all);
      expect(all).toEqual([...inside].sort((a, b) => a - b));
      for (const place of own) {
        owners.set(place, (owners.get(place) ?? 0) + 1);
        for (let other = 0; other < count; other += 1) {
          const gap = boundsGap(bounds(place), bounds(other));
          const isNear =
            group[place] === group[other] &&
            gap <= Math.max(reach[place] as number, reach[other] as number);
          if (isNear || gap === 0) expect(inside.has(other)).toBe(true);
        }
      }
    }
    expect([...owners.values()]).toEqual(Array.from({ length: count }, () => 1));
  }
});

test("what lies around an area is few beside its own", () => {
  const random = seededRandom(7);
  const count = 20_000;
  const side = 3000;
  const boxes = new Float64Array(count * 4);
  for (let at = 0; at < boxes.length; at += 4) {
    const [x, y] = [random.between(0, side), random.between(0, side)];
    boxes.set([x, y, x + 5, y + 5], at);
  }
  const reach = new Float64Array(count).fill(40);
  const areas = [...registerAreas({ boxes, reach, group: new Uint16Array(count) }, 2000)];
  expect(areas).toHaveLength(10);
  const looked = areas.reduce((sum, { all }) => sum + all.length, 0);
  // Ten tiles of 950 m with 40 m around: 18 in 100 more; along a curve of boxes it was 170.
  expect(looked).toBeLessThan(count * 1.25);
});
