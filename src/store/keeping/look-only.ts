/**
 * While a plan may only be looked at (still opening, open for editing in another tab), the store
 * refuses edits with a reason. Selecting, zooming, layouts and findings go on working.
 */
import { usePlanStore } from "../plan/plan-store.ts";
import { tell } from "./save-state.ts";
import * as words from "./words.ts";

export function guardEdits(reason: string): void {
  usePlanStore.getState().setLookOnly(reason);
}

export function allowEdits(): void {
  usePlanStore.getState().setLookOnly(null);
}

/** Another tab writes the plan: nothing is edited here, and that is said. */
export function lookOnly(): void {
  guardEdits(words.lookOnly);
  tell(words.lookOnly);
}
