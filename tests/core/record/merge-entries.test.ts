/** Merged records against an independent set union; the laws a merge must keep. */
import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Entry } from "../../../src/core/model/plan.ts";
import { mergeEntries } from "../../../src/core/record/merge-entries.ts";

/** Few ids and few words, so that ids meet often, with the same words and with others. */
const entry: fc.Arbitrary<Entry> = fc.record(
  {
    id: fc.constantFrom("a-1", "a-2", "b-1", "b-2", "c-1"),
    on: fc.integer({ min: 20_000, max: 20_003 }),
    of: fc.constantFrom("p", "q"),
    what: fc.constantFrom("rogued", "note", "first flower"),
    count: fc.integer({ min: 0, max: 2 }),
    corrects: fc.constantFrom("a-1", "b-1"),
  },
  { requiredKeys: ["id", "on", "of", "what"] },
);
const history = fc.array(entry, { maxLength: 8 });

const text = ({ id: _id, ...rest }: Entry) =>
  JSON.stringify(Object.entries(rest).sort(([a], [b]) => a.localeCompare(b)));

describe("bringing records together", () => {
  const merge = (...records: (readonly Entry[])[]) => mergeEntries(...records).entries;

  test("loses no entry and makes none up, by a set union of what they say", () => {
    fc.assert(
      fc.property(history, history, (a, b) => {
        const merged = merge(a, b);
        const union = new Set([...a, ...b].map((each) => `${each.id} ${text(each)}`));
        expect(merged.length).toBe(union.size);
        const told = new Set(merged.map(text));
        for (const each of [...a, ...b]) expect(told).toContain(text(each));
        expect(new Set(merged.map(({ id }) => id)).size).toBe(merged.length);
      }),
      { numRuns: 500, seed: 16 },
    );
  });

  test("is the same in any order, in any grouping, and any number of times", () => {
    fc.assert(
      fc.property(history, history, history, (a, b, c) => {
        const all = merge(a, b, c);
        expect(merge(b, a, c)).toEqual(all);
        expect(merge(merge(a, b), c)).toEqual(all);
        expect(merge(a, merge(b, c))).toEqual(all);
        expect(merge(all, all)).toEqual(all);
        expect(merge(all, b)).toEqual(all);
      }),
      { numRuns: 500, seed: 16 },
    );
  });

  test("entries with one id that say different things are told", () => {
    const base: Entry = { id: "a-1", on: 20_000, of: "p", what: "rogued", count: 3 };
    const { entries, clashes } = mergeEntries([base], [{ ...base, count: 4 }]);
    expect(new Set(entries.map(({ count }) => count))).toEqual(new Set([3, 4]));
    expect(clashes).toHaveLength(1);
    expect(clashes[0]?.id).not.toBe("a-1");
    expect(mergeEntries([base], [base]).clashes).toEqual([]);
  });

  test("five phones with five hundred entries each", () => {
    const phones = Array.from({ length: 5 }, (_, phone) =>
      Array.from({ length: 500 }, (__, index): Entry => ({
        id: `phone${phone}-${index}`,
        on: 20_000 + (index % 90),
        of: `p${index % 40}`,
        what: "looked at",
      })),
    );
    expect(mergeEntries(...phones).entries).toHaveLength(2500);
  });
});
