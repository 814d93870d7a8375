/**
 * What was not yet saved when the page went. A page that closes is not waited for: a save begun
 * then may or may not be finished. So the plan is also noted at once, in the small storage that
 * writes without waiting, and looked for at the next opening. The note names the stored revisions
 * the plan was made upon; it is thrown away as soon as the plan is saved.
 */
import type { Plan } from "../../core/model/plan.ts";
import { planFromText, validText } from "./plan-text.ts";

interface Note {
  /** Newest stored revision the tab knew. */
  readonly revision: number;
  /** The same, or one more if an earlier version of the plan was just being saved. */
  readonly upTo: number;
  readonly text: string;
}

/** What the note of a plan means beside the newest stored copy. */
export type LastMoment =
  | { readonly kind: "nothing" }
  /** The plan as it was left, one step beyond the stored copy. */
  | { readonly kind: "newer"; readonly plan: Plan }
  /** Something else has been stored since: a version of its own. */
  | { readonly kind: "apart"; readonly plan: Plan };

/** Plans whose note this tab has made or looked at: other tabs' notes are not its to throw away. */
const handled = new Set<string>();

export function noteLastMoment(plan: Plan, revision: number, isSaving: boolean): void {
  const written = validText(plan);
  if (!written.ok) return;
  const note: Note = { revision, upTo: revision + (isSaving ? 1 : 0), text: written.text };
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
export function lastMomentOf(stored: Plan, revision: number): LastMoment {
  const note = readNote(stored.id);
  handled.add(stored.id);
  const read = note && planFromText(note.text, stored.title);
  if (!note || !read?.ok || read.value.id !== stored.id) return { kind: "nothing" };
  const written = validText(stored);
  if (written.ok && written.text === note.text) return { kind: "nothing" };
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
    "text" in value &&
    typeof value.text === "string"
  );
}

function keyOf(planId: string): string {
  return `wideberth.unsaved.${planId}`;
}
