/** What becomes of the plan on screen when another tab works on it too. Nothing of either is lost. */
import { fail, showSaved } from "./autosave.ts";
import { followStored, hasUnsaved, knownPlan } from "./current-plan.ts";
import { allowEdits, lookOnly } from "./look-only.ts";
import { copyOf, newPlanId } from "./plan-copy.ts";
import { claimPlan } from "./plan-lock.ts";
import { usePlanStore } from "../plan/plan-store.ts";
import { readHead } from "./plan-db.ts";
import { readNewest } from "./read-generation.ts";
import { tell, useSaveState } from "./save-state.ts";
import { faultReason } from "./storage-fault.ts";
import { inTurn, putOnScreen } from "./switch-plan.ts";
import * as words from "./words.ts";
import { saveAsNewPlan } from "./save-generation.ts";

/** Both tabs changed the plan unknown to each other: the version here becomes a plan of its own. */
export function keepBoth(planId: string): Promise<void> {
  return inTurn(async () => {
    if (!isOnScreen(planId) || !hasUnsaved()) return;
    const claim = await claimPlan(newPlanId());
    const { plan } = usePlanStore.getState();
    const copy = copyOf(plan, claim.planId);
    putOnScreen(copy, claim, { revision: 0, stored: null, inFile: null });
    tell(words.changedInBoth(plan.title, copy.title));
  });
}

/** Another tab has taken the plan over: what it has not seen is kept as a plan of its own. */
export function becomeLooker(planId: string): Promise<void> {
  return inTurn(async () => {
    if (!isOnScreen(planId)) return;
    const { plan } = usePlanStore.getState();
    const wasUnsaved = hasUnsaved();
    useSaveState.setState({ isReadOnly: true });
    lookOnly();
    try {
      if (wasUnsaved) {
        const title = await saveAsNewPlan(plan);
        tell(words.takenOver(title));
      }
      await showNewest(planId);
    } catch (error) {
      fail(faultReason(error));
    }
  });
}

/** This tab may edit what it shows, once it shows what is stored. */
export function becomeWriter(planId: string): Promise<void> {
  return inTurn(async () => {
    if (!isOnScreen(planId)) return;
    // If the newest cannot be read, the revision check keeps this tab from covering it.
    await showNewest(planId).catch(() => undefined);
    useSaveState.setState({ isReadOnly: false, notice: null });
    allowEdits();
  });
}

/** Shows what another tab has stored since, unless there is unsaved work on the screen. */
export function catchUp(): Promise<void> {
  return inTurn(async () => {
    const { planId } = knownPlan();
    if (!hasUnsaved()) await showNewest(planId).catch(() => undefined);
  });
}

async function showNewest(planId: string): Promise<void> {
  const isBehind = (revision: number) =>
    revision > knownPlan().revision || usePlanStore.getState().plan !== knownPlan().stored;
  const head = await readHead(planId);
  if (!head || !isBehind(head.revision)) return;
  const found = await readNewest(planId);
  // Something may have been edited while the copy was read.
  if (found.kind !== "found" || hasUnsaved()) return;
  followStored(found.copy.plan, found.copy.revision);
  showSaved(found.copy.savedAt);
}

function isOnScreen(planId: string): boolean {
  return knownPlan().planId === planId;
}
