/**
 * Which plan to open at the next start. Each tab notes its own, so that a reload brings back what
 * the tab had and not what another tab saved last; the database notes the last one of all, for
 * new tabs and new days. Notes are a convenience: failing to write one harms no plan.
 */
import { readFrom, within, withPlanDb } from "./plan-db.ts";

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

/** Has the storage opened and asked, so that the answer is there when it is wanted. Never fails. */
export function askRememberedPlans(): void {
  asked = readRemembered();
  // Told to who wants the answer.
  asked.catch(() => undefined);
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
