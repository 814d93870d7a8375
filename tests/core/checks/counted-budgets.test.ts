/**
 * What one move may make anew, counted: as much among two thousand plantings as among two hundred.
 * Times are for `npm run bench`; counts are the same on every machine.
 */
import { expect, test, vi } from "vitest";
import { countBySeverity } from "../../../src/core/checks/finding.ts";
import { type CheckResult, runChecks } from "../../../src/core/checks/run-checks.ts";
import { WayLists } from "../../../src/core/nearness/way-lists.ts";
import { moveObjects } from "../../../src/core/edits/move-objects.ts";
import type { Layout, Plan } from "../../../src/core/model/plan.ts";
import { book, fieldPlan } from "../../bench/field.ts";

const layoutOf = (plan: Plan) => plan.layouts[0] as Layout;
/** A planting of the field has some eight neighbours within its distance, each way, old and new. */
const MOST_PAIRS = 2 * 2 * 20;

/** How many of the things of one list are no things of the other. */
function anew(now: readonly unknown[], before: readonly unknown[]): number {
  const known = new Set(before);
  return now.filter((item) => !known.has(item)).length;
}

function made(now: CheckResult, before: CheckResult) {
  const lists = [...now.pairsByParent].filter(
    ([id, list]) => before.pairsByParent.get(id) !== list,
  );
  return {
    stands: anew(now.stands, before.stands),
    pairs: anew(now.pairs, before.pairs),
    lists: lists.length,
    findings: anew(now.findings, before.findings),
  };
}

test.each([
  [200, 1],
  [200, 8],
  [2000, 1],
  [2000, 8],
])("one move among %d plantings of %d groups makes what its neighbours need", (count, groups) => {
  const plan = fieldPlan(count, groups);
  let [before, most] = [runChecks(plan, layoutOf(plan), book), 0];
  expect(before.findings.length).toBeGreaterThan(count / 2);
  for (const [step, id] of ["p7", "p7", "p50", "p150"].entries()) {
    const moved = moveObjects("layout-1", [id], step + 1, 0).apply(plan);
    const now = runChecks(moved, layoutOf(moved), book, before);
    const counts = made(now, before);
    // The one moved now, and the one moved before, which goes back.
    expect(counts.stands).toBeLessThanOrEqual(2);
    expect(counts.pairs).toBeLessThanOrEqual(MOST_PAIRS);
    expect(counts.lists).toBeLessThanOrEqual(MOST_PAIRS);
    expect(counts.findings).toBeLessThanOrEqual(MOST_PAIRS);
    most = Math.max(most, counts.pairs);
    before = now;
  }
  expect(most).toBeGreaterThan(0);
});

test("many moved at once make what they and their neighbours need, and no more", () => {
  const plan = fieldPlan(1000, 8);
  const moving = Array.from({ length: 100 }, (_, place) => `p${place * 10}`);
  const moved = moveObjects("layout-1", moving, 0.5, 0).apply(plan);
  const before = runChecks(plan, layoutOf(plan), book);
  const now = runChecks(moved, layoutOf(moved), book, before);
  const counts = made(now, before);
  expect(counts.stands).toBe(moving.length);
  // A pair is judged anew where a mover is one of its two, each way: once, however many move.
  const isMoving = new Set(moving);
  const touched = now.pairs.filter(
    ({ seedParent, pollenSource }) => isMoving.has(seedParent) || isMoving.has(pollenSource),
  );
  expect(counts.pairs).toBe(touched.length);
  expect(touched.length).toBeLessThan(now.pairs.length / 4);
  const parents = new Set(touched.map(({ seedParent }) => seedParent));
  expect(counts.lists).toBeGreaterThanOrEqual(parents.size);
  expect(counts.lists).toBeLessThanOrEqual(parents.size + moving.length);
  expect(now.findings).toEqual(runChecks(moved, layoutOf(moved), book).findings);
});

test("frames of a drag among thousands make no list of all plantings, and no findings", () => {
  const plan = fieldPlan(4500, 8);
  let last = runChecks(plan, layoutOf(plan), book);
  const isUnread = (layout: Layout) =>
    Object.getOwnPropertyDescriptor(layout, "plantings")?.get !== undefined;
  const frames: Plan[] = [];
  for (let step = 1; step <= 4; step += 1) {
    const moved = moveObjects("layout-1", ["p7", "p300"], step, 0.5).apply(plan);
    last = runChecks(moved, layoutOf(moved), book, last);
    frames.push(moved);
  }
  expect(frames.map((frame) => isUnread(layoutOf(frame)))).toEqual([true, true, true, true]);
  const shown = frames.at(-1) as Plan;
  // What reads them gets what it would have got.
  const fresh = runChecks(shown, layoutOf(shown), book);
  expect(isUnread(layoutOf(shown))).toBe(false);
  expect(last.findings).toEqual(fresh.findings);
  expect(last.pairs).toEqual(fresh.pairs);
  expect(last.stands.map(({ planting }) => planting)).toEqual(layoutOf(shown).plantings);
});

test("a run with nothing changed makes nothing", () => {
  const plan = fieldPlan(300, 8);
  const before = runChecks(plan, layoutOf(plan), book);
  const again = { ...plan, layouts: [{ ...layoutOf(plan) }] };
  const now = runChecks(again, layoutOf(again), book, before);
  expect(made(now, before)).toEqual({ stands: 0, pairs: 0, lists: 0, findings: 0 });
});

test("a full run tells how many findings there are and makes no pair before it is read", () => {
  const plan = fieldPlan(1000, 8);
  const asked = vi.spyOn(WayLists.prototype, "of");
  try {
    const result = runChecks(plan, layoutOf(plan), book);
    expect(result.counts.conflict).toBeGreaterThan(1000);
    expect(asked).not.toHaveBeenCalled();
    const own = result.pairsByParent.get("p7") ?? [];
    expect(asked).toHaveBeenCalledTimes(own.length);
    expect(result.counts).toEqual(countBySeverity(result.findings));
    expect(asked.mock.calls.length).toBeGreaterThan(result.counts.conflict);
    // One object for each pair, whoever reads it.
    const known = new Set(result.pairs);
    for (const pair of own) expect(known.has(pair)).toBe(true);
    for (const finding of result.findings) {
      if (finding.check !== "isolation") continue;
      for (const pair of finding.atRisk) expect(known.has(pair)).toBe(true);
    }
  } finally {
    asked.mockRestore();
  }
});
