/** The nearness of a list in which things move, against a look at every one. */
import { expect, test } from "vitest";
import { boundsGap } from "../../../src/core/geometry/bounds.ts";
import { nearIndex, placesNear } from "../../../src/core/nearness/near-index.ts";
import {
  type Reacher,
  changedReachIndex,
  groupNear,
  itemsNear,
  placesReaching,
  reachIndexOf,
} from "../../../src/core/nearness/reach-index.ts";
import { type SeededRandom, seededRandom } from "../../properties/seeded-random.ts";

/** @param group as a thing of the same place keeps it */
function thing(random: SeededRandom, group: string): Reacher {
  const [minX, minY] = [random.between(0, 300), random.between(0, 300)];
  return {
    kind: { group },
    isSeedParent: random.chance(0.8),
    reachM: random.pick([0, 5, 20, 200, Infinity]),
    outline: { bounds: { minX, minY, maxX: minX + random.between(0, 9), maxY: minY + 2 } },
  };
}

const groupAt = (place: number) => (place % 3 === 0 ? "one" : "two");

test("after any moves it finds what a look at all finds, for the old list as for the new", () => {
  const random = seededRandom(5);
  let items: readonly Reacher[] = Array.from({ length: 150 }, (_, place) =>
    thing(random, groupAt(place)),
  );
  let index = reachIndexOf(items);
  for (let step = 0; step < 60; step += 1) {
    const [held, heldIndex] = [items, index];
    const places = Array.from({ length: random.pick([1, 3, 20]) }, () =>
      Math.floor(random.between(0, items.length)),
    );
    const next = items.slice();
    for (const place of places) next[place] = thing(random, groupAt(place));
    items = next;
    index = changedReachIndex(index, items, places);
    for (const [list, of] of [
      [items, index],
      [held, heldIndex],
    ] as const) {
      const asked = thing(random, random.pick(["one", "two", "three"]));
      const reaching = placesReaching(of, list, asked);
      expect(reaching.map((place) => list[place])).toEqual(
        list.filter(
          (each) =>
            each.isSeedParent &&
            each.kind.group === asked.kind.group &&
            boundsGap(each.outline.bounds, asked.outline.bounds) < each.reachM,
        ),
      );
      const { bounds } = asked.outline;
      const near = list.filter(
        ({ outline: { bounds: its } }) =>
          its.minX <= bounds.maxX + 30 &&
          its.maxX >= bounds.minX - 30 &&
          its.minY <= bounds.maxY + 30 &&
          its.maxY >= bounds.minY - 30,
      );
      const ofGroup = (each: Reacher) => each.kind.group === asked.kind.group;
      expect(itemsNear(of, list, asked, 30)).toEqual(near);
      expect(groupNear(of, list, asked, 30)).toEqual(near.filter(ofGroup));
      expect(itemsNear(of, list, asked, Infinity)).toEqual(list);
      expect(groupNear(of, list, asked, Infinity)).toEqual(list.filter(ofGroup));
    }
  }
});

test("an index of nothing finds nothing", () => {
  const box = { minX: 0, minY: 0, maxX: 1, maxY: 1 };
  expect(placesNear(nearIndex([]), [], box)).toEqual([]);
});
