/**
 * Guards against a fault of ours that empties the plan: every change a grower makes leaves a step
 * in the history, so a plan that loses most of what is drawn without one is not saved.
 */
import type { Plan } from "../../core/model/plan.ts";
import type { PlanState } from "../plan/plan-store.ts";

/** Whether a change of the committed plan lost more than half of its objects without an edit. */
export function isUnexplainedLoss(before: PlanState, after: PlanState): boolean {
  const hasStep = before.past !== after.past || before.future !== after.future;
  return !hasStep && countObjects(after.plan) * 2 < countObjects(before.plan);
}

function countObjects(plan: Plan): number {
  const drawn = plan.layouts.map((layout) => layout.beds.length + layout.plantings.length);
  return drawn.reduce(
    (sum, count) => sum + count,
    plan.varieties.length + plan.surroundings.length,
  );
}
