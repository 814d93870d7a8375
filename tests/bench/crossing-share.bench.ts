/**
 * How much would cross: the estimate of a mixed garden against full checks of it in the same run,
 * and the shade of one planting.
 */
import { expect, test } from "vitest";
import type { Layout } from "../../src/core/model/plan.ts";
import { fieldPlan } from "./field.ts";
import { reportRow } from "./report.ts";
import { shippedCore } from "./shipped-core.ts";
import { bestMs } from "./timing.ts";

const { cropBook, crossingEstimates, resolveStands, runChecks, shadeOver, shadeProblem } =
  await shippedCore();
const book = cropBook();
const section = "How much would cross";
/** Cells along the longer side when at rest, as the window asks for them. */
const CELLS = 96;

test("the estimate of 200 plantings", () => {
  const plan = fieldPlan(200, 8);
  const layout = plan.layouts[0] as Layout;
  const check = bestMs(15, () => runChecks(plan, layout, book));
  // Stands of their own every time: nothing is kept from one run to the next.
  const both = bestMs(15, () => crossingEstimates(resolveStands(plan, layout, book), book));
  const stands = bestMs(15, () => resolveStands(plan, layout, book));
  expect(both.made.filter(({ way }) => way === "estimate").length).toBeGreaterThan(20);
  const ratio = (both.ms - stands.ms) / check.ms;
  reportRow({
    section,
    what: "estimates of all, against a full check",
    size: "200 plantings, 8 crossing groups",
    value: ratio,
    unit: "x",
    budget: "at most 2 x",
    isMet: ratio <= 2,
  });
});

test.each([1, 10])("the shade of one planting with %d sources", (sources) => {
  const plan = fieldPlan((sources + 1) * 8, 8);
  const layout = plan.layouts[0] as Layout;
  const stands = resolveStands(plan, layout, book).filter(({ kind }) => kind.id === "maize");
  const [parent] = stands;
  const problem = parent ? shadeProblem(parent, stands, book) : null;
  if (!problem) throw new Error("no shade to make");
  expect(problem.sources.length).toBe(sources);
  const bounds = { minX: -20, minY: -20, maxX: 60, maxY: 40 };
  const { ms, made } = bestMs(10, () => shadeOver(problem, bounds, CELLS));
  expect(made.shares.every((share) => share > 0 && share <= 1)).toBe(true);
  reportRow({
    section,
    what: "shade of one planting, on its own thread",
    size: `${sources} ${sources === 1 ? "source" : "sources"}, ${made.columns} by ${made.rows} cells`,
    value: ms,
    unit: "ms",
    budget: "under 50 ms",
    isMet: ms < 50,
  });
});
