/** Findings after plantings moved, carried forward, against a full run; a full run against its pairs. */
import { expect, test } from "vitest";
import type { Layout, Plan } from "../../src/core/model/plan.ts";
import { fieldPlan } from "./field.ts";
import { reportRow } from "./report.ts";
import { shippedCore } from "./shipped-core.ts";
import { bestMs, growthExponent, medianMs } from "./timing.ts";

const { cropBook, isolationPairs, moveObjects, resolveStands, runChecks } = await shippedCore();
const book = cropBook();
const layoutOf = (plan: Plan) => plan.layouts[0] as Layout;
const sizeOf = (count: number, groups: number) =>
  `${count.toLocaleString("en")} plantings, ${groups} crossing groups`;
/** Milliseconds that one move may take, by number of plantings. */
const BUDGETS_MS: ReadonlyMap<number, number> = new Map([
  [500, 2],
  [10_000, 4],
]);
const times = new Map<number, (readonly [number, number])[]>();

test.each([
  [100, 1],
  [100, 8],
  [500, 1],
  [500, 8],
  [1000, 1],
  [1000, 8],
  [10_000, 1],
  [10_000, 8],
  [100_000, 8],
])("%d plantings in %d crossing groups", (count, groups) => {
  const plan = fieldPlan(count, groups);
  let last = runChecks(plan, layoutOf(plan), book);
  let step = 0;
  const { ms: moveMs } = bestMs(61, () => {
    step += 1;
    const moved = moveObjects("layout-1", ["p7"], step * 0.1, 0).apply(plan);
    last = runChecks(moved, layoutOf(moved), book, last);
    // As the window does on each frame: findings are made and counted, no list of all is joined.
    return last.counts;
  });
  // The window reads all findings some times a second; paper and files read all the rest.
  const { ms: readMs } = bestMs(21, () => {
    step += 1;
    const moved = moveObjects("layout-1", ["p7"], step * 0.1, 0).apply(plan);
    last = runChecks(moved, layoutOf(moved), book, last);
    return last.findings.length;
  });
  const fullMs = medianMs(count > 1000 ? 1 : 9, () => runChecks(plan, layoutOf(plan), book));
  if (count >= 1000) times.set(groups, [...(times.get(groups) ?? []), [count, moveMs]]);
  const row = { section: "One move", size: sizeOf(count, groups) };
  const budget = BUDGETS_MS.get(count);
  reportRow({
    ...row,
    what: "findings after a move",
    value: moveMs,
    unit: "ms",
    ...(budget === undefined ? {} : { budget: `under ${budget} ms`, isMet: moveMs < budget }),
  });
  reportRow({
    ...row,
    what: "the same, with the one list of all findings made",
    value: readMs,
    unit: "ms",
  });
  reportRow({
    ...row,
    what: "findings after a move, share of a full run",
    value: moveMs / fullMs,
    unit: "x",
    ...(count === 500 ? { budget: "under 0.2 x", isMet: moveMs / fullMs < 0.2 } : {}),
  });
  expect(last.stands.length).toBe(count);
});

test("a move grows with neighbours, not with plantings", () => {
  const value = growthExponent(times.get(8) ?? []);
  reportRow({
    section: "One move",
    what: "growth exponent of a move (0: as light among many as among few)",
    size: "1,000 to 100,000 plantings, 8 crossing groups",
    value,
    unit: "",
    budget: "goal: under 0.3",
    isMet: value < 0.3,
  });
  expect(value).not.toBeNaN();
});

test("many moved at once", () => {
  const plan = fieldPlan(5000, 8);
  const ids = Array.from({ length: 500 }, (_, index) => `p${index}`);
  let last = runChecks(plan, layoutOf(plan), book);
  let step = 0;
  const next = () => {
    step += 1;
    const moved = moveObjects("layout-1", ids, step * 0.1, 0).apply(plan);
    last = runChecks(moved, layoutOf(moved), book, last);
    return last;
  };
  // Where hundreds move, a frame draws pairs; findings come with the panels, some times a second.
  const { ms } = bestMs(41, next);
  const { ms: countedMs } = bestMs(21, () => next().counts);
  const { ms: fullMs } = bestMs(5, () => runChecks(plan, layoutOf(plan), book).counts);
  const row = { section: "One move", size: "500 of 5,000 plantings, 8 crossing groups" };
  const budget = { budget: "goal: under 16 ms", isMet: ms < 16 };
  reportRow({
    ...row,
    what: "a frame of many moved at once: plan and pairs brought up to date",
    value: ms,
    unit: "ms",
    ...budget,
  });
  reportRow({
    ...row,
    what: "the same, with findings made and counted",
    value: countedMs,
    unit: "ms",
  });
  reportRow({
    ...row,
    what: "findings after many moved at once, share of a full run",
    value: countedMs / fullMs,
    unit: "x",
  });
  expect(last.stands.length).toBe(5000);
});

test.each([1, 8])("all findings against the pairs alone, %d groups", (groups) => {
  const plan = fieldPlan(10_000, groups);
  const layout = layoutOf(plan);
  const run = () => isolationPairs(resolveStands(plan, layout, book), book);
  const pairs = bestMs(9, run);
  const pairsRead = bestMs(9, () => run().pairs);
  // Which there are, how grave and in which order; as objects they are made when they are read.
  const full = bestMs(9, () => runChecks(plan, layout, book).counts);
  const read = bestMs(9, () => runChecks(plan, layout, book).findings);
  const row = { section: "Whole-plan check", size: sizeOf(10_000, groups), unit: "x" };
  const goal = (value: number) => ({ value, budget: "goal: under 2 x", isMet: value < 2 });
  reportRow({
    ...row,
    what: "all findings told and counted, against its pairs alone",
    ...goal(full.ms / pairs.ms),
  });
  reportRow({
    ...row,
    what: "every finding read as an object, against its pairs read as objects",
    ...goal(read.ms / pairsRead.ms),
  });
  expect(full.made.conflict).toBeGreaterThan(0);
  expect(read.made.length).toBeGreaterThan(0);
});
