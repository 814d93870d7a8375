/** Plans to text and back, as they lie in files and in the browser's storage. */
import { cropBook } from "../../core/kinds/crop-book.ts";
import type { Plan } from "../../core/model/plan.ts";
import { type Read, problemText } from "../../core/model/problem.ts";
import { readPlan, writePlan } from "../../core/model/read-plan.ts";
import * as words from "./words.ts";

/** Reads a plan that may use the built-in kinds and those it brings along. */
export function planFromText(text: string, name: string): Read<Plan> {
  const book = cropBook();
  return readPlan(text, name, (kind) => book.kind(kind) !== undefined);
}

export type ValidText =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly fault: string };

/** The plan's file text, if it opens again. */
export function validText(plan: Plan): ValidText {
  let text: string;
  try {
    text = writePlan(plan);
  } catch {
    return { ok: false, fault: words.notStorable };
  }
  const read = planFromText(text, plan.title);
  if (read.ok) return { ok: true, text };
  const first = read.problems[0];
  return { ok: false, fault: first ? problemText(first) : words.wouldNotOpen };
}

/** The file text of a noted plan, noted as such a text or as it was in memory; null: it is none. */
export function notedText(note: {
  readonly plan?: unknown;
  readonly text?: unknown;
}): string | null {
  if (typeof note.text === "string") {
    const read = planFromText(note.text, "");
    return read.ok ? writePlan(read.value) : null;
  }
  const written = validText(note.plan as Plan);
  return written.ok ? written.text : null;
}

/** Out of the way of the next note, and still there: another build may read it. */
export function setNoteAside(key: string): void {
  try {
    const note = localStorage.getItem(key);
    if (note !== null) localStorage.setItem(`${key}.unread`, note);
  } catch {
    // Refused or full: it is told all the same.
  }
}
