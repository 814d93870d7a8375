/**
 * Which plan to open at the next start. Each tab notes its own, so that a reload brings back what
 * the tab had and not what another tab saved last; the database notes the last one of all, for
 * new tabs and new days. Notes are a convenience: failing to write one harms no plan.
 */
import { askHead, readFrom, within, withPlanDb } from "./plan-db.ts";
import { askLock, lockName } from "./writer-lock.ts";

const KEY = "wideberth.plan";

/** Notes the plan for this tab, and for new ones when it is stored. */
export function rememberPlan(planId: string, isStored: boolean): void {
  try {
    sessionStorage.setItem(KEY, planId);
  } catch {
    // Storage is refused: the database's note is used at the next start.
  }
  if (isStored) noteLast(planId).catch(() => undefined);
}

let asked: Promise<readonly string[]> | null = null;

/**
 * Has the storage opened and asked, so that the answers are there when they are wanted: which plans
 * are remembered, and what the first of them waits for to be opened. Never fails.
 * @param otherwise id of the plan that is opened where none is remembered; null when unknown
 */
export function askRememberedPlans(otherwise: () => Promise<string | null>): void {
  asked = readRemembered().then(async (ids) => {
    // Before the answer is given: nobody has asked by then, and whoever does gets these answers.
    await askPlace(ids[0], otherwise).catch(() => undefined);
    return ids;
  });
  // Told to who wants the answer.
  asked.catch(() => undefined);
}

async function askPlace(
  first: string | undefined,
  otherwise: () => Promise<string | null>,
): Promise<void> {
  const planId = first ?? (await otherwise());
  if (planId === null) return;
  askLock(lockName(planId));
  if (first === undefined) askHead(planId);
}

/** Ids of plans to try at the start, best first. Rejects when the browser's storage fails. */
export function rememberedPlans(): Promise<readonly string[]> {
  const early = asked;
  asked = null;
  return early ?? readRemembered();
}

async function readRemembered(): Promise<readonly string[]> {
  const last = await readFrom("notes", (store) => store.get("last"));
  const here = rememberedHere();
  return [...new Set([here, last])].filter((id) => id !== null && id !== undefined);
}

function noteLast(planId: string): Promise<unknown> {
  return withPlanDb((db) => {
    const transaction = db.transaction("notes", "readwrite");
    return within(transaction, () => transaction.store.put(planId, "last"));
  });
}

/** Id of the plan this tab had; null in a new tab. */
export function rememberedHere(): string | null {
  try {
    return sessionStorage.getItem(KEY);
  } catch {
    return null;
  }
}
