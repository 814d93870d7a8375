/** Finding stored copies again. A copy is only believed when it is whole and opens. */
import type { Plan } from "../../core/model/plan.ts";
import { isWhole } from "./checksum.ts";
import { type Generation, copiesOf, historyKey, readFrom } from "./plan-db.ts";
import type { UndoHistory } from "./undo-history.ts";

/** The newest copy of a plan that is whole and opens. */
export interface NewestCopy {
  readonly plan: Plan;
  readonly savedAt: string;
  /** Newest revision in the storage, damaged or not: the one the next save goes upon. */
  readonly revision: number;
  /** How many newer copies are damaged. They stay where they are. */
  readonly damaged: number;
  /** The steps of undo that led to it. */
  readonly history: UndoHistory;
}

export type FoundCopy =
  | { readonly kind: "found"; readonly copy: NewestCopy }
  | { readonly kind: "none" }
  /** There are copies, but not one can be read. Nothing is deleted. */
  | { readonly kind: "damaged"; readonly title: string; readonly savedAt: string };

export async function readNewest(planId: string): Promise<FoundCopy> {
  const keys = await readFrom("generations", (store) => store.getAllKeys(copiesOf(planId)));
  const revisions = keys.map(([, revision]) => revision).reverse();
  const newest = revisions[0];
  if (newest === undefined) return { kind: "none" };
  let damaged = 0;
  let title = "";
  let savedAt = "";
  for (const revision of revisions) {
    const generation = await readGeneration(planId, revision);
    const plan = generation && (await planOf(generation));
    if (plan) {
      const kept = await readFrom("notes", (store) => store.get(historyKey(planId)));
      const { readHistory } = await import("./undo-history.ts");
      const history = readHistory(kept, generation.checksum, plan);
      const copy = { plan, savedAt: generation.savedAt, revision: newest, damaged, history };
      return { kind: "found", copy };
    }
    damaged += 1;
    title ||= generation?.title ?? "";
    savedAt ||= generation?.savedAt ?? "";
  }
  return { kind: "damaged", title, savedAt };
}

export function readGeneration(planId: string, revision: number): Promise<Generation | undefined> {
  return readFrom("generations", (store) => store.get([planId, revision]));
}

/** The plan of a copy, or null when the copy is damaged. */
export async function planOf(generation: Generation): Promise<Plan | null> {
  if (!(await isWhole(generation.text, generation.checksum))) return null;
  // The reader is no part of the first load: a first visit has nothing to read.
  const { planFromText } = await import("./plan-text.ts");
  const read = planFromText(generation.text, generation.title);
  return read.ok && read.value.id === generation.planId ? read.value : null;
}
