import * as fc from "fast-check";
import { expect, test } from "vitest";
import { itemOf, patchedList } from "../../../src/core/nearness/patched-list.ts";

const id = fc.string({ maxLength: 3 });
const item = fc.record({ id, worth: fc.integer() });
const inOrder = (items: ReadonlyMap<string, { id: string }>) =>
  [...items.values()].sort((a, b) => (a.id < b.id ? -1 : 1));

test("a patched list is the list sorted anew", () => {
  fc.assert(
    fc.property(fc.array(item), fc.array(id), fc.array(item), (first, gone, found) => {
      const items = new Map(first.map((each) => [each.id, each]));
      const list = inOrder(items);
      const held = [...list];
      for (const each of gone) items.delete(each);
      for (const each of found) items.set(each.id, each);
      expect(patchedList(list, { gone, found })).toEqual(inOrder(items));
      expect(list).toEqual(held);
      for (const each of list) expect(itemOf(list, each.id)).toBe(each);
    }),
  );
});

test("what is not there is passed over, and the list stays the same", () => {
  const list = [{ id: "b" }, { id: "d" }];
  expect(patchedList(list, { gone: ["a", "c", "e"], found: [] })).toBe(list);
  expect(itemOf(list, "c")).toBeUndefined();
});
