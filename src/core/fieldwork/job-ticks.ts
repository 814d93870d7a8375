/** Jobs and the field record: which entry says that a job is done, and what a tick writes down. */
import { type DayNumber, isoFromDay } from "../model/day.ts";
import type { Entry } from "../model/plan.ts";
import { currentEntries } from "../record/current-entries.ts";
import type { EntryFields } from "../record/write-entry.ts";
import type { Job, JobName } from "./season-calendar.ts";
import { doneWords, jobLabels } from "./job-name-words.ts";

/** Jobs that the record knows by their own name; the others are written down as `done`. */
const OWN_ENTRY: Readonly<Partial<Record<JobName, Entry["what"]>>> = {
  sow: "sown",
  "sow under glass": "sown",
  "set out": "set out",
  rogue: "rogued",
  "cover on": "covered",
  "tape buds": "covered",
  "cover off": "uncovered",
  "cut before bloom": "cut before bloom",
  "hand pollinate": "hand pollinated",
  "first flower": "first flower",
  "last flower": "last flower",
  "seed ripe": "harvested",
  clear: "cleared",
};

/** Roguing longer before its day, in days, is an earlier round: the last look before bloom is still to come. */
const ROUND_DAYS = 14;

/** Tells a job from the others of its plot. */
export function jobKey({ job, beside, batch }: Pick<Job, "job" | "beside" | "batch">): string {
  const harvested = batch === undefined ? [] : [isoFromDay(batch)];
  return [job, ...(beside === undefined ? [] : [beside]), ...harvested].join(" ");
}

/** What ticking a job off writes down. @param on the day it was done */
export function tickFields(job: Job, on: DayNumber, cover?: Entry["cover"]): EntryFields {
  const what = OWN_ENTRY[job.job] ?? "done";
  const of = job.planting;
  if (what === "covered") {
    // Flowers taped are a cover like a cage: read as grown it counts from the day it is written.
    const put = job.job === "tape buds" ? "hand" : cover;
    return { of, on, what, ...(put === undefined ? {} : { cover: put }) };
  }
  if (what !== "done") return { of, on, what };
  return { of, on, what, job: jobKey(job), note: doneWords.get(job.job) ?? jobLabels[job.job] };
}

/** The entry that says a job is done, by job; jobs that nobody ticked are left out. */
export function jobsDone(jobs: readonly Job[], entries: readonly Entry[]): ReadonlyMap<Job, Entry> {
  const byPlot = new Map<string, Entry[]>();
  for (const entry of currentEntries(entries)) {
    byPlot.set(entry.of, [...(byPlot.get(entry.of) ?? []), entry]);
  }
  const done = new Map<Job, Entry>();
  for (const job of jobs) {
    const entry = byPlot.get(job.planting)?.find((each) => isTickOf(job, each));
    if (entry) done.set(job, entry);
  }
  return done;
}

function isTickOf(job: Job, entry: Entry): boolean {
  const what = OWN_ENTRY[job.job] ?? "done";
  if (entry.what !== what) return false;
  if (what === "done") return entry.job === jobKey(job);
  if (what === "covered") return (entry.cover === "hand") === (job.job === "tape buds");
  return job.job !== "rogue" || entry.on >= job.day - ROUND_DAYS;
}
