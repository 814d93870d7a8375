/** The plans in this browser and their earlier copies, for lists to choose from. */
import type { Plan } from "../../core/model/plan.ts";
import type { Origin } from "./keeping-rule.ts";
import { copyOf, newPlanId } from "./plan-copy.ts";
import { copiesOf, historyKey, readFrom, withPlanDb, within } from "./plan-db.ts";
import { planOf, readGeneration } from "./read-generation.ts";
import { clockText } from "./save-state.ts";
import { openFromOutside } from "./switch-plan.ts";
import * as words from "./words.ts";

export interface StoredPlan {
  readonly planId: string;
  readonly title: string;
  readonly revision: number;
  /** ISO 8601 date and time. */
  readonly savedAt: string;
}

export interface StoredCopy extends StoredPlan {
  readonly origin: Origin;
}

/** Every plan stored in this browser, the one saved last first. */
export async function listPlans(): Promise<readonly StoredPlan[]> {
  const heads = await readFrom("heads", (store) => store.getAll());
  return heads
    .map(({ planId, title, revision, savedAt }) => ({ planId, title, revision, savedAt }))
    .sort((a, b) => (a.savedAt < b.savedAt ? 1 : a.savedAt > b.savedAt ? -1 : 0));
}

/** A plan as it was saved last, not opened; null when it is gone or damaged. */
export async function planStored({ planId, revision }: StoredPlan): Promise<Plan | null> {
  const generation = await readGeneration(planId, revision);
  return generation ? planOf(generation) : null;
}

/** So many seasons back: what was longer ago tells little. Ours. */
const MOST_BEFORE = 10;

/**
 * The plans a plan came from, the season before first, as far as this browser keeps them. One that
 * cannot be read ends the list.
 */
export async function plansBefore(cameFrom: string): Promise<readonly Plan[]> {
  const heads = new Map((await listPlans()).map((head) => [head.planId, head]));
  const found: Plan[] = [];
  let wanted: string | undefined = cameFrom;
  while (wanted !== undefined && found.length < MOST_BEFORE) {
    const head = heads.get(wanted);
    const plan: Plan | null = head ? await planStored(head).catch(() => null) : null;
    if (!plan || found.some(({ id }) => id === plan.id)) break;
    found.push(plan);
    wanted = plan.cameFrom?.plan;
  }
  return found;
}

/** Stored copies of a plan, newest first. */
export function listGenerations(planId: string): Promise<readonly StoredCopy[]> {
  return readFrom("generations", async (store) => {
    const copies: StoredCopy[] = [];
    let cursor = await store.index("summary").openKeyCursor(copiesOf(planId), "prev");
    while (cursor) {
      const [, revision, savedAt, origin, title] = cursor.key;
      copies.push({ planId, title, revision, savedAt, origin });
      cursor = await cursor.continue();
    }
    return copies;
  });
}

/** How opening a copy went; `unreadable`: damaged or gone. */
export type OpenedCopy = "opened" | "unreadable" | "kept-open";

/** Opens an earlier copy as a plan of its own; the plan it comes from stays as it is. */
export async function openGenerationAsCopy(planId: string, revision: number): Promise<OpenedCopy> {
  const generation = await readGeneration(planId, revision);
  const plan = generation && (await planOf(generation));
  if (!plan) return "unreadable";
  const remark = words.copyOfTime(clockText(generation.savedAt, new Date()));
  const copy = copyOf(plan, newPlanId(), remark);
  return (await openFromOutside(copy, "made-here")) ? "opened" : "kept-open";
}

/** The text of a copy just as it is stored, whole or damaged; null when it is gone. */
export async function textOfCopy(planId: string, revision: number): Promise<string | null> {
  return (await readGeneration(planId, revision))?.text ?? null;
}

/** Takes a plan that is not open, with all its copies and steps of undo, out of this browser. */
export function deleteStoredPlan(planId: string): Promise<void> {
  return withPlanDb((db) => {
    const transaction = db.transaction(["generations", "heads", "notes"], "readwrite");
    return within(transaction, async () => {
      await transaction.objectStore("generations").delete(copiesOf(planId));
      await transaction.objectStore("heads").delete(planId);
      await transaction.objectStore("notes").delete(historyKey(planId));
    });
  });
}
