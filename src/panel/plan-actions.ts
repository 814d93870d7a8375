import type { Edit } from "../core/edits/edit.ts";
import { type PlanActions, type PlanState, usePlanStore } from "../store/plan-store.ts";

/** The store as it is at this moment, for what happens on a press or a key; nothing is watched. */
export function planNow(): PlanState & PlanActions {
  return usePlanStore.getState();
}

/** Keeps an edit as one undo step, if the plan may be changed at this moment. */
export function commit(edit: Edit): void {
  planNow().commit(edit);
}
