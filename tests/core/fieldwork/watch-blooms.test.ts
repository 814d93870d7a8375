/** What unsure dates ask of the field is said wherever the field is planned: file, calendar, card. */
import ICAL from "ical.js";
import { describe, expect, test } from "vitest";
import { checkLayout } from "../../../src/core/checks/checked-layout.ts";
import { daysToKeep } from "../../../src/core/fieldwork/days-to-keep.ts";
import { seasonJobs } from "../../../src/core/fieldwork/season-calendar.ts";
import { checkReport } from "../../../src/core/files/check-report.ts";
import { icalendar } from "../../../src/core/files/icalendar.ts";
import { isoFromDay } from "../../../src/core/model/day.ts";
import type { Plan } from "../../../src/core/model/plan.ts";
import { a4, scenes } from "../../support/printed.ts";
import {
  bloom,
  day,
  layoutOf,
  source,
  squareAt,
  trialPlan,
  wordsOf,
} from "../../support/trial-plan.ts";

const SOWN = { bloom: null, start: { method: "sown", date: day("2027-04-15") } } as const;
const bed = {
  id: "bed",
  code: "B01",
  outline: { shape: "rectangle", x: 2, y: 0, widthM: 8, lengthM: 3, turnDeg: 0 },
} as const;

/** Sunflowers by a rule of thumb, and others with dates of August: only time keeps them apart. */
function withBed(plan: Plan): Plan {
  const layout = layoutOf(plan);
  const plantings = layout.plantings.map((each) => ({ ...each, bed: "bed" }));
  return { ...plan, layouts: [{ ...layout, beds: [bed], plantings }] };
}

const ours = withBed(
  trialPlan({
    early: { at: 0, kind: "sunflower", ...SOWN },
    late: { at: 3, kind: "sunflower", bloom: bloom("08-10", "08-31") },
  }),
);
const theirs = withBed(
  trialPlan({ early: { at: 0, kind: "sunflower", ...SOWN } }, [
    source("next", "sunflower", squareAt(3), {
      label: "Next door",
      bloom: bloom("08-10", "08-31"),
    }),
  ]),
);
const checkedOf = (plan: Plan) => checkLayout(plan, "layout-1");

describe("two of ours", () => {
  test("the report for programs names the basis and the last safe days", () => {
    const report = checkReport({ ...checkedOf(ours), file: "a.json", isAll: false });
    const pair = report.pairs.find(({ seedParent }) => seedParent === "late");
    expect(pair?.bloomBasis).toEqual({ seedParent: "own", pollenSource: "rule of thumb" });
    expect(pair?.time).toEqual({
      earlier: "early",
      later: "late",
      closes: "rule of thumb",
      opens: "own",
      basis: "rule of thumb",
      isCountedUnlike: false,
      isSure: false,
      lastDay: "2027-07-26",
      firstDay: "2027-08-03",
    });
  });

  test("the season calendar has one job for the two, on the last safe day", () => {
    const checked = checkedOf(ours);
    const watch = seasonJobs(checked).filter(({ job }) => job === "watch blooms");
    expect(watch.map((job) => [isoFromDay(job.day), job.planting, job.beside])).toEqual([
      ["2027-07-26", "early", "late"],
    ]);
    expect(watch[0]?.text).toMatch(/^Watch both: .*over by 26 Jul.*not open before 3 Aug$/);
    expect(watch[0]?.caution).toMatch(/cover or cut one of the two .* or give up the seed/);
    const text = icalendar(ours, checked.layout, seasonJobs(checked), "20270201T090000Z");
    const events = new ICAL.Component(ICAL.parse(text) as unknown[])
      .getAllSubcomponents("vevent")
      .map((component) => new ICAL.Event(component));
    const event = events.find(({ summary }) => summary.startsWith("Watch both"));
    expect(event?.startDate.toString()).toBe("2027-07-26");
    expect(event?.description).toContain("give up the seed");
  });

  test("the bed card tells a helper the day of each planting", () => {
    const text = printedText(ours, "bed-cards");
    expect(text).toContain("Must be over by 26 Jul, for LATE Variety late");
    expect(text).toContain("Must not open before 3 Aug, for EARLY Variety early");
  });

  test("the isolation report says what to watch and what to do if it does not hold", () => {
    const text = printedText(ours, "isolation");
    expect(text).toContain("must be over by 26 Jul");
    expect(text).toContain("If not: cover or cut one of the two");
  });
});

describe("one of ours and a neighbour's", () => {
  test("only what is ours can be covered, and the neighbour is asked", () => {
    const [words] = wordsOf(theirs, "unsure-time");
    expect(words).toContain("Watch EARLY Variety early and ask after Next door, or go and look:");
    expect(words).toContain("If not: cover or cut EARLY Variety early before both are open");
    expect(words).not.toContain("one of the two");
    const [job] = seasonJobs(checkedOf(theirs)).filter(({ job: name }) => name === "watch blooms");
    expect(job?.text).toContain("ask after Next door");
  });
});

test("of several pairs the strictest day counts for a planting", () => {
  const plan = trialPlan({
    early: { at: 0, kind: "sunflower", ...SOWN },
    mid: { at: 3, kind: "sunflower", bloom: bloom("08-02", "08-20") },
    late: { at: 6, kind: "sunflower", bloom: bloom("08-10", "08-31") },
  });
  const { pairs } = checkedOf(plan).result;
  const { overBy, notBefore } = daysToKeep("early", pairs);
  const all = pairs.flatMap(({ time }) => (time && !time.isSure ? [time.lastDay] : []));
  expect(all.length).toBe(4);
  expect(overBy?.day).toBe(Math.min(...all));
  expect(new Set(overBy?.others)).toEqual(new Set(["mid", "late"]));
  expect(notBefore).toBeNull();
});

/** All words of the pages of one companion, in reading order. */
function printedText(plan: Plan, companion: "bed-cards" | "isolation"): string {
  return scenes(checkedOf(plan), { ...a4, companions: [companion] })
    .flatMap((page) => page.marks)
    .flatMap((mark) => (mark.kind === "text" ? [mark.text] : []))
    .join(" ");
}
