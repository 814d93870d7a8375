/** Jobs of one plot, as somebody who stands before it needs them. */
import type { Job } from "../../core/fieldwork/season-calendar.ts";
import type { DayNumber } from "../../core/model/day.ts";
import type { Entry } from "../../core/model/plan.ts";

export interface StopJobs {
  /** Overdue by some weeks at most, or due within a week; in order of days. */
  readonly due: readonly Job[];
  /** How many are overdue by more: done long ago, or missed. */
  readonly older: number;
  /** Ticked within the last week. */
  readonly done: readonly { readonly job: Job; readonly entry: Entry }[];
  /** The first job after that; null: none is left. */
  readonly next: Job | null;
}

const WEEK_DAYS = 7;
/** What was due longer ago than this is history: it must not bury what is due now. */
const OVERDUE_DAYS = 28;
/** Whoever writes that it flowers has no need to be told to sow it. */
const BEGINNINGS: ReadonlySet<Job["job"]> = new Set(["sow", "sow under glass", "set out"]);
const GROWN: ReadonlySet<Entry["what"]> = new Set(["emerged", "first flower", "last flower"]);

/** Jobs with the entries they are held against, of one moment. */
export interface JobsNow {
  readonly jobs: readonly Job[];
  readonly done: ReadonlyMap<Job, Entry>;
  /** Entries that hold. */
  readonly current: readonly Entry[];
  readonly on: DayNumber;
}

/** @param id of the plot; a job that two share is a job of both */
export function stopJobs({ jobs, done: ticks, current, on }: JobsNow, id: string): StopJobs {
  const here = jobs.filter(({ planting, beside }) => planting === id || beside === id);
  const isGrown = current.some(({ of, what }) => of === id && GROWN.has(what));
  const open = here.filter(
    (job) => !ticks.has(job) && !(isGrown && BEGINNINGS.has(job.job) && job.day <= on),
  );
  const due = open.filter(({ day }) => day <= on + WEEK_DAYS && day >= on - OVERDUE_DAYS);
  const done = here.flatMap((job) => {
    const entry = ticks.get(job);
    return entry && entry.on <= on && entry.on > on - WEEK_DAYS ? [{ job, entry }] : [];
  });
  return {
    due,
    older: open.filter(({ day }) => day < on - OVERDUE_DAYS).length,
    done,
    next: open.find(({ day }) => day > on + WEEK_DAYS) ?? null,
  };
}
