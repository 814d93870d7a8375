/** Clear ground and ways out for 200 plantings in 50 beds, as ratios to one full check. */
import { expect, test } from "vitest";
import type { Layout } from "../../src/core/model/plan.ts";
import { beddedPlan } from "./bedded-field.ts";
import { reportRow } from "./report.ts";
import { shippedCore } from "./shipped-core.ts";
import { bestMs, medianMs } from "./timing.ts";

const section = "Clear ground and ways out";
const size = "200 plantings in 50 beds, 8 crossing groups";
/** One frame of a screen that shows sixty a second. */
const FRAME_MS = 16;

test("clear ground and ways out against one full check", async () => {
  const { clearGround, cropBook, findRemedies, moveObjects, runChecks } = await shippedCore();
  const book = cropBook();
  const plan = beddedPlan(50, 4);
  const layout = plan.layouts[0] as Layout;
  const result = runChecks(plan, layout, book);
  const finding = result.findings.find((entry) => entry.check === "isolation");
  if (finding?.check !== "isolation") throw new Error("the field has no conflict to solve");
  const id = finding.subjects[0] ?? "";
  const checkMs = medianMs(15, () => runChecks(plan, layout, book));
  // Nothing is remembered of the fresh outlines of a fresh check.
  const fresh = Array.from({ length: 16 }, () => runChecks(plan, layout, book));
  const groundMs = bestMs(15, () => clearGround(fresh.pop() ?? result, id)).ms;
  const other = result.stands.find((stand) => stand.id !== id)?.id ?? "";
  let shift = 0;
  const changed = Array.from({ length: 16 }, () => {
    shift += 0.01;
    const next = moveObjects("layout-1", [other], shift, 0).apply(plan);
    return runChecks(next, next.layouts[0] as Layout, book, result);
  });
  clearGround(result, id);
  const againMs = medianMs(15, () => clearGround(changed.pop() ?? result, id));
  const remedies = findRemedies({ plan, layout, book, result }, finding);
  const waysMs = medianMs(5, () => findRemedies({ plan, layout, book, result }, finding));
  const row = (what: string, ms: number, remark = "") =>
    reportRow({
      section,
      what: `${what}, against one full check${remark}`,
      size,
      value: ms / checkMs,
      unit: "x",
    });
  reportRow({ section, what: "one full check", size, value: checkMs, unit: "ms" });
  row("clear ground, first asked for", groundMs);
  row("clear ground, after another planting moved", againMs);
  row("all ways out of a conflict, each verified", waysMs, `; ${remedies.length} ways`);
  reportRow({
    section,
    what: "clear ground, first asked for",
    size,
    value: groundMs,
    unit: "ms",
    budget: `goal: one frame, ${FRAME_MS} ms`,
    isMet: groundMs <= FRAME_MS,
  });
  expect(remedies.length).toBeGreaterThan(0);
}, 120_000);
