import { layoutOf } from "../../core/model/layouts.ts";
import { usePlanStore } from "../plan/plan-store.ts";
import { planFileName } from "./file-name.ts";

/**
 * Downloads what is in memory, leaning on nothing but what writes plan files: the way out when the
 * screen has failed. A plan too broken for a plan file is downloaded as it is.
 */
export async function downloadPlan(): Promise<void> {
  const { plan, layoutId } = usePlanStore.getState();
  let text: string;
  try {
    const { writePlan } = await import("../../core/model/read-plan.ts");
    text = writePlan(plan);
  } catch {
    text = JSON.stringify(plan, null, 2);
  }
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([text], { type: "application/json" }));
  link.download = planFileName(plan, layoutOf(plan, layoutId), new Date());
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
