/**
 * Stored plans that vanish while the program runs: deleted by another page of the same address, by
 * the browser's tools, or by the browser itself. The plan on screen is whole: a file is offered
 * first, and then it is stored again without waiting for the next edit.
 */
import { fail, flushAutosave, reviewLeaving } from "./autosave.ts";
import { knownPlan, markGone } from "./current-plan.ts";
import { readHead } from "./plan-db.ts";
import { useSaveState } from "./save-state.ts";
import * as words from "./words.ts";

/** The connection to the storage was cut: looks whether the plan is still there. */
export async function storeAgainIfGone(): Promise<void> {
  const { planId, revision } = knownPlan();
  const isOurs = revision > 0 && !useSaveState.getState().isReadOnly;
  if (!isOurs) return;
  try {
    if (await readHead(planId)) return;
  } catch {
    // What cannot be looked at is found by the next save.
    return;
  }
  if (knownPlan().planId !== planId) return;
  markGone();
  fail(words.plansDeleted);
  reviewLeaving();
  await flushAutosave();
}
