/**
 * What was not yet saved when the page went. A page that closes is not waited for: a save begun
 * then may or may not be finished. So the plan is also noted at once, in the small storage that
 * writes without waiting, and looked for at the next opening. The note names the stored revisions
 * the plan was made upon; it is thrown away as soon as the plan is saved.
 *
 * The plan is noted as it is in memory: at such a moment the reader of plans may not have been
 * fetched yet, and is not waited for. It looks the note over when that is found again.
 */
import type { Plan } from "../../core/model/plan.ts";

interface Note {
  /** Newest stored revision the tab knew. */
  readonly revision: number;
  /** The same, or one more if an earlier version of the plan was just being saved. */
  readonly upTo: number;
  /** Said to be a plan by the note: nothing is believed before it has been read. */
  readonly plan?: unknown;
  /** What builds before this one noted: the text of a plan file. */
  readonly text?: unknown;
}

/** What the note of a plan means beside the newest stored copy. */
export type LastMoment =
  | { readonly kind: "nothing" }
  /** The plan as it was left, one step beyond the stored copy. */
  | { readonly kind: "newer"; readonly plan: Plan }
  /** Something else has been stored since: a version of its own. */
  | { readonly kind: "apart"; readonly plan: Plan }
  /** There is one, and this build cannot read it. */
  | { readonly kind: "unread" };

/** Plans whose note this tab has made or looked at: other tabs' notes are not its to throw away. */
const handled = new Set<string>();

export function noteLastMoment(plan: Plan, revision: number, isSaving: boolean): void {
  const note: Note = { revision, upTo: revision + (isSaving ? 1 : 0), plan };
  try {
    localStorage.setItem(keyOf(plan.id), JSON.stringify(note));
    handled.add(plan.id);
  } catch {
    // Refused or full: the save under way is all there is.
  }
}

export function forgetLastMoment(planId: string): void {
  if (!handled.delete(planId)) return;
  try {
    localStorage.removeItem(keyOf(planId));
  } catch {
    // Refused: then nothing was noted either.
  }
}

/** Compares a plan's note, if there is one, with the newest stored copy. */
export async function lastMomentOf(stored: Plan, revision: number): Promise<LastMoment> {
  const note = readNote(stored.id);
  handled.add(stored.id);
  if (!note) return { kind: "nothing" };
  const { notedText, planFromText, setNoteAside, validText } = await import("./plan-text.ts");
  const left = notedText(note);
  const read = left === null ? null : planFromText(left, stored.title);
  if (!read?.ok || read.value.id !== stored.id) {
    setNoteAside(keyOf(stored.id));
    return { kind: "unread" };
  }
  const written = validText(stored);
  if (written.ok && written.text === left) return { kind: "nothing" };
  const isOnStored = note.revision <= revision && revision <= note.upTo;
  return { kind: isOnStored ? "newer" : "apart", plan: read.value };
}

function readNote(planId: string): Note | null {
  try {
    const value: unknown = JSON.parse(localStorage.getItem(keyOf(planId)) ?? "null");
    return isNote(value) ? value : null;
  } catch {
    return null;
  }
}

function isNote(value: unknown): value is Note {
  return (
    typeof value === "object" &&
    value !== null &&
    "revision" in value &&
    typeof value.revision === "number" &&
    "upTo" in value &&
    typeof value.upTo === "number" &&
    ("plan" in value || "text" in value)
  );
}

function keyOf(planId: string): string {
  return `wideberth.unsaved.${planId}`;
}
