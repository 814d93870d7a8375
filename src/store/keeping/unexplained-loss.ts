/**
 * Guards against a fault of ours that empties the plan: every change a grower makes leaves a step
 * in the history, so a plan that loses most of what is drawn without one is not saved.
 */
import { countEntries } from "../../core/model/collections.ts";
import type { Plan } from "../../core/model/plan.ts";
import type { PlanState } from "../plan/plan-store.ts";

/** What the sheet and the seed list hold is counted together: beds may go while plantings come. */
const DRAWN: ReadonlySet<string> = new Set(["beds", "plantings", "surroundings", "varieties"]);

/**
 * Whether a change of the committed plan lost, without an edit, more than half of what is drawn or
 * of any other list: the seed shelf, the field record, and what is added to the plan's lists later.
 */
export function isUnexplainedLoss(before: PlanState, after: PlanState): boolean {
  const hasStep = before.past !== after.past || before.future !== after.future;
  if (hasStep || before.plan === after.plan) return false;
  const left = countWatched(after.plan);
  return [...countWatched(before.plan)].some(([what, count]) => (left.get(what) ?? 0) * 2 < count);
}

/** Entries by list, the lists of what is drawn under one word. */
function countWatched(plan: Plan): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const [list, count] of countEntries(plan)) {
    const what = DRAWN.has(list) ? "drawn" : list;
    counts.set(what, (counts.get(what) ?? 0) + count);
  }
  return counts;
}
