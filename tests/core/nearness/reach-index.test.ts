/** The nearness of a list in which things move, against a look at every one. */
import { expect, test } from "vitest";
import { boundsGap } from "../../../src/core/geometry/bounds.ts";
import { nearIndex, placesNear } from "../../../src/core/nearness/near-index.ts";
import {
  type Reacher,
  changedReachIndex,
  itemsNear,
  reachIndexOf,
  reachingItems,
} from "../../../src/core/nearness/reach-index.ts";
import { type SeededRandom, seededRandom } from "../../properties/seeded-random.ts";

function thing(random: SeededRandom, id: string): Reacher {
  const [minX, minY] = [random.between(0, 300), random.between(0, 300)];
  return {
    id,
    kind: { group: random.pick(["one", "two"]) },
    isSeedParent: random.chance(0.8),
    reachM: random.pick([0, 5, 20, 200, Infinity]),
    outline: { bounds: { minX, minY, maxX: minX + random.between(0, 9), maxY: minY + 2 } },
  };
}

test("after any moves it finds what a look at all finds, for the old list as for the new", () => {
  const random = seededRandom(5);
  let items: readonly Reacher[] = Array.from({ length: 150 }, (_, place) =>
    thing(random, `t${place}`),
  );
  let index = reachIndexOf(items);
  for (let step = 0; step < 60; step += 1) {
    const [held, heldIndex] = [items, index];
    const places = Array.from({ length: random.pick([1, 3, 20]) }, () =>
      Math.floor(random.between(0, items.length)),
    );
    const next = items.slice();
    for (const place of places) next[place] = thing(random, `t${place}`);
    items = next;
    index = changedReachIndex(index, items, places);
    expect(reachIndexOf(items)).toBe(index);
    for (const [list, of] of [
      [items, index],
      [held, heldIndex],
    ] as const) {
      const asked = thing(random, "asked");
      expect(reachingItems(of, list, asked)).toEqual(
        list.filter(
          (each) =>
            each.isSeedParent &&
            each.kind.group === asked.kind.group &&
            boundsGap(each.outline.bounds, asked.outline.bounds) < each.reachM,
        ),
      );
      const { bounds } = asked.outline;
      expect(itemsNear(of, list, asked, 30)).toEqual(
        list.filter(
          ({ outline: { bounds: its } }) =>
            its.minX <= bounds.maxX + 30 &&
            its.maxX >= bounds.minX - 30 &&
            its.minY <= bounds.maxY + 30 &&
            its.maxY >= bounds.minY - 30,
        ),
      );
    }
  }
});

test("an index of nothing finds nothing", () => {
  const box = { minX: 0, minY: 0, maxX: 1, maxY: 1 };
  expect(placesNear(nearIndex([]), [], box)).toEqual([]);
});
