/**
 * Saves every committed change in the browser by itself, and says honestly how it stands.
 *
 * Only commits are heard: a gesture under way changes what is shown, not the plan. A change waits
 * for a pause of 400 ms, at most 2 s, and not at all when the page is hidden, for that is the last
 * dependable moment on a phone; what is unsaved then is noted besides (unsaved-note.ts). After a
 * failure the plan lives on in memory; saving is tried again with every change and every half
 * minute.
 */
import type { Plan } from "../../core/model/plan.ts";
import { hasUnsaved, hasWorkToLose, knownPlan, markStored } from "./current-plan.ts";
import { note } from "./diagnostics.ts";
import { forgetLastMoment, noteLastMoment } from "./unsaved-note.ts";
import { isUnexplainedLoss } from "./unexplained-loss.ts";
import { usePlanStore } from "../plan/plan-store.ts";
import { type SaveOutcome, saveGeneration } from "./save-generation.ts";
import { createSaveQueue } from "./save-queue.ts";
import { clockText, tell, useSaveState } from "./save-state.ts";
import { faultReason } from "./storage-fault.ts";
import { tellTabs } from "./tab-channel.ts";
import * as words from "./words.ts";

const PACE = { pauseMs: 400, ceilingMs: 2000 };
const RETRY_MS = 30_000;

export interface AutosaveEvents {
  /** Another tab saved a version this one has not seen: keep both. */
  readonly conflict: (planId: string) => void;
  /** A plan has been stored. */
  readonly stored: (planId: string) => void;
  /** The page is on screen again after having been hidden. */
  readonly returned: () => void;
}

let events: AutosaveEvents | null = null;
let retry: ReturnType<typeof setTimeout> | undefined;
/** A plan that lost its content without an edit; it is kept out of the storage. */
let emptied: Plan | null = null;
let savesUnderWay = 0;

const queue = createSaveQueue(saveOnce, PACE);

/** Begins saving; to be called when the plan to work on is open. Gives back a function that ends it. */
export function startAutosave(watcher: AutosaveEvents): () => void {
  events = watcher;
  const unsubscribe = usePlanStore.subscribe((state, before) => {
    if (state.plan === before.plan) return;
    if (isUnexplainedLoss(before, state)) emptied = state.plan;
    planChanged();
  });
  const hiding = () => {
    const { plan } = usePlanStore.getState();
    if (hasUnsaved() && plan !== emptied) {
      noteLastMoment(plan, knownPlan().revision, savesUnderWay > 0);
    }
    void flushAutosave();
  };
  const changingVisibility = () => {
    if (document.visibilityState === "hidden") hiding();
    else watcher.returned();
  };
  const restored = (event: PageTransitionEvent) => {
    if (event.persisted) watcher.returned();
  };
  document.addEventListener("visibilitychange", changingVisibility);
  const leaving = () => {
    finishTyping();
    hiding();
  };
  window.addEventListener("pagehide", leaving);
  window.addEventListener("pageshow", restored);
  planChanged();
  return () => {
    unsubscribe();
    document.removeEventListener("visibilitychange", changingVisibility);
    window.removeEventListener("pagehide", leaving);
    window.removeEventListener("pageshow", restored);
    window.removeEventListener("beforeunload", warnOfLoss);
    clearTimeout(retry);
    queue.cancel();
    events = null;
  };
}

/**
 * A text that is still being typed belongs to the plan it is typed in. Fields apply what is typed
 * when they are left; see panel/form/use-draft.ts for the mark.
 */
export function finishTyping(): void {
  const { activeElement } = document;
  if (activeElement?.getAttribute("data-draft") === "typed") (activeElement as HTMLElement).blur();
}

/** Saves now what is unsaved; settles when it is stored or has failed. */
export async function flushAutosave(): Promise<void> {
  if (events && hasUnsaved()) await queue.flush();
}

function planChanged(): void {
  if (hasUnsaved()) {
    const { state } = useSaveState.getState();
    if (state.kind !== "failed") useSaveState.setState({ state: { kind: "unsaved" } });
    queue.request();
  }
  reviewLeaving();
}

/** The browser asks before leaving only while there is work to lose; asking always costs speed. */
export function reviewLeaving(): void {
  if (hasWorkToLose()) window.addEventListener("beforeunload", warnOfLoss);
  else window.removeEventListener("beforeunload", warnOfLoss);
}

function warnOfLoss(event: Event): void {
  event.preventDefault();
  void flushAutosave();
}

async function saveOnce(): Promise<void> {
  clearTimeout(retry);
  const { plan, past, future } = usePlanStore.getState();
  if (!events || !hasUnsaved()) return;
  if (plan === emptied) {
    fail(words.contentLost);
    return;
  }
  if (useSaveState.getState().state.kind !== "failed") {
    useSaveState.setState({ state: { kind: "saving" } });
  }
  const known = knownPlan();
  const parentRevision = plan.id === known.planId ? known.revision : 0;
  const savedAt = new Date().toISOString();
  savesUnderWay += 1;
  try {
    const { origin } = known;
    const outcome = await saveGeneration({
      plan,
      parentRevision,
      savedAt,
      origin,
      history: { past, future },
    });
    settle(plan, savedAt, outcome);
  } catch (error) {
    fail(faultReason(error));
    retry = setTimeout(() => queue.request(), RETRY_MS);
  } finally {
    savesUnderWay -= 1;
  }
  reviewLeaving();
}

function settle(plan: Plan, savedAt: string, outcome: SaveOutcome): void {
  switch (outcome.kind) {
    case "saved": {
      markStored(plan, outcome.revision);
      showSaved(savedAt);
      if (!hasUnsaved()) forgetLastMoment(plan.id);
      tellTabs({ kind: "saved", planId: plan.id });
      if (outcome.wasWiped) tell(words.storedAgain);
      events?.stored(plan.id);
      return;
    }
    case "conflict":
      events?.conflict(plan.id);
      return;
    case "invalid":
      fail(words.planHasFault(outcome.fault));
  }
}

/** Says that the plan is stored, unless it changed meanwhile. */
export function showSaved(savedAt: string): void {
  useSaveState.setState({
    state: hasUnsaved()
      ? { kind: "unsaved" }
      : { kind: "saved", at: clockText(savedAt, new Date()) },
  });
}

export function fail(reason: string): void {
  note("saving", words.notSaved(reason));
  useSaveState.setState({ state: { kind: "failed", reason } });
}
