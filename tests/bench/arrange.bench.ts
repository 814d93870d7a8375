/** Clear ground and ways out for 200 plantings in 50 beds, as ratios to one full check. */
import { expect, test } from "vitest";
import { clearGround } from "../../src/core/arrange/clear-ground.ts";
import { findRemedies } from "../../src/core/arrange/find-remedies.ts";
import { runChecks } from "../../src/core/checks/run-checks.ts";
import type { Bed, Layout, Plan, Planting } from "../../src/core/model/plan.ts";
import { book, fieldPlan } from "./field.ts";
import { medianMs } from "./timing.ts";

const BEDS = 50;
const IN_EACH = 4;

/** The field's plantings laid into beds, four to each, in eight crossing groups. */
function beddedPlan(): Plan {
  const plan = fieldPlan(BEDS * IN_EACH, 8);
  const layout = plan.layouts[0] as Layout;
  const middle = (bed: number) => ({ x: (bed % 10) * 3, y: Math.floor(bed / 10) * 36 });
  const beds = Array.from({ length: BEDS }, (_, index): Bed => ({
    id: `b${index}`,
    code: `B${index}`,
    outline: { shape: "rectangle", ...middle(index), widthM: 1.2, lengthM: 30, turnDeg: 0 },
  }));
  const plantings = layout.plantings.map((planting, index): Planting => {
    const bed = Math.floor(index / IN_EACH);
    const { x, y } = middle(bed);
    const along = y - 12 + (index % IN_EACH) * 7;
    const outline = { shape: "rectangle", x, y: along, widthM: 1, lengthM: 3, turnDeg: 0 } as const;
    return { ...planting, bed: `b${bed}`, outline };
  });
  return { ...plan, layouts: [{ ...layout, beds, plantings }] };
}

test("clear ground and ways out against one full check", () => {
  const plan = beddedPlan();
  const layout = plan.layouts[0] as Layout;
  const result = runChecks(plan, layout, book);
  const finding = result.findings.find((entry) => entry.check === "isolation");
  if (finding?.check !== "isolation") throw new Error("the field has no conflict to solve");
  const id = finding.subjects[0] ?? "";
  const checkMs = medianMs(9, () => runChecks(plan, layout, book));
  const groundMs = medianMs(9, () => clearGround(result, id));
  const remedies = findRemedies({ plan, layout, book, result }, finding);
  const waysMs = medianMs(5, () => findRemedies({ plan, layout, book, result }, finding));
  console.log(
    `200 plantings, ${result.findings.length} findings: one check ${checkMs.toFixed(1)} ms, ` +
      `clear ground ${groundMs.toFixed(1)} ms (x${(groundMs / checkMs).toFixed(1)}), ` +
      `${remedies.length} ways out ${waysMs.toFixed(0)} ms (x${(waysMs / checkMs).toFixed(1)})`,
  );
  expect(remedies.length).toBeGreaterThan(0);
}, 120_000);
