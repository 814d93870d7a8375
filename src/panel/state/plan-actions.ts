import { type CheckResult, runChecks } from "../../core/checks/run-checks.ts";
import type { CropBook } from "../../core/kinds/crop-book.ts";
import { planBook } from "../../core/kinds/own-kinds.ts";
import type { Edit } from "../../core/edits/edit.ts";
import type { Layout, Plan } from "../../core/model/plan.ts";
import {
  type PlanActions,
  type PlanState,
  layoutOf,
  usePlanStore,
} from "../../store/plan/plan-store.ts";

/** The store as it is at this moment, for what happens on a press or a key; nothing is watched. */
export function planNow(): PlanState & PlanActions {
  return usePlanStore.getState();
}

/** Keeps an edit as one undo step, if the plan may be changed at this moment. */
export function commit(edit: Edit): void {
  planNow().commit(edit);
}

/** A layout with its plan, crop base and checks, all of one moment. */
export interface CheckedLayout {
  readonly plan: Plan;
  readonly layout: Layout;
  readonly book: CropBook;
  readonly result: CheckResult;
}

/**
 * The kept plan's layout on screen with its own checks: what paper and files are made from. What
 * is only being tried on the sheet is left out of both.
 */
export function checkedNow(): CheckedLayout {
  const state = planNow();
  const { plan } = state;
  const layout = layoutOf(plan, state.layoutId);
  const book = planBook(plan);
  const result = state.isPreviewing ? runChecks(plan, layout, book) : state.result;
  return { plan, layout, book, result };
}
