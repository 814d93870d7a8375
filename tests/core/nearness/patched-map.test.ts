import * as fc from "fast-check";
import { expect, test } from "vitest";
import { patchedMap } from "../../../src/core/nearness/patched-map.ts";

test("patched again and again it is the map written to in place", () => {
  const keys = Array.from({ length: 100 }, (_, index) => `k${index}`);
  const change = fc.array(fc.tuple(fc.constantFrom(...keys), fc.integer()), { maxLength: 40 });
  fc.assert(
    fc.property(fc.array(change, { maxLength: 8 }), (changes) => {
      const plain = new Map(keys.map((key) => [key, 0]));
      let patched: ReadonlyMap<string, number> = new Map(plain);
      for (const entries of changes) {
        const before = patched;
        const held = [...before];
        for (const [key, value] of entries) plain.set(key, value);
        patched = patchedMap(patched, new Map(entries));
        expect([...before]).toEqual(held);
        expect([...patched]).toEqual([...plain]);
      }
      expect([...patched.keys()]).toEqual(keys);
      expect([...patched.values()]).toEqual([...plain.values()]);
      const visited: unknown[] = [];
      patched.forEach((value, key) => visited.push([key, value]));
      expect(visited).toEqual([...plain]);
      expect(patched.size).toBe(100);
      for (const key of keys) expect(patched.get(key)).toBe(plain.get(key));
      expect([patched.has("k7"), patched.has("other"), patched.get("other")]).toEqual([
        true,
        false,
        undefined,
      ]);
    }),
  );
});

test("a key it has not cannot be patched", () => {
  expect(() => patchedMap(new Map([["a", 1]]), new Map([["b", 2]]))).toThrow("a key it has not: b");
});

test("with nothing to change it is the same map", () => {
  const map = new Map([["a", 1]]);
  expect(patchedMap(map, new Map())).toBe(map);
});
