/**
 * Saving a plan as a new copy.
 *
 * A copy is written, read back and compared before the head moves to it, all in one transaction:
 * after a crash at any point the head stands on the copy before or on the new one. What is written
 * has first been read by the same reader that opens files, so no copy can be stored that would not
 * open. A tab may only write over the revision it knows: whoever finds another one has not seen
 * what it would replace, and is told so instead.
 */
import type { Plan } from "../../core/model/plan.ts";
import {
  FULL_STORAGE_RULE,
  KEEPING_RULE,
  type KeepingRule,
  type KeptCopy,
  type Origin,
  surplusCopies,
} from "./keeping-rule.ts";
import { type PlanDb, copiesOf, historyKey, within, withPlanDb } from "./plan-db.ts";
import { copyOf, newPlanId } from "./plan-copy.ts";
import { isFull } from "./storage-fault.ts";
import type { UndoHistory } from "./undo-history.ts";

export interface SaveRequest {
  readonly plan: Plan;
  /** Newest stored revision the caller has seen; 0 when it knows of none. */
  readonly parentRevision: number;
  /** ISO 8601 date and time by the caller's clock. */
  readonly savedAt: string;
  readonly origin: Origin;
  /** The steps of undo that led to the plan; left out, none are kept. */
  readonly history?: UndoHistory;
}

export type SaveOutcome =
  /** `wasWiped`: the browser had lost every earlier copy. */
  | { readonly kind: "saved"; readonly revision: number; readonly wasWiped: boolean }
  /** Somebody else saved a revision the caller has not seen; nothing was written. */
  | { readonly kind: "conflict"; readonly revision: number }
  /** The plan would not open again; nothing was written. */
  | { readonly kind: "invalid"; readonly fault: string };

/** Saves a plan as the next revision. Rejects only when the browser's storage fails. */
export async function saveGeneration(request: SaveRequest): Promise<SaveOutcome> {
  // Both come when something is first saved: they are no part of the first load.
  const [{ writtenPlan }, { historyText }] = await Promise.all([
    import("./write-on-thread.ts"),
    import("./undo-history.ts"),
  ]);
  const written = await writtenPlan(request.plan);
  if (!written.ok) return { kind: "invalid", fault: written.fault };
  const { text, sum } = written;
  const steps = request.history && historyText(request.history, sum);
  const write = (db: PlanDb) => writeGeneration(db, request, text, sum, steps);
  let outcome: SaveOutcome;
  try {
    outcome = await withPlanDb(write);
  } catch (error) {
    if (!isFull(error)) throw error;
    await withPlanDb((db) => prune(db, request.plan.id, FULL_STORAGE_RULE));
    // Steps of undo are a convenience: they make room for plans.
    await withPlanDb(dropHistories);
    outcome = await withPlanDb((db) => writeGeneration(db, request, text, sum));
  }
  if (outcome.kind === "saved") {
    // A copy too many harms nobody: the next save lets go of it.
    await withPlanDb((db) => prune(db, request.plan.id, KEEPING_RULE)).catch(() => undefined);
  }
  return outcome;
}

function writeGeneration(
  db: PlanDb,
  { plan, parentRevision, savedAt, origin }: SaveRequest,
  text: string,
  sum: string,
  steps?: string,
): Promise<SaveOutcome> {
  const transaction = db.transaction(["generations", "heads", "notes"], "readwrite", {
    durability: "strict",
  });
  const generations = transaction.objectStore("generations");
  const heads = transaction.objectStore("heads");
  return within(transaction, async () => {
    const head = await heads.get(plan.id);
    const newest = Math.max(head?.revision ?? 0, await newestRevision(generations, plan.id));
    if (head && head.revision === newest && head.checksum === sum) {
      return { kind: "saved", revision: newest, wasWiped: false };
    }
    const wasWiped = newest === 0 && parentRevision > 0;
    if (newest !== parentRevision && !wasWiped) return { kind: "conflict", revision: newest };
    const revision = parentRevision + 1;
    const common = { planId: plan.id, revision, savedAt, title: plan.title, checksum: sum };
    await generations.add({ ...common, origin, text });
    const back = await generations.get([plan.id, revision]);
    if (back?.text !== text) throw new DOMException("Read back another text", "DataError");
    await heads.put(common);
    const notes = transaction.objectStore("notes");
    await notes.put(plan.id, "last");
    if (steps !== undefined) await notes.put(steps, historyKey(plan.id));
    return { kind: "saved", revision, wasWiped };
  });
}

interface KeyCursorSource {
  openKeyCursor(
    range: IDBKeyRange,
    direction: "prev",
  ): Promise<{ readonly primaryKey: [string, number] } | null>;
}

async function newestRevision(generations: KeyCursorSource, planId: string): Promise<number> {
  const cursor = await generations.openKeyCursor(copiesOf(planId), "prev");
  return cursor?.primaryKey[1] ?? 0;
}

function prune(db: PlanDb, planId: string, rule: KeepingRule): Promise<void> {
  const transaction = db.transaction("generations", "readwrite");
  const { store } = transaction;
  return within(transaction, async () => {
    const copies: KeptCopy[] = [];
    let cursor = await store.index("summary").openKeyCursor(copiesOf(planId));
    while (cursor) {
      const [, revision, savedAt, origin] = cursor.key;
      copies.push({ revision, savedAt, origin });
      cursor = await cursor.continue();
    }
    for (const revision of surplusCopies(copies, rule)) await store.delete([planId, revision]);
  });
}

function dropHistories(db: PlanDb): Promise<void> {
  const transaction = db.transaction("notes", "readwrite");
  return within(transaction, async () => {
    await transaction.store.delete(IDBKeyRange.bound(historyKey(""), historyKey("\uFFFF")));
  });
}

/**
 * Puts a version that must not cover another one into the storage as a plan of its own.
 * Gives back the title it is kept under.
 */
export async function saveAsNewPlan(plan: Plan): Promise<string> {
  const copy = copyOf(plan, newPlanId());
  const savedAt = new Date().toISOString();
  await saveGeneration({ plan: copy, parentRevision: 0, savedAt, origin: "opened" });
  return copy.title;
}
