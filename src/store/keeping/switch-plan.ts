/**
 * Putting another plan on screen without losing the one before: the new plan is fetched first,
 * then the open one is saved, and only then do they change places, with nothing in between.
 */
import type { Plan } from "../../core/model/plan.ts";
import { finishTyping, flushAutosave, reviewLeaving, showSaved } from "./autosave.ts";
import { checksum } from "./checksum.ts";
import { type KnownPlan, goOnAs, hasUnsaved, hasWorkToLose, showPlan } from "./current-plan.ts";
import { allowEdits, lookOnly } from "./look-only.ts";
import { forgetLastMoment, lastMomentOf } from "./unsaved-note.ts";
import { rememberPlan } from "./last-plan.ts";
import { newPlanId } from "./plan-copy.ts";
import { type Claim, claimPlan, dropClaim, settleClaim } from "./plan-lock.ts";
import { type Head, readHead } from "./plan-db.ts";
import { type FoundCopy, type NewestCopy, readNewest } from "./read-generation.ts";

import { clockText, tell, useSaveState } from "./save-state.ts";
import type { UndoHistory } from "./undo-history.ts";
import * as words from "./words.ts";
import { saveAsNewPlan } from "./save-generation.ts";

/**
 * Where a plan from outside comes from. A sample never covers what was made of it before; a
 * stand-in, shown because the storage does not answer, is stored only once it is edited.
 */
export type Source = "file" | "sample" | "made-here" | "stand-in";

/** The last switch; one at a time. */
let switching: Promise<unknown> = Promise.resolve();

/** Does something with the plan on screen when no other plan is about to be put there. */
export function inTurn<T>(work: () => Promise<T>): Promise<T> {
  const turn = switching.then(work);
  switching = turn.catch(() => undefined);
  return turn;
}

/** Opens a plan that is stored in this browser, or what is left of it, and says how that went. */
export function openStored(planId: string): Promise<FoundCopy["kind"] | "kept-open"> {
  return inTurn(async () => {
    finishTyping();
    const claim = await claimPlan(planId);
    try {
      const found = await readNewest(planId);
      const moment = found.kind === "found" ? await lookBack(found.copy, claim) : null;
      const canOpen = found.kind === "found" && (await leaveOpenPlan());
      if (!canOpen) {
        dropClaim(claim);
        return found.kind === "found" ? "kept-open" : found.kind;
      }
      showCopy(found.copy, claim, moment);
      return "found";
    } catch (error) {
      dropClaim(claim);
      throw error;
    }
  });
}

interface LeftUnsaved {
  readonly plan: Plan;
  /** One more step than the stored copy has. */
  readonly history: UndoHistory;
}

/** What was left unsaved when the plan was last closed; a version of its own is put away at once. */
async function lookBack(
  { plan, revision, history }: NewestCopy,
  claim: Claim,
): Promise<LeftUnsaved | "unread" | null> {
  // Another tab that writes the plan has its own unsaved moments.
  if (!claim.isWriter) return null;
  const moment = await lastMomentOf(plan, revision);
  if (moment.kind === "apart") await saveAsNewPlan(moment.plan);
  if (moment.kind !== "newer") forgetLastMoment(plan.id);
  if (moment.kind === "unread") return "unread";
  if (moment.kind !== "newer") return null;
  const { withLastMoment } = await import("./undo-history.ts");
  return { plan: moment.plan, history: withLastMoment(history, plan, moment.plan) };
}

function showCopy(copy: NewestCopy, claim: Claim, moment: LeftUnsaved | "unread" | null): void {
  const { plan, revision, savedAt, damaged, history } = copy;
  if (moment && moment !== "unread") {
    putOnScreen(moment.plan, claim, { revision, stored: null, inFile: null }, moment.history);
    return;
  }
  // What is opened in place of damaged copies is not yet what the newest revision holds.
  const stored = damaged === 0 || !claim.isWriter ? plan : null;
  putOnScreen(plan, claim, { revision, stored, inFile: plan }, history);
  if (stored) showSaved(savedAt);
  // A note of unsaved work that cannot be read is such a copy: newer than what is opened, and kept.
  if (damaged > 0 || moment === "unread") tell(damageNotice(plan.title, savedAt));
}

function damageNotice(title: string, savedAt: string): string {
  const at = clockText(savedAt, new Date());
  return words.newestDamaged(title, at);
}

