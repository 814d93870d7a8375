import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  changedList,
  itemsById,
  placeById,
  placesDiffering,
} from "../../../src/core/lists/changed-list.ts";

const list = Array.from({ length: 40 }, (_, place) => ({ id: `k${place}`, worth: 0 }));
type Item = (typeof list)[number];

function changed(from: readonly Item[], places: readonly number[], worth: number) {
  return changedList(
    from,
    new Map(places.map((place) => [place, { id: `k${place}`, worth }] as const)),
  );
}

const places = fc.array(fc.integer({ min: 0, max: 39 }), { maxLength: 14 });

test("whatever two lists were made from, no place that differs is left out", () => {
  let told = 0;
  fc.assert(
    fc.property(fc.array(fc.tuple(fc.nat(), places), { maxLength: 8 }), (steps) => {
      const lists: (readonly Item[])[] = [list];
      for (const [worth, [from, changes]] of steps.entries()) {
        // Branches as well as chains: any list made so far may be gone on from.
        const base = lists[from % lists.length] as readonly Item[];
        const held = base.slice();
        const made = changed(base, changes, worth);
        expect(base).toEqual(held);
        expect(made).toEqual(
          base.map((item, place) => (changes.includes(place) ? { id: item.id, worth } : item)),
        );
        expect(placeById(made)).toEqual(placeById(list));
        lists.push(made);
      }
      for (const now of lists) {
        for (const before of lists) {
          const differing = placesDiffering(now, before);
          if (differing === null) continue;
          told += 1;
          for (const [place, item] of now.entries()) {
            if (item !== before[place]) expect(differing).toContain(place);
          }
          expect(differing).toEqual([...differing].sort((a, b) => a - b));
        }
      }
    }),
    { numRuns: 40 },
  );
  expect(told).toBeGreaterThan(500);
});

describe("a changed list", () => {
  test("is the same with nothing to change", () => {
    expect(changedList(list, new Map())).toBe(list);
    expect(placesDiffering(list, list)).toEqual([]);
  });

  test("takes no item of another id", () => {
    expect(() => changedList(list, new Map([[3, { id: "k4", worth: 1 }]]))).toThrow(
      "k4 at place 3",
    );
    expect(() => changedList(list, new Map([[40, { id: "k40", worth: 1 }]]))).toThrow(RangeError);
  });

  test("of which much differs is one of its own, and is looked at whole", () => {
    const much = changed(
      list,
      Array.from({ length: 20 }, (_, place) => place),
      1,
    );
    expect(placesDiffering(much, list)).toBeNull();
    expect(placesDiffering(changed(much, [1], 2), much)).toEqual([1]);
    expect(placesDiffering(list.slice(), list)).toBeNull();
  });
});

test("items by id come in the order of the list, unknown ids passed over", () => {
  expect(itemsById(list, ["k7", "other", "k2", "k7"])).toEqual([
    [2, list[2]],
    [7, list[7]],
  ]);
});
