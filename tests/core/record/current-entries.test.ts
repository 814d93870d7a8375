import { expect, test } from "vitest";
import type { Entry } from "../../../src/core/model/plan.ts";
import { currentEntries } from "../../../src/core/record/current-entries.ts";
import { coverThrough, plantsStanding, plotRecord } from "../../../src/core/record/plot-record.ts";

const entry = (id: string, on: number, more: Partial<Entry> = {}): Entry => ({
  id,
  on,
  of: "p",
  what: "rogued",
  ...more,
});
const ids = (entries: readonly Entry[]) => currentEntries(entries).map(({ id }) => id);

test("a correction takes the place of what it names, and so on along the chain", () => {
  const all = [entry("a", 1), entry("b", 1, { corrects: "a" }), entry("c", 1, { corrects: "b" })];
  expect(ids(all.slice(0, 2))).toEqual(["b"]);
  expect(ids(all)).toEqual(["c"]);
  expect(ids([...all].reverse())).toEqual(["c"]);
});

test("a struck entry is gone, and comes back by a later correction", () => {
  const struck = entry("b", 1, { corrects: "a", isStruck: true, written: "2027-06-02T08:00:00Z" });
  expect(ids([entry("a", 1), struck])).toEqual([]);
  const again = entry("c", 1, { corrects: "a", written: "2027-06-03T08:00:00Z" });
  expect(ids([entry("a", 1), struck, again])).toEqual(["c"]);
});

test("of corrections made apart the one written last holds, whatever the order", () => {
  const early = entry("z", 1, { corrects: "a", written: "2027-06-02T08:00:00Z" });
  const late = entry("b", 1, { corrects: "a", written: "2027-06-02T09:00:00Z" });
  expect(ids([entry("a", 1), late, early])).toEqual(["b"]);
  expect(ids([early, entry("a", 1), late])).toEqual(["b"]);
});

test("a clock that jumps back does not bring back what was corrected, in any order", () => {
  const all = [
    entry("a", 1, { written: "2027-06-05T10:00:00Z" }),
    entry("b", 1, { corrects: "a", written: "2027-06-05T12:00:00Z" }),
    entry("c", 1, { corrects: "b", written: "2024-01-01T00:00:00Z" }),
    entry("d", 1, { corrects: "a", written: "2027-06-05T11:00:00Z" }),
  ];
  expect(ids(all.slice(0, 3))).toEqual(["c"]);
  expect(ids(all.slice(0, 3).reverse())).toEqual(["c"]);
  // Made apart from both: the later of what nothing corrects.
  const orders = [all, [...all].reverse(), [all[3], all[1], all[0], all[2]] as Entry[]];
  for (const order of orders) expect(ids(order)).toEqual(["d"]);
});

test("corrections that go round in a circle, or of nothing, end", () => {
  expect(ids([entry("a", 1, { corrects: "b" }), entry("b", 1, { corrects: "a" })])).toHaveLength(1);
  expect(ids([entry("b", 1, { corrects: "gone" })])).toEqual(["b"]);
});

test("plants standing are those set out less rogued and lost", () => {
  const record = plotRecord([
    entry("a", 1, { what: "set out", count: 40 }),
    entry("b", 5, { count: 8 }),
    entry("c", 9, { what: "lost", count: 2 }),
  ]);
  expect(plantsStanding(record, 60)).toBe(30);
  expect(plantsStanding(plotRecord([entry("b", 5, { count: 8 })]), 60)).toBe(52);
  expect(plantsStanding(plotRecord([entry("b", 5, { count: 80 })]), 60)).toBe(0);
  expect(plantsStanding(plotRecord([]), undefined)).toBeNull();
});

test("a cover counts for a window only when it stood on every day of it", () => {
  const { covers } = plotRecord([
    entry("a", 10, { what: "covered", cover: "cage" }),
    entry("b", 20, { what: "uncovered" }),
    entry("c", 30, { what: "covered", cover: "bags" }),
  ]);
  expect(covers).toEqual([
    { cover: "cage", first: 10, last: 19 },
    { cover: "bags", first: 30, last: null },
  ]);
  expect(coverThrough(covers, { first: 10, last: 19 })).toBe("cage");
  expect(coverThrough(covers, { first: 10, last: 20 })).toBe("none");
  expect(coverThrough(covers, { first: 9, last: 12 })).toBe("none");
  expect(coverThrough(covers, { first: 31, last: 999 })).toBe("bags");
  expect(coverThrough(covers, null)).toBe("none");
});
