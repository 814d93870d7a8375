/**
 * Who may write the plan that is open here. The tab that opened a plan first holds its lock and
 * writes; others look, and may take over. When the writing tab closes, the next in line gets the
 * lock by itself. Different plans have different locks. Where a browser has no locks every tab may
 * write, and the revision check of the storage alone keeps one from overwriting another.
 */
import { type TabMessage, listenToTabs, tellTabs } from "./tab-channel.ts";
import { type Hold, hasLocks, lockName, requestLock } from "./writer-lock.ts";

/**
 * A page that is being reloaded gives up its lock a moment after the new one asks, so a lock that
 * is not free is waited for this long, milliseconds.
 */
const RELOAD_GRACE_MS = 500;
/** How long the writing tab has to save before it is relieved, milliseconds. */
const HAND_OVER_MS = 2000;

/** The right to write a plan, or the knowledge that another tab has it. */
export interface Claim {
  readonly planId: string;
  readonly isWriter: boolean;
  readonly hold: Hold | null;
}

export interface LockEvents {
  /** Another tab asks for the plan: save what is unsaved. */
  readonly handOver: () => Promise<void>;
  /** Another tab has taken the plan over. */
  readonly lost: (planId: string) => Promise<void>;
  /** This tab may write from now on; what is stored may be newer than what it shows. */
  readonly granted: (planId: string) => Promise<void>;
  /** Another tab has saved the plan. */
  readonly savedElsewhere: () => Promise<void>;
}

let current: Claim | null = null;
let waiting: AbortController | null = null;
let events: LockEvents | null = null;

/** Sets who hears of the lock; gives back a function that lets go of everything. */
export function watchPlanLock(watcher: LockEvents): () => void {
  events = watcher;
  const stop = listenToTabs(hear);
  return () => {
    stop();
    events = null;
    waiting?.abort();
    waiting = null;
    current?.hold?.release();
    current = null;
  };
}

/** Asks for the right to write a plan. The claim counts once it is settled on. */
export async function claimPlan(planId: string): Promise<Claim> {
  if (current?.planId === planId && current.isWriter) return current;
  if (!hasLocks()) return { planId, isWriter: true, hold: null };
  const name = lockName(planId);
  try {
    const hold =
      (await requestLock(name, "if-free")) ??
      (await requestLock(name, "wait", AbortSignal.timeout(RELOAD_GRACE_MS)));
    return { planId, isWriter: hold !== null, hold };
  } catch {
    // Locks are kept from this page: as in a browser without them.
    return { planId, isWriter: true, hold: null };
  }
}

/** Gives up a claim that was not used after all. */
export function dropClaim(claim: Claim): void {
  if (claim !== current) claim.hold?.release();
}

/** Makes a claim the one of the plan on screen; the plan before is free for other tabs. */
export function settleClaim(claim: Claim): void {
  if (claim === current) return;
  waiting?.abort();
  waiting = null;
  current?.hold?.release();
  current = claim;
  if (claim.hold) void watchHold(claim, claim.hold);
  else if (!claim.isWriter) void waitForTurn(claim.planId);
}

/** Edits here what another tab has open: that tab saves and becomes the one that only looks. */
export async function takeOver(): Promise<void> {
  const asked = current;
  if (!asked || asked.isWriter) return;
  const { planId } = asked;
  await handedOver(planId);
  if (current !== asked) return;
  const hold = await requestLock(lockName(planId), "steal");
  if (!hold) return;
  if (current === asked) await grant(planId, hold);
  else hold.release();
}

async function watchHold(claim: Claim, hold: Hold): Promise<void> {
  await hold.lost;
  if (current !== claim) return;
  current = { planId: claim.planId, isWriter: false, hold: null };
  void waitForTurn(claim.planId);
  await events?.lost(claim.planId);
}

async function waitForTurn(planId: string): Promise<void> {
  const wait = new AbortController();
  waiting = wait;
  const hold = await requestLock(lockName(planId), "wait", wait.signal);
  if (!hold) return;
  if (waiting === wait && current?.planId === planId && !current.isWriter) {
    await grant(planId, hold);
  } else hold.release();
}

async function grant(planId: string, hold: Hold): Promise<void> {
  waiting?.abort();
  waiting = null;
  const claim = { planId, isWriter: true, hold };
  current = claim;
  void watchHold(claim, hold);
  await events?.granted(planId);
}

/** Asks the writing tab to save; settles when it has, or when it does not answer. */
function handedOver(planId: string): Promise<void> {
  return new Promise((resolve) => {
    const done = () => {
      stop();
      clearTimeout(patience);
      resolve();
    };
    const stop = listenToTabs((message) => {
      if (message.kind === "handed-over" && message.planId === planId) done();
    });
    const patience = setTimeout(done, HAND_OVER_MS);
    tellTabs({ kind: "hand-over", planId });
  });
}

function hear(message: TabMessage): void {
  if (message.planId !== current?.planId) return;
  if (message.kind === "saved") void events?.savedElsewhere();
  if (message.kind === "hand-over" && current.isWriter) void answerHandOver(message.planId);
}

async function answerHandOver(planId: string): Promise<void> {
  await events?.handOver();
  tellTabs({ kind: "handed-over", planId });
}
