/** Findings after one planting moved, carried forward, against a full run of all checks. */
import { expect, test } from "vitest";
import type { Layout, Plan } from "../../src/core/model/plan.ts";
import { fieldPlan } from "./field.ts";
import { reportRow } from "./report.ts";
import { shippedCore } from "./shipped-core.ts";
import { medianMs } from "./timing.ts";

const { cropBook, moveObjects, runChecks } = await shippedCore();
const book = cropBook();
const layoutOf = (plan: Plan) => plan.layouts[0] as Layout;

test.each([
  [100, 1],
  [100, 8],
  [500, 1],
  [500, 8],
  [2000, 1],
  [2000, 8],
  [10_000, 1],
  [10_000, 8],
])("%d plantings in %d crossing groups", (count, groups) => {
  const plan = fieldPlan(count, groups);
  let last = runChecks(plan, layoutOf(plan), book);
  let step = 0;
  const moveMs = medianMs(41, () => {
    step += 1;
    const moved = moveObjects("layout-1", ["p7"], step * 0.1, 0).apply(plan);
    last = runChecks(moved, layoutOf(moved), book, last);
  });
  const fullMs = medianMs(count > 2000 ? 3 : 9, () => runChecks(plan, layoutOf(plan), book));
  const isJudged = count === 500;
  const row = {
    section: "One move",
    size: `${count.toLocaleString("en")} plantings, ${groups} crossing groups`,
  };
  reportRow({
    ...row,
    what: "findings after a move",
    value: moveMs,
    unit: "ms",
    ...(isJudged ? { budget: "under 2 ms", isMet: moveMs < 2 } : {}),
  });
  reportRow({
    ...row,
    what: "findings after a move, share of a full run",
    value: moveMs / fullMs,
    unit: "x",
    ...(isJudged ? { budget: "under 0.2 x", isMet: moveMs / fullMs < 0.2 } : {}),
  });
  expect(last.stands.length).toBe(count);
});
