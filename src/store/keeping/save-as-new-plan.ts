/** Puts a version that must not cover another one into the storage as a plan of its own. */
import type { Plan } from "../../core/model/plan.ts";
import { copyOf, newPlanId } from "./plan-copy.ts";
import { saveGeneration } from "./save-generation.ts";

/** Gives back the title it is kept under. */
export async function saveAsNewPlan(plan: Plan): Promise<string> {
  const copy = copyOf(plan, newPlanId());
  const savedAt = new Date().toISOString();
  await saveGeneration({ plan: copy, parentRevision: 0, savedAt, origin: "opened" });
  return copy.title;
}
