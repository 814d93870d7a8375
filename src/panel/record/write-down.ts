/** What this device adds to an entry, and keeping it: id, time and name are made here, not in the core. */
import { fittingFields } from "../../core/record/entry-fields.ts";
import {
  type EntryFields,
  type Signature,
  addEntries,
  addEntry,
  correctEntry,
  strikeEntry,
} from "../../core/record/write-entry.ts";
import type { Entry } from "../../core/model/plan.ts";
import { useFieldPerson } from "../../store/window/field-person.ts";
import { commit } from "../state/plan-actions.ts";

/** A new one for each entry. */
export function signature(): Signature {
  const { who } = useFieldPerson.getState();
  return {
    id: randomId(),
    written: new Date().toISOString(),
    ...(who === "" ? {} : { who }),
  };
}

/** 128 random bits. The browser's own UUIDs are not there over plain http; random bytes are. */
function randomId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return [...bytes].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}

/** @param plot code or name of what it is of */
export function writeDown(fields: EntryFields, plot: string): void {
  commit(addEntry(fittingFields(fields), signature(), plot));
}

/** Several at once, one step to undo. */
export function writeDownAll(
  entries: readonly { readonly fields: EntryFields; readonly plot: string }[],
): void {
  commit(
    addEntries(
      entries.map(({ fields, plot }) => ({
        entry: { ...fittingFields(fields), ...signature() },
        plot,
      })),
    ),
  );
}

export function writeCorrection(wrong: Entry, fields: EntryFields, plot: string): void {
  commit(correctEntry(wrong, fittingFields(fields), signature(), plot));
}

export function strikeOut(wrong: Entry, plot: string): void {
  commit(strikeEntry(wrong, signature(), plot));
}
