import ICAL from "ical.js";
import { describe, expect, test } from "vitest";
import { checkLayout } from "../../../src/core/checks/checked-layout.ts";
import { icalendar } from "../../../src/core/files/icalendar.ts";
import { jobsByWeek, seasonJobs } from "../../../src/core/fieldwork/season-calendar.ts";
import { isoFromDay } from "../../../src/core/model/day.ts";
import {
  bed,
  day,
  firstLayout,
  gardenPlan,
  planting,
  square,
  variety,
} from "../../support/arrange-garden.ts";

const plan = gardenPlan(
  [
    variety("t1", "tomato", {
      name: "Ämber; Lantern, the very long-named one of Øster Løgum gård på bakken",
    }),
  ],
  [bed("a", 0, 0, 1.2, 8)],
  [
    (({ bloom: _bloom, ...rest }) => ({
      ...rest,
      cover: "cage" as const,
      start: { method: "transplanted" as const, date: day("2027-05-20") },
    }))(planting("p", "t1", { outline: square(0, 0, 1.2), bed: "a" })),
  ],
);
const jobs = seasonJobs(checkLayout(plan, plan.layouts[0]?.id ?? ""));
const text = icalendar(plan, firstLayout(plan), jobs, "20270201T090000Z");

describe("the season calendar", () => {
  test("holds the jobs of a caged seed planting in order", () => {
    expect(jobs.map((job) => job.job)).toEqual([
      "set out",
      "rogue",
      "cover on",
      "first flower",
      "seed ripe",
      "last flower",
      "cover off",
    ]);
    const days = jobs.map((job) => job.day);
    expect(days).toEqual([...days].sort((a, b) => a - b));
  });

  test("lists them by ISO week", () => {
    const weeks = jobsByWeek(jobs);
    expect(weeks[0]?.label).toBe("2027-W20");
    expect(weeks.flatMap((week) => week.jobs).length).toBe(jobs.length);
  });
});

test("seed that may ripen after the first frost is marked, in the file too", () => {
  const frosty = { ...plan, site: { ...plan.site, firstAutumnFrost: day("2027-07-01") } };
  const marked = seasonJobs(checkLayout(frosty, frosty.layouts[0]?.id ?? "")).filter(
    (job) => job.caution !== null,
  );
  expect(marked.map((job) => [job.job, job.caution])).toEqual([
    ["seed ripe", "may come after the first frost, given as 1 Jul"],
  ]);
  const file = icalendar(frosty, firstLayout(frosty), marked, "20270201T090000Z");
  expect(file).toContain("DESCRIPTION:Caution: may come after the first frost\\, given as 1 Jul.");
  expect(jobs.every((job) => job.caution === null)).toBe(true);
});

describe("the iCalendar file (RFC 5545)", () => {
  test("is read back whole by an independent parser", () => {
    const calendar = new ICAL.Component(ICAL.parse(text));
    const events = calendar
      .getAllSubcomponents("vevent")
      .map((component) => new ICAL.Event(component));
    expect(events.map((event) => event.summary)).toEqual(jobs.map((job) => job.text));
    expect(events.map((event) => event.startDate.toString())).toEqual(
      jobs.map((job) => isoFromDay(job.day)),
    );
    expect(events.every((event) => event.startDate.isDate)).toBe(true);
    expect(events.map((event) => event.endDate.toString())).toEqual(
      jobs.map((job) => isoFromDay(job.day + 1)),
    );
    expect(new Set(events.map((event) => event.uid)).size).toBe(jobs.length);
  });

  test("folds at 75 octets, ends every line with CRLF and cuts no character", () => {
    expect(text.endsWith("\r\n")).toBe(true);
    const lines = text.split("\r\n").slice(0, -1);
    for (const line of lines) {
      expect(line).not.toMatch(/[\r\n]/);
      expect(new TextEncoder().encode(line).length).toBeLessThanOrEqual(75);
    }
    expect(lines.some((line) => line.startsWith(" "))).toBe(true);
    expect(text).not.toContain("\uFFFD");
  });

  test("keeps UIDs when dates change, so that importing again updates", () => {
    const later = icalendar(
      plan,
      firstLayout(plan),
      jobs.map((job) => ({ ...job, day: job.day + 3 })),
      "20270301T090000Z",
    );
    const uids = (calendar: string) =>
      [...calendar.replaceAll("\r\n ", "").matchAll(/UID:(.*)\r/g)].map((match) => match[1]);
    expect(uids(later)).toEqual(uids(text));
  });
});
