/** The record of one plot or neighbour as it is read: what holds, what was corrected, what was struck out. */
import type { Entry } from "../model/plan.ts";
import { type EntryChain, byDay, entryChains } from "./current-entries.ts";

/** An entry that holds or was struck out. */
export interface RecordLine {
  /** What it says now; of one struck out, what it said. */
  readonly entry: Entry;
  /** What it said at first, where it has been corrected since. */
  readonly before: Entry | null;
  /** The entry that strikes it out, or null. */
  readonly struck: Entry | null;
}

/** Lines of one planting or surrounding, the latest day first. */
export function recordLines(entries: readonly Entry[], subject: string): readonly RecordLine[] {
  const byId = new Map(entries.map((entry) => [entry.id, entry]));
  const lines = entryChains(entries).flatMap((chain) => lineOf(chain, byId) ?? []);
  return lines.filter(({ entry }) => entry.of === subject).sort((a, b) => byDay(b.entry, a.entry));
}

function lineOf({ held, first }: EntryChain, byId: ReadonlyMap<string, Entry>): RecordLine | null {
  if (held.isStruck === true) {
    // What is struck out and not there itself is nothing to read.
    const said = byId.get(held.corrects ?? "") ?? first;
    return said && said.id !== held.id ? { entry: said, before: null, struck: held } : null;
  }
  return { entry: held, before: first && first.id !== held.id ? first : null, struck: null };
}
