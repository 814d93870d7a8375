import type { CheckedLayout } from "../../core/checks/checked-layout.ts";
import type { Edit } from "../../core/edits/edit.ts";
import { type PlanActions, type PlanState, usePlanStore } from "../../store/plan/plan-store.ts";
import { type WindowStore, useWindowStore } from "../../store/window/window-store.ts";

/** The plan store as it is at this moment, for what happens on a press or a key; nothing is watched. */
export function planNow(): PlanState & PlanActions {
  return usePlanStore.getState();
}

/** The window at this moment: what is selected, the tool in hand. */
export function windowNow(): WindowStore {
  return useWindowStore.getState();
}

/** Both, as a command sees them. */
export function commandNow(): PlanState & PlanActions & WindowStore {
  return { ...planNow(), ...windowNow() };
}

/** Keeps an edit as one undo step, if the plan may be changed at this moment. */
export function commit(edit: Edit): void {
  planNow().commit(edit);
}

/**
 * The kept plan's layout on screen with its own checks, as planned: what most files are made from.
 * What is only being tried on the sheet is left out of both.
 */
export function checkedNow(): CheckedLayout {
  return planNow().kept;
}

/** The same in the reading on screen, as planned or as grown: what is read of the ground now. */
export function readNow(): CheckedLayout {
  const { kept, grown } = planNow();
  return grown ?? kept;
}

/** As planned, followed: it changes when an edit is kept, not while one is tried. */
export function useKept(): CheckedLayout {
  return usePlanStore(({ kept }) => kept);
}
