/**
 * Guards against a fault of ours that empties the plan: every change a grower makes leaves a step
 * in the history, so a plan that loses most of what is drawn without one is not saved.
 */
import { countEntries } from "../../core/model/collections.ts";
import type { Plan } from "../../core/model/plan.ts";
import type { PlanState } from "../plan/plan-store.ts";

/** Whether a change of the committed plan lost more than half of its objects without an edit. */
export function isUnexplainedLoss(before: PlanState, after: PlanState): boolean {
  const hasStep = before.past !== after.past || before.future !== after.future;
  if (hasStep) return false;
  return [countObjects, countLots].some((count) => count(after.plan) * 2 < count(before.plan));
}

/** What the sheet and the seed list hold together. */
function countObjects(plan: Plan): number {
  const counts = countEntries(plan);
  return ["beds", "plantings", "surroundings", "varieties"].reduce(
    (sum, name) => sum + (counts.get(name) ?? 0),
    0,
  );
}

/** The seed shelf is worth as much as what is drawn, and may be far longer: it is counted by itself. */
function countLots(plan: Plan): number {
  return countEntries(plan).get("lots") ?? 0;
}
