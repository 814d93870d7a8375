/**
 * While a plan may only be looked at (still opening, open for editing in another tab), the store
 * refuses edits with a reason. Selecting, zooming, layouts and findings go on working.
 */
import { usePlanStore } from "../plan/plan-store.ts";
import { tell } from "./save-state.ts";

const LOOK_ONLY =
  "This plan is open in another tab. Here you can look at it, or take over and edit it here.";

export function guardEdits(reason: string): void {
  usePlanStore.getState().setLookOnly(reason);
}

export function allowEdits(): void {
  usePlanStore.getState().setLookOnly(null);
}

/** Another tab writes the plan: nothing is edited here, and that is said. */
export function lookOnly(): void {
  guardEdits(LOOK_ONLY);
  tell(LOOK_ONLY);
}
