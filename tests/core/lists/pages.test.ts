import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { Pages } from "../../../src/core/lists/pages.ts";
import { PlacedMap, placesById } from "../../../src/core/lists/placed-map.ts";

const COUNT = 700;
const ids = Array.from({ length: COUNT }, (_, place) => `k${place}`);
/** A value of undefined takes an id out of a map. */
const value = fc.oneof(fc.integer(), fc.constant(undefined));
const change = fc.array(fc.tuple(fc.integer({ min: 0, max: COUNT - 1 }), value), { maxLength: 40 });
const changes = fc.array(change, { maxLength: 6 });

test("changed again and again they are the list written to in place, and those before stay", () => {
  fc.assert(
    fc.property(changes, (steps) => {
      const plain: (number | undefined)[] = ids.map(() => 0);
      let pages = Pages.of<number | undefined>(plain.slice());
      for (const entries of steps) {
        const [before, held] = [pages, plain.slice()];
        for (const [place, each] of entries) plain[place] = each;
        pages = before.with(new Map(entries));
        expect(pages.all).toEqual(plain);
        expect(pages.all).toBe(pages.all);
        expect(before.all).toEqual(held);
        expect(plain.every((each, place) => pages.at(place) === each)).toBe(true);
        expect(pages.length).toBe(COUNT);
      }
    }),
    { numRuns: 40 },
  );
});

describe("pages", () => {
  test("with nothing to change are the same", () => {
    const pages = Pages.of(["a"]);
    expect(pages.with(new Map())).toBe(pages);
  });

  test.each([-1, 2, Number.NaN])("have no place %d to change among two", (place) => {
    expect(() => Pages.of(["a", "b"]).with(new Map([[place, "c"]]))).toThrow(`no place ${place}`);
  });
});

test("a map over pages reads as one written to in place", () => {
  fc.assert(
    fc.property(changes, (steps) => {
      const plain = new Map<string, number>(ids.map((id) => [id, 0]));
      let pages = Pages.of<number | undefined>(ids.map(() => 0));
      for (const [place, each] of steps.flat()) {
        pages = pages.with(new Map([[place, each]]));
        if (each === undefined) plain.delete(ids[place] as string);
        else plain.set(ids[place] as string, each);
      }
      const placed = new PlacedMap(placesById(ids.map((id) => ({ id }))), pages);
      expect(placed.size).toBe(plain.size);
      expect(new Map(placed)).toEqual(plain);
      expect(new Set(placed.keys())).toEqual(new Set(plain.keys()));
      expect([...placed.values()]).toEqual([...placed].map(([, each]) => each));
      const visited = new Map<string, number>();
      placed.forEach((each, id) => visited.set(id, each));
      expect(visited).toEqual(plain);
      for (const id of [...ids, "other"]) {
        expect([placed.get(id), placed.has(id)]).toEqual([plain.get(id), plain.has(id)]);
      }
    }),
    { numRuns: 12 },
  );
});
