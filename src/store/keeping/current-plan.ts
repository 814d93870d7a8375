/**
 * The plan this tab has open, and what the tab knows of its stored copy. Plans are compared by
 * identity: the store makes a new plan object for every change and for nothing else.
 */
import type { Plan } from "../../core/model/plan.ts";
import type { Origin } from "./keeping-rule.ts";
import { usePlanStore } from "../plan/plan-store.ts";
import { useWindowStore } from "../window/window-store.ts";
import { useSaveState } from "./save-state.ts";
import type { UndoHistory } from "./undo-history.ts";
import * as words from "./words.ts";

export interface KnownPlan {
  readonly planId: string;
  /** Newest stored revision this tab has seen; 0 when none is stored. */
  readonly revision: number;
  /** The plan as it is stored in the browser; null when it is not. */
  readonly stored: Plan | null;
  /** The plan as it lies in a file or can be had again otherwise; null when it does not. */
  readonly inFile: Plan | null;
  /** What the next saved copy says of its origin. */
  readonly origin: Origin;
}

let known: KnownPlan = {
  planId: "",
  revision: 0,
  stored: usePlanStore.getState().plan,
  inFile: null,
  origin: "opened",
};

export function knownPlan(): KnownPlan {
  return known;
}

/** Whether the committed plan differs from the stored one and this tab may store it. */
export function hasUnsaved(): boolean {
  return !useSaveState.getState().isReadOnly && usePlanStore.getState().plan !== known.stored;
}

/** Whether leaving now would lose work: neither stored nor in a file. */
export function hasWorkToLose(): boolean {
  return hasUnsaved() && usePlanStore.getState().plan !== known.inFile;
}

/** Whether anything was done to the open plan, in this tab or before: to a sample just opened nothing was. */
export function isWorkedOn(): boolean {
  const { plan, past } = usePlanStore.getState();
  return past.length > 0 || plan !== known.inFile;
}

/** Puts another plan on screen, with the steps of undo kept for it. */
export function showPlan(
  plan: Plan,
  knowledge: Omit<KnownPlan, "planId">,
  history?: UndoHistory,
): void {
  known = { ...knowledge, planId: plan.id };
  usePlanStore.getState().openPlan(plan, history);
}

/**
 * Brings the plan on screen to what is stored, as one change: view and selection stay, and where
 * nothing differs nothing happens.
 */
export function followStored(plan: Plan, revision: number): void {
  known = { ...known, planId: plan.id, revision, stored: plan, origin: "edit" };
  usePlanStore.getState().follow({ title: words.changedInOtherTab, apply: () => plan });
  known = { ...known, stored: usePlanStore.getState().plan };
}

/** The plan object has been stored as a revision. */
export function markStored(plan: Plan, revision: number): void {
  const inFile = known.planId === plan.id ? known.inFile : null;
  known = { planId: plan.id, revision, stored: plan, inFile, origin: "edit" };
}

/** The plan object has been written to a file. */
export function markInFile(plan: Plan): void {
  if (plan.id === known.planId) known = { ...known, inFile: plan };
}

/** The stored copies are gone: what is on screen is all there is. */
export function markGone(): void {
  known = { ...known, stored: null };
}

/**
 * The plan on screen goes on under another id, with its history: it has been saved as another file.
 * @param written the plan as it was when the file was written
 */
export function goOnAs(id: string, written: Plan): void {
  const { plan, past, future } = usePlanStore.getState();
  usePlanStore
    .getState()
    .follow({ title: words.goOnInOtherFile, apply: (before) => ({ ...before, id }) });
  const now = usePlanStore.getState().plan;
  // No step of the grower's: undo goes back through the edits before it.
  usePlanStore.setState({ past, future });
  useWindowStore.getState().announce("");
  const inFile = plan === written ? now : null;
  known = { planId: id, revision: 0, stored: null, inFile, origin: "opened" };
}
