/** What a thousand edits of a large plan leave behind for undo. */
import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import { test } from "vitest";
import { changePlantings } from "../../src/core/edits/object-edits.ts";
import type { Layout, Planting } from "../../src/core/model/plan.ts";
import { usePlanStore } from "../../src/store/plan/plan-store.ts";
import { fieldPlan } from "./field.ts";
import { reportRow } from "./report.ts";

const SIZE = 5000;
const EDITS = 1000;
const BUDGET_MB = 10;

setFlagsFromString("--expose-gc");
const collect: unknown = runInNewContext("gc");

function heapMb(): number {
  if (typeof collect !== "function") throw new Error("The collector cannot be called.");
  collect();
  collect();
  return process.memoryUsage().heapUsed / 1e6;
}

test(`undo history of ${EDITS} edits on ${SIZE} plantings`, () => {
  const field = fieldPlan(SIZE, 8);
  // Not for seed: what is kept for undo is the same, and nothing has to be compared.
  const plantings = (field.layouts[0]?.plantings ?? []).map((planting): Planting => ({
    ...planting,
    purpose: "other",
  }));
  const layout: Layout = { id: "layout-1", name: "Layout 1", beds: [], plantings };
  const plan = { ...field, layouts: [layout] };
  usePlanStore.getState().openPlan(plan);
  for (let edit = 0; edit < EDITS; edit += 1) {
    const planting = layout.plantings[(edit * 7) % SIZE];
    if (planting?.outline.shape !== "rectangle") throw new Error("The field has other outlines.");
    const outline = { ...planting.outline, x: planting.outline.x + 0.5 };
    usePlanStore
      .getState()
      .commit(changePlantings(layout.id, [planting.id], { outline }, `Move ${planting.code}`));
  }
  const steps = usePlanStore.getState().past.length;
  const withHistory = heapMb();
  usePlanStore.setState({ past: [], future: [] });
  const historyMb = withHistory - heapMb();
  reportRow({
    section: "Sheet in Chromium",
    what: `memory of the undo history after ${EDITS} edits, ${steps} kept`,
    size: `${SIZE} plantings`,
    value: historyMb,
    unit: "MB",
    budget: `under ${BUDGET_MB} MB`,
    isMet: historyMb < BUDGET_MB,
  });
});
