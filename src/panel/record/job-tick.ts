/** Ticking jobs off: a tick is an entry of that day, taking it away strikes the entry out. */
import { jobsDone, tickFields } from "../../core/fieldwork/job-ticks.ts";
import type { Job } from "../../core/fieldwork/season-calendar.ts";
import { type DayNumber, shortDate } from "../../core/model/day.ts";
import { objectNames } from "../../core/model/object-names.ts";
import type { Entry } from "../../core/model/plan.ts";
import { checkedNow } from "../state/plan-actions.ts";
import { strikeOut, writeDown } from "./write-down.ts";
import { doneBy, doneOn, expectedHints } from "./record-words.ts";

/** @param on the day it was done */
export function tickJob(job: Job, on: DayNumber): void {
  const { plan, layout, result } = checkedNow();
  const cover = result.standById.get(job.planting)?.cover;
  const fields = tickFields(job, on, cover === "none" ? undefined : cover);
  writeDown(fields, objectNames(plan, layout, [job.planting]));
}

export function untickJob(job: Job): void {
  const { plan, layout } = checkedNow();
  const entry = jobsDone([job], plan.entries).get(job);
  if (entry) strikeOut(entry, objectNames(plan, layout, [job.planting]));
}

/** `done 20 Jun, Mara`. */
export function doneWords(entry: Entry): string {
  const day = shortDate(entry.on);
  return entry.who === undefined ? doneOn(day) : doneBy(day, entry.who);
}

export function tickHint({ job }: Job): string | null {
  return expectedHints[job] ?? null;
}
