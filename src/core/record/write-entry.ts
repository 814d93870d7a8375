/**
 * Writing the field record. An entry is added and never rewritten: what was wrong is put right by a
 * further entry. Ids, the time of writing and the name of the writer come from the device.
 */
import type { Edit } from "../edits/edit.ts";
import { LIMITS } from "../model/limits.ts";
import type { Entry, Plan } from "../model/plan.ts";
import { entryTitle } from "./entry-words.ts";
import { listOf } from "../words/plurals.ts";
import * as steps from "../words/shelf-step-words.ts";

/** What the device adds to what is written: an id unlike any other, the time, who writes. */
export type Signature = Pick<Entry, "id" | "written" | "who">;

/** What is written down; the device adds the rest. */
export type EntryFields = Omit<Entry, keyof Signature | "corrects" | "isStruck">;

/** @param plot code or name of what it is of, for the title */
export function addEntry(fields: EntryFields, signature: Signature, plot: string): Edit {
  const entry: Entry = { ...fields, ...signature };
  return writing([entry], entryTitle(entry, plot));
}

/** Several written down as one step. */
export function addEntries(
  entries: readonly { readonly entry: Entry; readonly plot: string }[],
): Edit {
  return writing(
    entries.map(({ entry }) => entry),
    listOf(entries.map(({ entry, plot }) => entryTitle(entry, plot))),
  );
}

/** Puts one in the place of another, which stays in the record. */
export function correctEntry(
  wrong: Pick<Entry, "id">,
  fields: EntryFields,
  signature: Signature,
  plot: string,
): Edit {
  const entry: Entry = { ...fields, ...signature, corrects: wrong.id };
  return writing([entry], steps.correctEntry(entryTitle(entry, plot)));
}

/** Says that an entry was a mistake; it stays in the record and counts no more. */
export function strikeEntry(wrong: Entry, signature: Signature, plot: string): Edit {
  const { of, on, what } = wrong;
  const entry: Entry = { of, on, what, ...signature, corrects: wrong.id, isStruck: true };
  return writing([entry], steps.strikeEntry(entryTitle(wrong, plot)));
}

function writing(added: readonly Entry[], title: string): Edit {
  const isRefused = ({ entries }: Plan) => entries.length + added.length > LIMITS.entries;
  return {
    title,
    apply: (plan) => {
      const isThere = plan.entries.some(({ id }) => added.some((entry) => entry.id === id));
      if (isThere || isRefused(plan)) return plan;
      return { ...plan, entries: [...plan.entries, ...added] };
    },
    note: (plan) => (isRefused(plan) ? steps.recordFull(LIMITS.entries) : null),
  };
}