/** What to do with a plan from a file when another version of it is stored in this browser. */
export type Meeting =
  /** On top of the stored one, which stays as an earlier copy. */
  | "cover"
  /** As a plan of its own. */
  | "apart"
  /** Not at all. */
  | "stay";

/**
 * Opens a plan from outside the browser's storage; false when the open plan stays.
 * @param meet asked when the storage holds another version of the same plan
 */
export function openFromOutside(
  plan: Plan,
  source: Source,
  meet: (stored: Head) => Meeting = () => "cover",
): Promise<boolean> {
  return inTurn(async () => {
    finishTyping();
    // What is stored of the open plan is compared with the file: it has to be all of it.
    if (source === "file") await flushAutosave();
    const place = await placeFor(plan, source, meet);
    if (!place) return false;
    const { placed, revision, claim, notice } = place;
    if (!(await leaveOpenPlan())) {
      dropClaim(claim);
      return false;
    }
    const stored = source === "stand-in" ? placed : null;
    putOnScreen(placed, claim, { revision, stored, inFile: placed });
    if (notice) tell(notice);
    return true;
  });
}

/**
 * The plan on screen has been saved as another file under a new id: the screen goes on with that
 * one, history and all, and the plan before stays in the browser as it was.
 */
export function goOnInAnotherFile(id: string, written: Plan): Promise<void> {
  return inTurn(async () => {
    await flushAutosave();
    const claim = await claimPlan(id);
    useSaveState.setState({ state: { kind: "unsaved" }, isReadOnly: false });
    allowEdits();
    goOnAs(id, written);
    settleClaim(claim);
    rememberPlan(id, false);
    reviewLeaving();
  });
}

/** Shows a plan and makes its claim the one that counts. Nothing may be awaited in here. */
export function putOnScreen(
  plan: Plan,
  claim: Claim,
  knowledge: Pick<KnownPlan, "revision" | "stored" | "inFile">,
  history?: UndoHistory,
): void {
  const isReadOnly = !claim.isWriter;
  useSaveState.setState({ state: { kind: "unsaved" }, isReadOnly, problems: [], notice: null });
  if (isReadOnly) lookOnly();
  else allowEdits();
  showPlan(plan, { ...knowledge, origin: "opened" }, history);
  settleClaim(claim);
  rememberPlan(plan.id, knowledge.revision > 0 && claim.isWriter);
  reviewLeaving();
}

/** Saves the open plan; false when that fails and the grower would rather keep it open. */
async function leaveOpenPlan(): Promise<boolean> {
  for (let attempt = 0; hasUnsaved() && attempt < 3; attempt += 1) await flushAutosave();
  return !hasWorkToLose() || window.confirm(words.loseWork);
}

interface Placed {
  readonly placed: Plan;
  readonly revision: number;
  readonly claim: Claim;
  readonly notice: string | null;
}

/** Finds a plan from outside its place among the stored ones. */
async function placeFor(
  plan: Plan,
  source: Source,
  meet: (stored: Head) => Meeting,
): Promise<Placed | null> {
  const asNew = async (notice: string | null): Promise<Placed> => {
    const placed = { ...plan, id: newPlanId() };
    return { placed, revision: 0, claim: await claimPlan(placed.id), notice };
  };
  if (source === "stand-in") return asNew(null);
  // Asked beside the storage: at the start everything waits for both answers.
  const claiming = claimPlan(plan.id);
  // Without storage there is nothing to cover.
  const head = await readHead(plan.id).catch(() => undefined);
  const isOther = head !== undefined && !(await isStoredAs(plan, head.checksum));
  if (source === "sample" && isOther) {
    void claiming.then(dropClaim);
    return asNew(null);
  }
  const claim = await claiming;
  if (!claim.isWriter) {
    dropClaim(claim);
    return asNew(source === "file" ? words.openElsewhere(plan.title) : null);
  }
  const here = { placed: plan, revision: head?.revision ?? 0, claim };
  if (source !== "file" || !isOther) return { ...here, notice: null };
  const meeting = meet(head);
  if (meeting !== "cover") dropClaim(claim);
  switch (meeting) {
    case "stay":
      return null;
    case "apart":
      return asNew(words.openedApart(plan.title));
    case "cover": {
      const at = clockText(head.savedAt, new Date());
      const notice = words.openedOver(plan.title, at);
      return { ...here, notice };
    }
  }
}

async function isStoredAs(plan: Plan, sum: string): Promise<boolean> {
  const { validText } = await import("./plan-text.ts");
  const written = validText(plan);
  return written.ok && (await checksum(written.text)) === sum;
}
