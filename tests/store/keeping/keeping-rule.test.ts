/** Storage bounded by the written rule; the newest copy never goes; clocks that jump. */
import * as fc from "fast-check";
import { expect, test } from "vitest";
import {
  FULL_STORAGE_RULE,
  KEEPING_RULE,
  type KeptCopy,
  surplusCopies,
} from "../../../src/store/keeping/keeping-rule.ts";

const DAY_MS = 86_400_000;
const START = Date.UTC(2026, 10, 1, 9);

function copy(revision: number, savedAtMs: number, origin: KeptCopy["origin"] = "edit"): KeptCopy {
  return { revision, savedAt: new Date(savedAtMs).toISOString(), origin };
}

test("of one day's copies the newest twenty stay", () => {
  const copies = Array.from({ length: 50 }, (_, index) => copy(index + 1, START + index * 1000));
  expect(surplusCopies(copies, KEEPING_RULE)).toEqual(
    Array.from({ length: 30 }, (_, index) => index + 1),
  );
});

test("the last copy of each of thirty days stays", () => {
  const copies = Array.from({ length: 80 }, (_, index) =>
    copy(index + 1, START + Math.floor(index / 2) * DAY_MS + (index % 2) * 1000),
  );
  const gone = new Set(surplusCopies(copies, KEEPING_RULE));
  const kept = copies.filter(({ revision }) => !gone.has(revision)).map(({ revision }) => revision);
  // Revisions 61 to 80 are the newest twenty; before them the even ones end a day.
  expect(kept.slice(0, 20)).toEqual(Array.from({ length: 20 }, (_, index) => 22 + index * 2));
  expect(kept.slice(20)).toEqual(Array.from({ length: 20 }, (_, index) => 61 + index));
});

test("the copy a file was opened over stays, and the one opened", () => {
  const copies = Array.from({ length: 40 }, (_, index) =>
    copy(index + 1, START + index, index === 5 ? "opened" : "edit"),
  );
  const gone = surplusCopies(copies, KEEPING_RULE);
  // Counted from 1, the sixth was opened over the fifth.
  expect(gone.filter((revision) => revision < 8)).toEqual([1, 2, 3, 4, 7]);
});

test("any copies, in any order and under any clock: bounded, newest kept, oldest first", () => {
  const anyCopies = fc
    .uniqueArray(fc.integer({ min: 1, max: 10_000 }), { maxLength: 300 })
    .chain((revisions) =>
      fc.tuple(
        ...revisions.map((revision) =>
          fc
            .tuple(fc.integer({ min: 0, max: 4e12 }), fc.constantFrom("edit", "opened"))
            .map(([at, origin]) => copy(revision, at, origin)),
        ),
      ),
    );
  fc.assert(
    fc.property(
      anyCopies,
      fc.constantFrom(KEEPING_RULE, FULL_STORAGE_RULE, { newest: 0, days: 0, openings: 0 }),
      (copies, rule) => {
        const gone = surplusCopies(copies, rule);
        const newest = Math.max(...copies.map(({ revision }) => revision));
        expect(gone).not.toContain(newest);
        expect([...gone].sort((a, b) => a - b)).toEqual(gone);
        const kept = copies.length - gone.length;
        const most = Math.max(1, rule.newest) + rule.days + 2 * rule.openings;
        expect(kept).toBeLessThanOrEqual(most);
        // What one pass keeps the next keeps too: nothing trickles away.
        const left = copies.filter(({ revision }) => !gone.includes(revision));
        expect(surplusCopies(left, rule)).toEqual([]);
      },
    ),
  );
});
