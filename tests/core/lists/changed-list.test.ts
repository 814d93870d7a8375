import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  changedList,
  itemsById,
  partsOf,
  placeById,
  placesApart,
  placesDiffering,
  withChanges,
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

describe("a holder with changes in its list", () => {
  const many = Array.from({ length: 5000 }, (_, place) => ({ id: `k${place}`, worth: 0 }));
  const at = (...some: readonly number[]): ReadonlyMap<number, Item> =>
    new Map(some.map((place) => [place, { id: `k${place}`, worth: place }]));
  const isUnread = (holder: object) =>
    Object.getOwnPropertyDescriptor(holder, "items")?.get !== undefined;

  test.each([
    ["a short list", list],
    ["a long list", many],
  ])("of %s holds what a copy made at once would hold", (_, items) => {
    const holder = { name: "one", items, after: 2 };
    const expected = { ...holder, items: changedList(items, at(3, 30)) };
    // Whatever reads it first: a copy, a file, another thread, somebody who goes through it.
    for (const read of [
      (made: typeof holder) => ({ ...made }),
      (made: typeof holder) => JSON.parse(JSON.stringify(made)) as typeof holder,
      (made: typeof holder) => structuredClone(made),
      (made: typeof holder) => made,
    ]) {
      const made = withChanges(holder, "items", at(3, 30));
      const isSeen = read(made);
      expect(isSeen).toEqual(expected);
      expect(Object.keys(made)).toEqual(Object.keys(holder));
      expect(made.items).toBe(made.items);
      expect(placesDiffering(made.items, items)).toEqual([3, 30]);
    }
    expect(holder.items).toBe(items);
    expect(withChanges(holder, "items", new Map())).toBe(holder);
  });

  test("of a long list makes no copy before it is read", () => {
    const holder = { items: many };
    const [one, other] = [
      withChanges(holder, "items", at(7, 4000)),
      withChanges(holder, "items", at(9)),
    ];
    expect([...placesApart(partsOf(one, "items"), partsOf(other, "items"))]).toEqual([7, 9, 4000]);
    expect([...placesApart(partsOf(one, "items"), partsOf(holder, "items"))]).toEqual([7, 4000]);
    expect([isUnread(one), isUnread(other), isUnread(holder)]).toEqual([true, true, false]);
    // Gone on from, it is read; what it was made from is not.
    const next = withChanges(one, "items", at(5));
    expect([isUnread(one), isUnread(other)]).toEqual([false, true]);
    expect(next.items.filter(({ worth }) => worth > 0).map(({ id }) => id)).toEqual([
      "k5",
      "k7",
      "k4000",
    ]);
    expect(partsOf(next, "items").list).toBe(next.items);
    expect(partsOf(next, "items").changes.size).toBe(0);
  });
});
