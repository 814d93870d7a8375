/** What the record says of one planting or surrounding on a day. */
import type { DayWindow } from "../calendar/bloom-window.ts";
import type { DayNumber } from "../model/day.ts";
import type { Cover, Entry } from "../model/plan.ts";

/** Days a cover stood; `last` null: it stands still. */
export interface CoverStay {
  readonly cover: Exclude<Cover, "none">;
  readonly first: DayNumber;
  readonly last: DayNumber | null;
}

export interface PlotRecord {
  readonly entries: readonly Entry[];
  readonly sownOn: DayNumber | null;
  readonly setOutOn: DayNumber | null;
  /** Plants set out, when they were counted. */
  readonly setOutPlants: number | null;
  readonly firstFlower: DayNumber | null;
  readonly lastFlower: DayNumber | null;
  /** The last day somebody wrote that it was looked at; other entries say nothing of its bloom. */
  readonly lookedAt: DayNumber | null;
  /** The day it was cut before bloom. */
  readonly cutOn: DayNumber | null;
  /** The day its ground was cleared. */
  readonly clearedOn: DayNumber | null;
  readonly covers: readonly CoverStay[];
  readonly pollinatorsIn: DayNumber | null;
  readonly rogued: number;
  readonly lost: number;
  /** Plants and fruits harvested so far, and clean seed; null while none was counted. */
  readonly harvestedPlants: number | null;
  readonly fruits: number | null;
  readonly cleanedGrams: number | null;
}

/** @param entries entries that hold, of one subject, in order of days */
export function plotRecord(entries: readonly Entry[]): PlotRecord {
  const days = (what: Entry["what"]) =>
    entries.filter((entry) => entry.what === what).map(({ on }) => on);
  const total = (what: Entry["what"], field: "count" | "fruits" | "grams") => {
    const values = entries.flatMap((entry) =>
      entry.what === what && entry[field] !== undefined ? [entry[field]] : [],
    );
    return values.length === 0 ? null : values.reduce((sum, value) => sum + value, 0);
  };
  const first = (list: readonly number[]) => list[0] ?? null;
  const last = (list: readonly number[]) => list.at(-1) ?? null;
  return {
    entries,
    sownOn: first(days("sown")),
    setOutOn: first(days("set out")),
    setOutPlants: total("set out", "count"),
    firstFlower: first(days("first flower")),
    lastFlower: lastFlowerOf(days("first flower"), days("last flower")),
    lookedAt: last(days("looked at")),
    cutOn: first(days("cut before bloom")),
    clearedOn: last(days("cleared")),
    covers: coverStays(entries),
    pollinatorsIn: first(days("pollinators let in")),
    rogued: total("rogued", "count") ?? 0,
    lost: total("lost", "count") ?? 0,
    harvestedPlants: total("harvested", "count"),
    fruits: total("harvested", "fruits"),
    cleanedGrams: total("cleaned", "grams"),
  };
}

/** Null while it flowers: also where a first flower was seen after the last one, as on cut stems. */
function lastFlowerOf(firsts: readonly DayNumber[], lasts: readonly DayNumber[]): DayNumber | null {
  const last = lasts.at(-1);
  return last === undefined || (firsts.at(-1) ?? last) > last ? null : last;
}

/** Each stay from the day it was put up to the day before it came off; a second cover ends the first. */
function coverStays(entries: readonly Entry[]): readonly CoverStay[] {
  const stays: CoverStay[] = [];
  let open: CoverStay | null = null;
  const close = (on: DayNumber) => {
    // On the day it came off it no longer kept anything out.
    if (open && on - 1 >= open.first) stays.push({ ...open, last: on - 1 });
    open = null;
  };
  for (const { what, on, cover } of entries) {
    if (what === "covered") {
      close(on);
      open = { cover: cover ?? "cage", first: on, last: null };
    }
    if (what === "uncovered") close(on);
  }
  return open ? [...stays, open] : stays;
}

/** The cover that stood on every day of a window, else none. */
export function coverThrough(stays: readonly CoverStay[], window: DayWindow | null): Cover {
  const whole = stays.find(
    ({ first, last }) =>
      window !== null && first <= window.first && (last === null || last >= window.last),
  );
  return whole?.cover ?? "none";
}

/** Plants standing: set out as counted, else as planned, less rogued and lost. */
export function plantsStanding(record: PlotRecord, planned: number | undefined): number | null {
  const begun = record.setOutPlants ?? planned;
  return begun === undefined ? null : Math.max(0, begun - record.rogued - record.lost);
}
