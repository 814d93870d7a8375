/** An entry while it is typed. */
import type { DayNumber } from "../../core/model/day.ts";
import type { Entry } from "../../core/model/plan.ts";
import type { EntryFields } from "../../core/record/write-entry.ts";
import { recordWords as words } from "./record-words.ts";

export interface EntryDraft {
  readonly what: Entry["what"];
  readonly on: DayNumber | undefined;
  readonly count: number | undefined;
  readonly fruits: number | undefined;
  readonly grams: number | undefined;
  readonly cover: NonNullable<Entry["cover"]>;
  readonly note: string;
  readonly job: string | undefined;
}

export function emptyDraft(what: Entry["what"], on: DayNumber): EntryDraft {
  return {
    what,
    on,
    count: undefined,
    fruits: undefined,
    grams: undefined,
    cover: "cage",
    note: "",
    job: undefined,
  };
}

export function draftOf(entry: Entry): EntryDraft {
  const { what, on, count, fruits, grams, cover = "cage", note = "", job } = entry;
  return { what, on, count, fruits, grams, cover, note, job };
}

/** Why it cannot be written down, or null. */
export function draftProblem({ what, on, note, grams }: EntryDraft): string | null {
  if (on === undefined) return words.dayNeeded;
  if (what === "note" && note.trim() === "") return words.noteNeeded;
  if (what === "neighbour asked" && note.trim() === "") return words.answerNeeded;
  if (what === "cleaned" && grams === undefined) return words.gramsNeeded;
  return null;
}

/** What is written, or null while no day is given. */
export function fieldsOf(draft: EntryDraft, of: string): EntryFields | null {
  const { on, note, count, fruits, grams, job, ...rest } = draft;
  if (on === undefined) return null;
  return {
    ...rest,
    on,
    of,
    ...(count === undefined ? {} : { count }),
    ...(fruits === undefined ? {} : { fruits }),
    ...(grams === undefined ? {} : { grams }),
    ...(job === undefined ? {} : { job }),
    ...(note.trim() === "" ? {} : { note: note.trim() }),
  };
}
