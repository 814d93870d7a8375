import { expect, test } from "vitest";
import { boundsGap } from "../../../src/core/geometry/bounds.ts";
import { groupPlaces, groupStands, touchings } from "../../../src/core/nearness/near-stands.ts";
import { outlineOf } from "../../../src/core/geometry/outline.ts";
import { seededRandom } from "../../properties/seeded-random.ts";

/** Beds on a grid of whole metres, so that many share no more than an edge or a corner. */
function beds(count: number, seed: number) {
  const random = seededRandom(seed);
  const whole = (most: number) => Math.floor(random.between(0, most));
  return Array.from({ length: count }, (_, place) => ({
    id: `b${place}`,
    kind: { group: random.pick(["beet", "maize", "onion"]) },
    outline: outlineOf({
      shape: "rectangle",
      x: whole(60),
      y: whole(60),
      widthM: 2 * whole(3),
      lengthM: 2 * whole(5),
      turnDeg: 0,
    }),
  }));
}

test("any two whose bounds touch are told once", () => {
  let edges = 0;
  for (const count of [0, 1, 2, 9, 300]) {
    const items = beds(count, count);
    const told: string[] = [];
    touchings(items, (one, other) => told.push([one, other].sort((a, b) => a - b).join()));
    const expected = items.flatMap(({ outline: { bounds } }, one) =>
      items.flatMap(({ outline }, other) =>
        one < other && boundsGap(bounds, outline.bounds) === 0 ? `${one},${other}` : [],
      ),
    );
    expect(told.toSorted()).toEqual(expected.toSorted());
    edges += expected.length;
  }
  expect(edges).toBeGreaterThan(300);
});

test("groups hold places and things in the order asked for", () => {
  const items = beds(40, 3);
  const backwards = [...items.keys()].reverse();
  const places = groupPlaces(items, backwards);
  expect([...places.values()].flat().sort((a, b) => a - b)).toEqual([...items.keys()]);
  for (const [group, own] of places) {
    expect(own).toEqual(backwards.filter((place) => items[place]?.kind.group === group));
    const stands = groupStands(items).get(group);
    expect(stands).toEqual(own.toReversed().map((place) => items[place]));
  }
});
