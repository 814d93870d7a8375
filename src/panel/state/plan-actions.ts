import type { CheckedLayout } from "../../core/checks/checked-layout.ts";
import type { Edit } from "../../core/edits/edit.ts";
import { type PlanActions, type PlanState, usePlanStore } from "../../store/plan/plan-store.ts";

/** The store as it is at this moment, for what happens on a press or a key; nothing is watched. */
export function planNow(): PlanState & PlanActions {
  return usePlanStore.getState();
}

/** Keeps an edit as one undo step, if the plan may be changed at this moment. */
export function commit(edit: Edit): void {
  planNow().commit(edit);
}

/**
 * The kept plan's layout on screen with its own checks: what paper and files are made from. What
 * is only being tried on the sheet is left out of both.
 */
export function checkedNow(): CheckedLayout {
  return planNow().kept;
}

/** The same, followed: it changes when an edit is kept, not while one is tried. */
export function useKept(): CheckedLayout {
  return usePlanStore(({ kept }) => kept);
}
