/** The record as it stands: corrections in the place of what they correct, struck entries gone. */
import type { Entry } from "../model/plan.ts";

/** One entry with all that was written in its place. */
export interface EntryChain {
  /** What holds; it may be the striking out of the others. */
  readonly held: Entry;
  /** The first of them, where it is there. */
  readonly first: Entry | null;
}

/**
 * Entries with their corrections, in no order. What a correction names never holds beside it,
 * whatever the clocks said; of corrections that were made apart the one written last holds (by id
 * where that is not known). A correction of an entry that is not there stands for itself.
 */
export function entryChains(entries: readonly Entry[]): readonly EntryChain[] {
  const byId = new Map(entries.map((entry) => [entry.id, entry]));
  const byRoot = new Map<string, Entry[]>();
  for (const entry of entries) {
    const root = rootOf(entry, byId);
    const chain = byRoot.get(root);
    if (chain) chain.push(entry);
    else byRoot.set(root, [entry]);
  }
  return [...byRoot].map(([root, chain]) => ({
    held: heldOf(chain),
    first: byId.get(root) ?? null,
  }));
}

/** Of those that no other corrects the one written last; in a circle all are corrected. */
function heldOf(chain: readonly Entry[]): Entry {
  const corrected = new Set(chain.map(({ corrects }) => corrects));
  const last = chain.filter(({ id }) => !corrected.has(id));
  return (last.length > 0 ? last : chain).reduce((a, b) => (isLater(b, a) ? b : a));
}

/** Entries that hold, by day and then id: corrections in place of what they correct, none struck out. */
export function currentEntries(entries: readonly Entry[]): readonly Entry[] {
  return entryChains(entries)
    .map(({ held }) => held)
    .filter((entry) => entry.isStruck !== true)
    .sort(byDay);
}

/** Entries of one planting or surrounding on a day or before. */
export function entriesUntil(
  current: readonly Entry[],
  subject: string,
  on: number,
): readonly Entry[] {
  return current.filter((entry) => entry.of === subject && entry.on <= on);
}

/** Id of the entry at the beginning of a chain of corrections; a circle ends where it began. */
function rootOf(entry: Entry, byId: ReadonlyMap<string, Entry>): string {
  let current = entry;
  const seen = new Set([entry.id]);
  while (current.corrects !== undefined) {
    const before = byId.get(current.corrects);
    if (before === undefined) return current.corrects;
    if (seen.has(before.id)) return [...seen].sort()[0] ?? entry.id;
    seen.add(before.id);
    current = before;
  }
  return current.id;
}

function isLater(a: Entry, b: Entry): boolean {
  const [first, second] = [a.written ?? "", b.written ?? ""];
  return first === second ? a.id > b.id : first > second;
}

/** By day, then id: the order does not hang on the device. */
export function byDay(a: Entry, b: Entry): number {
  return a.on - b.on || (a.id < b.id ? -1 : Number(a.id > b.id));
}
