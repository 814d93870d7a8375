/** The season's jobs as the calendar lists them. */
import { weekday } from "../../core/calendar/week.ts";
import {
  type Job,
  type JobName,
  type JobWeek,
  jobNames,
} from "../../core/fieldwork/season-calendar.ts";
import { type DayNumber, longDate, shortDate } from "../../core/model/day.ts";
import { weekText, weekdays } from "./words.ts";

/** `Thu 20 May`. */
export function jobDay(day: DayNumber): string {
  return `${weekdays[weekday(day) - 1] ?? ""} ${shortDate(day)}`;
}

/** `Week 20: 17 to 23 May 2027`. */
export function weekWords({ monday, label }: Pick<JobWeek, "monday" | "label">): string {
  const week = Number(label.slice(label.indexOf("W") + 1));
  return weekText(week, shortDate(monday), longDate(monday + 6));
}

/** The sorts of job there are, in their order, with how many of each. */
export function jobCounts(
  jobs: readonly Job[],
): readonly { readonly name: JobName; readonly count: number }[] {
  return jobNames
    .map((name) => ({ name, count: jobs.filter((job) => job.job === name).length }))
    .filter(({ count }) => count > 0);
}
