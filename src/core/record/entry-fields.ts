/** What is asked for beside the day, for each kind of entry. */
import type { Entry } from "../model/plan.ts";

export interface EntryAsks {
  /** What its count is of. */
  readonly count?: "plants" | "flowers";
  readonly fruits?: true;
  readonly grams?: true;
  readonly cover?: true;
  /** What the note says; left out: anything. */
  readonly note?: "why" | "answer";
  /** Nothing needs to be asked: a press writes it down. */
  readonly isPress?: true;
}

export const entryAsks: Readonly<Record<Entry["what"], EntryAsks>> = {
  sown: { isPress: true },
  emerged: { isPress: true, count: "plants" },
  "set out": { count: "plants" },
  "first flower": { isPress: true },
  "last flower": { isPress: true },
  covered: { cover: true },
  uncovered: { isPress: true },
  "pollinators let in": { isPress: true },
  "hand pollinated": { count: "flowers" },
  rogued: { count: "plants", note: "why" },
  lost: { count: "plants", note: "why" },
  "cut before bloom": { isPress: true },
  "neighbour asked": { note: "answer" },
  harvested: { count: "plants", fruits: true },
  cleared: { isPress: true },
  cleaned: { grams: true },
  "looked at": { isPress: true },
  done: {},
  note: {},
};

/** The values that a kind of entry has no use for are left out. */
export function fittingFields<T extends Partial<Entry> & Pick<Entry, "what">>(fields: T): T {
  const asks = entryAsks[fields.what];
  const { count, fruits, grams, cover, job, note, ...rest } = fields;
  const isText = note !== undefined && note !== "";
  return {
    ...rest,
    ...(asks.count && count !== undefined ? { count } : {}),
    ...(asks.fruits && fruits !== undefined ? { fruits } : {}),
    ...(asks.grams && grams !== undefined ? { grams } : {}),
    ...(asks.cover ? { cover: cover ?? "cage" } : {}),
    ...(fields.what === "done" && job !== undefined ? { job } : {}),
    ...(isText ? { note } : {}),
  } as T;
}
