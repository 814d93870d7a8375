/**
 * Asks the browser, once and quietly, not to clear this page's storage when space runs short. Only
 * after the grower has changed something: a browser may ask back, and a visitor need not be asked.
 * Whatever the answer, the plan file remains the archive.
 */
import { usePlanStore } from "../plan/plan-store.ts";

let isAsked = false;
let isKept = false;

/** Whether the browser has promised; false as long as it has not answered. */
export function isStorageKept(): boolean {
  return isKept;
}

export async function askToKeepStorage(): Promise<void> {
  if (isAsked || usePlanStore.getState().past.length === 0) return;
  isAsked = true;
  try {
    isKept = (await navigator.storage.persisted()) || (await navigator.storage.persist());
  } catch {
    // The browser cannot promise it.
  }
}
