/** Jobs after a harvest was written down, reckoned by the calendar. */
import { expect, test } from "vitest";
import { checkLayout } from "../../../src/core/checks/checked-layout.ts";
import { jobKey } from "../../../src/core/fieldwork/job-ticks.ts";
import { icalendar } from "../../../src/core/files/icalendar.ts";
import { seasonJobs } from "../../../src/core/fieldwork/season-calendar.ts";
import { isoFromDay } from "../../../src/core/model/day.ts";
import type { Entry } from "../../../src/core/model/plan.ts";
import { day, trialPlan } from "../../support/trial-plan.ts";

const AFTER = [
  "ferment",
  "stir ferment",
  "rinse seed",
  "clean seed",
  "dry seed",
  "store seed",
  "test seed",
];

const entry = (id: string, on: string, what: Entry["what"], more: Partial<Entry> = {}): Entry => ({
  id,
  of: "p",
  on: day(`2027-${on}`),
  what,
  ...more,
});

function jobsAfter(kind: string, entries: readonly Entry[]) {
  const plan = trialPlan({ p: { at: 0, kind } }, [], { entries });
  const checked = checkLayout(plan, "layout-1");
  const jobs = seasonJobs(checked).filter(({ job }) => AFTER.includes(job));
  return { checked, jobs, days: jobs.map(({ job, day: on }) => `${job} ${isoFromDay(on)}`) };
}

test("tomatoes: ferment, stir next day, rinse after two, dry, store, test", () => {
  const { days, jobs } = jobsAfter("tomato", [entry("1", "09-10", "harvested", { count: 8 })]);
  expect(days).toEqual([
    "ferment 2027-09-10",
    "stir ferment 2027-09-11",
    "rinse seed 2027-09-12",
    "dry seed 2027-09-12",
    "store seed 2027-09-27",
    "test seed 2027-10-27",
  ]);
  expect(jobs.find(({ job }) => job === "rinse seed")?.text).toContain("by 13 Sep at the latest");
});

test("dry seed is cured, threshed, dried; nothing of it is wet", () => {
  const { days, jobs } = jobsAfter("common-bean", [entry("1", "09-10", "harvested")]);
  expect(days).toEqual([
    "dry seed 2027-09-17",
    "clean seed 2027-09-24",
    "store seed 2027-10-08",
    "test seed 2027-11-07",
  ]);
  expect(jobs.find(({ job }) => job === "clean seed")?.caution).toContain("mask");
});

test("a cleaning written down ends what lies before it and sets the days after it", () => {
  const { days } = jobsAfter("tomato", [
    entry("1", "09-10", "harvested"),
    entry("2", "09-12", "cleaned", { grams: 12 }),
  ]);
  expect(days).toEqual(["dry seed 2027-09-12", "store seed 2027-09-26", "test seed 2027-10-26"]);
});

test("each batch has its own jobs, told apart by its day in ticks and in calendars", () => {
  const { jobs, checked } = jobsAfter("tomato", [
    entry("1", "09-10", "harvested"),
    entry("2", "09-24", "harvested"),
  ]);
  expect(new Set(jobs.map(jobKey)).size).toBe(jobs.length);
  const text = icalendar(checked.plan, checked.layout, jobs, "20270910T000000Z");
  const ids = text.split("\r\n").filter((line) => line.startsWith("UID:"));
  expect(new Set(ids).size).toBe(jobs.length);
});

test("nothing is due where no harvest was written down", () => {
  expect(jobsAfter("tomato", []).days).toEqual([]);
});
