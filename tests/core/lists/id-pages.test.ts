import * as fc from "fast-check";
import { expect, test } from "vitest";
import { IdPages } from "../../../src/core/lists/id-pages.ts";

interface Item {
  readonly id: string;
  readonly worth: number;
}

const inOrder = (items: Iterable<Item>) => [...items].sort((a, b) => (a.id < b.id ? -1 : 1));
/** Few ids, and so many that lists fill several pages. */
const id = fc.oneof(
  fc.string({ maxLength: 2 }),
  fc.integer({ min: 0, max: 3000 }).map((number) => `n${number}`),
);
const item = fc.record({ id, worth: fc.integer() });
const many = (from: number, count: number) =>
  Array.from({ length: count }, (_, place) => ({ id: `n${from + place}`, worth: place }));
const start = fc.oneof(
  fc.array(item),
  fc.integer({ min: 200, max: 2500 }).map((count) => many(0, count)),
);
/** A few here and there, or a whole stretch at once. */
const change = fc.record({
  gone: fc.oneof(
    fc.array(id),
    fc.integer({ min: 0, max: 2000 }).map((from) => many(from, 700).map((each) => each.id)),
  ),
  found: fc.oneof(
    fc.array(item),
    fc.integer({ min: 0, max: 2000 }).map((from) => many(from, 900)),
  ),
});

test("patched again and again it is the list sorted anew, and what it was made from stays", () => {
  fc.assert(
    fc.property(start, fc.array(change, { maxLength: 5 }), (first, changes) => {
      const items = new Map<string, Item>(first.map((each) => [each.id, each]));
      let pages = IdPages.of(inOrder(items.values()));
      for (const { gone, found } of changes) {
        const [before, held] = [pages, inOrder(items.values())];
        for (const each of gone) items.delete(each);
        for (const each of found) items.set(each.id, each);
        pages = before.patched({ gone, found });
        expect(pages.all).toEqual(inOrder(items.values()));
        expect(before.all).toEqual(held);
        for (const each of held) expect(before.get(each.id)).toBe(each);
        for (const each of gone) expect(pages.get(each)).toBe(items.get(each));
      }
    }),
    { numRuns: 25 },
  );
});

test("what is not there is passed over, and the list stays the same", () => {
  const list = IdPages.of([{ id: "b" }, { id: "d" }]);
  expect(list.patched({ gone: ["a", "c", "e"], found: [] })).toBe(list);
  expect(list.patched({ gone: [], found: [] })).toBe(list);
  expect(list.get("c")).toBeUndefined();
  expect(IdPages.of([]).get("c")).toBeUndefined();
});

test("items made when they are read are made a page at once, and once", () => {
  const idsOf = (items: readonly Item[]) => items.map((each) => each.id);
  const ids = idsOf(many(0, 1000)).toSorted();
  const made: string[] = [];
  const list = IdPages.later<Item>({
    length: ids.length,
    idAt: (place) => ids[place] ?? "",
    at: (place) => {
      made.push(ids[place] ?? "");
      return { id: ids[place] ?? "", worth: place };
    },
  });
  expect(list.size).toBe(1000);
  expect(made).toEqual([]);
  const third = list.get(ids[2] ?? "");
  expect(third?.worth).toBe(2);
  const page = made.length;
  expect(page).toBeLessThan(400);
  expect(list.get(ids[2] ?? "")).toBe(third);
  const patched = list.patched({ gone: [ids[1] ?? ""], found: [] });
  expect(patched.size).toBe(999);
  expect(made).toHaveLength(page);
  expect(idsOf(list.all)).toEqual(ids);
  expect(idsOf(patched.all)).toEqual(ids.toSpliced(1, 1));
  // Pages that both lists have are made for both.
  expect(made).toHaveLength(1000);
  expect(patched.all[998]).toBe(list.all[999]);
});
