import * as fc from "fast-check";
import { expect, test } from "vitest";
import { byId, changedIds } from "../../../src/core/model/changed-ids.ts";

test("what came, went or is another object; not what only moved in the list", () => {
  const [bed, path, shed] = ["bed", "path", "shed"].map((id) => ({ id })) as [
    { id: string },
    { id: string },
    { id: string },
  ];
  const before = byId([bed, path, shed]);
  expect(changedIds(before, byId([shed, path, bed]))).toEqual([]);
  expect(changedIds(before, byId([bed, { ...path }]))).toEqual(["path", "shed"]);
  expect(changedIds(byId([]), before)).toEqual(["bed", "path", "shed"]);
});

test("property: the same from either side, each id once", () => {
  const items = fc.dictionary(fc.constantFrom("a", "b", "c", "d"), fc.constantFrom("x", "y"));
  fc.assert(
    fc.property(items, items, (one, other) => {
      const [before, after] = [one, other].map((entries) => new Map(Object.entries(entries))) as [
        Map<string, string>,
        Map<string, string>,
      ];
      const changed = changedIds(before, after);
      expect([...changed].sort()).toEqual([...changedIds(after, before)].sort());
      expect(new Set(changed).size).toBe(changed.length);
      for (const id of ["a", "b", "c", "d"]) {
        expect(changed.includes(id)).toBe(before.get(id) !== after.get(id));
      }
    }),
  );
});
