/**
 * Brings records together that were kept apart. Entries are a union by id, so bringing together is
 * the same in any order and any number of times, and no entry is ever lost.
 */
import type { Entry } from "../model/plan.ts";
import { byDay } from "./current-entries.ts";

export interface MergedEntries {
  /** Every entry of either, by day and then id. */
  readonly entries: readonly Entry[];
  /** Entries that had an id in common but say different things: kept under an id of their own. */
  readonly clashes: readonly Entry[];
}

const ID_MAX = 64;

/** @param records any number of records; the order makes no difference */
export function mergeEntries(...records: readonly (readonly Entry[])[]): MergedEntries {
  const versions = new Map<string, Map<string, Entry>>();
  for (const entry of records.flat()) {
    const texts = versions.get(entry.id) ?? new Map<string, Entry>();
    texts.set(textOf(entry), entry);
    versions.set(entry.id, texts);
  }
  const clashes: Entry[] = [];
  const entries = new Map<string, Entry>();
  const keep = (entry: Entry) => {
    entries.set(entry.id, entry);
  };
  for (const texts of versions.values()) {
    // The smallest text keeps the id, whichever side it came from.
    const [first, ...others] = [...texts.entries()].sort(([a], [b]) => (a < b ? -1 : 1));
    if (first) keep(first[1]);
    for (const [text, entry] of others) {
      const apart = { ...entry, id: idApart(entry.id, text) };
      clashes.push(apart);
      keep(apart);
    }
  }
  return { entries: [...entries.values()].sort(byDay), clashes: clashes.sort(byDay) };
}

/** The entry but for its id, the same whatever the order of its fields. */
function textOf(entry: Entry): string {
  const fields = Object.entries(entry).filter(
    ([name, value]) => name !== "id" && value !== undefined,
  );
  return JSON.stringify(fields.sort(([a], [b]) => (a < b ? -1 : 1)));
}

/** An id made from what the entry says: the same on every device. */
function idApart(id: string, text: string): string {
  return `${id.slice(0, ID_MAX - 18)}.${hash(text, 0x811c9dc5)}${hash(text, 0x01000193)}`;
}

/** FNV-1a of 32 bits, from a given start; eight hexadecimal digits. */
function hash(text: string, start: number): string {
  let value = start;
  for (let index = 0; index < text.length; index += 1) {
    value = Math.imul(value ^ text.charCodeAt(index), 0x01000193);
  }
  return (value >>> 0).toString(16).padStart(8, "0");
}
