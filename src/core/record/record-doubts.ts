/** What cannot be right in the record. Doubtful entries are told and kept: nothing seen is lost. */
import { type DayNumber, dayFromIso } from "../model/day.ts";
import type { Entry, Plan } from "../model/plan.ts";
import { currentEntries, entriesUntil } from "./current-entries.ts";
import { plantsStanding, plotRecord } from "./plot-record.ts";

export type Doubt =
  | "of the future"
  | "of an unknown plot"
  | "before it was sown"
  | "last flower before the first"
  | "nothing was covered"
  | "more than stood"
  | "corrected twice apart"
  | "written before its day"
  | "written before what it corrects";

export interface DoubtfulEntry {
  readonly entry: Entry;
  readonly doubt: Doubt;
}

/**
 * Doubts about the entries that hold, in their order.
 * @param today entries after it are of the future
 */
export function recordDoubts(plan: Plan, today: DayNumber): readonly DoubtfulEntry[] {
  const known = new Map<string, number | undefined>([
    ...plan.layouts.flatMap(({ plantings }) =>
      plantings.map(({ id, plants }) => [id, plants] as const),
    ),
    ...plan.surroundings.map(({ id }) => [id, undefined] as const),
  ]);
  const current = currentEntries(plan.entries);
  const subjects = new Set(current.map(({ of }) => of));
  const doubts: DoubtfulEntry[] = [...correctedApart(plan.entries), ...clockDoubts(plan.entries)];
  for (const entry of current) {
    if (entry.on > today) doubts.push({ entry, doubt: "of the future" });
    if (!known.has(entry.of)) doubts.push({ entry, doubt: "of an unknown plot" });
  }
  for (const subject of subjects) {
    doubts.push(...plotDoubts(entriesUntil(current, subject, Infinity), known.get(subject)));
  }
  const place = new Map(current.map((entry, index) => [entry, index]));
  return doubts.sort((a, b) => (place.get(a.entry) ?? -1) - (place.get(b.entry) ?? -1));
}

/** What may be written down of ground where nothing grows yet. */
const AT_ANY_TIME: ReadonlySet<Entry["what"]> = new Set([
  "note",
  "looked at",
  "neighbour asked",
  "done",
]);

/** Entries of one plot against each other. */
function plotDoubts(
  entries: readonly Entry[],
  planned: number | undefined,
): readonly DoubtfulEntry[] {
  const record = plotRecord(entries);
  const begun = record.sownOn ?? record.setOutOn;
  const doubts: DoubtfulEntry[] = [];
  let isCovered = false;
  entries.forEach((entry, index) => {
    const add = (doubt: Doubt) => doubts.push({ entry, doubt });
    const { what, on } = entry;
    const isGrowth = !AT_ANY_TIME.has(what);
    if (begun !== null && on < begun && isGrowth) add("before it was sown");
    if (what === "last flower" && record.firstFlower !== null && on < record.firstFlower) {
      add("last flower before the first");
    }
    if (what === "uncovered" && !isCovered) add("nothing was covered");
    if (what === "covered") isCovered = true;
    if (what === "uncovered") isCovered = false;
    if ((what === "harvested" || what === "rogued" || what === "lost") && entry.count) {
      const before = plotRecord(entries.slice(0, index));
      const standing = plantsStanding(before, record.setOutPlants ?? planned);
      if (standing !== null && entry.count > standing) add("more than stood");
    }
  });
  return doubts;
}

/** Entries whose writing was dated by a clock that ran wrong or jumped back. */
function clockDoubts(entries: readonly Entry[]): readonly DoubtfulEntry[] {
  const byId = new Map(entries.map((entry) => [entry.id, entry]));
  return entries.flatMap((entry): DoubtfulEntry[] => {
    const { written, corrects, on } = entry;
    if (written === undefined) return [];
    const before = corrects === undefined ? undefined : byId.get(corrects)?.written;
    const day = dayFromIso(written.slice(0, ISO_DAY));
    return [
      // East of Greenwich it is the next day already.
      ...(day !== null && day + 1 < on
        ? [{ entry, doubt: "written before its day" as const }]
        : []),
      ...(before !== undefined && written < before
        ? [{ entry, doubt: "written before what it corrects" as const }]
        : []),
    ];
  });
}

/** Letters of `2027-06-01` in a date and time. */
const ISO_DAY = 10;

/** Entries that two corrections, neither of the other, mean to replace. */
function correctedApart(entries: readonly Entry[]): readonly DoubtfulEntry[] {
  const byTarget = new Map<string, Entry[]>();
  for (const entry of entries) {
    if (entry.corrects === undefined) continue;
    byTarget.set(entry.corrects, [...(byTarget.get(entry.corrects) ?? []), entry]);
  }
  return [...byTarget.values()]
    .filter((corrections) => corrections.length > 1)
    .flatMap((corrections) =>
      corrections.map((entry) => ({ entry, doubt: "corrected twice apart" as const })),
    );
}
