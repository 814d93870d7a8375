/** Jobs as they stand in the field: new ones, their days as grown, and ticks. */
import { describe, expect, test } from "vitest";
import { checkLayout } from "../../../src/core/checks/checked-layout.ts";
import { icalendar } from "../../../src/core/files/icalendar.ts";
import { fieldJobs } from "../../../src/core/fieldwork/field-jobs.ts";
import { handPollination } from "../../../src/core/fieldwork/hand-pollination.ts";
import { jobsDone, tickFields } from "../../../src/core/fieldwork/job-ticks.ts";
import { type Job, seasonJobs } from "../../../src/core/fieldwork/season-calendar.ts";
import type { Entry, Plan, Surrounding } from "../../../src/core/model/plan.ts";
import { checkAsGrown } from "../../../src/core/record/as-grown.ts";
import { addEntry } from "../../../src/core/record/write-entry.ts";
import { bloom, book, day, trialPlan } from "../../support/trial-plan.ts";

const carrots: Surrounding = {
  id: "wild",
  label: "Wild carrot by the road",
  what: "pollen",
  kind: "wild-carrot",
  outline: { shape: "point", x: 40, y: 0 },
  flowering: "cut",
  cover: "none",
  bloom: bloom("06-15", "08-20"),
};
const garden = trialPlan(
  {
    squash: { at: 0, kind: "summer-squash", bloom: bloom("07-10", "08-30"), cover: "hand" },
    cress: { at: 6, kind: "radish", bloom: bloom("06-20", "07-10"), flowering: "cut" },
    beans: { at: 12, kind: "common-bean", bloom: bloom("07-01", "07-20"), cover: "cage" },
  },
  [carrots],
);

const on = (iso: string) => day(`2027-${iso}`);
const jobOf = (jobs: readonly Job[], planting: string, name: Job["job"]) => {
  const found = jobs.find(({ job, planting: id }) => job === name && id === planting);
  if (!found) throw new Error(`no job ${name} of ${planting}`);
  return found;
};
const jobs = seasonJobs(checkLayout(garden, "layout-1"));

const asGrownJobs = (plan: Plan, iso: string) =>
  fieldJobs(checkLayout(plan, "layout-1"), checkAsGrown(plan, "layout-1", on(iso)));

let count = 0;
const entry = (of: string, iso: string, what: Entry["what"]): Entry => ({
  id: `e-${(count += 1)}`,
  of,
  on: on(iso),
  what,
});

describe("jobs of the season", () => {
  test("what is to be cut before bloom is a job, ours and a neighbour's, 3 days before it may flower", () => {
    expect(jobOf(jobs, "cress", "cut before bloom").day).toBe(on("06-17"));
    expect(jobOf(jobs, "wild", "cut before bloom").day).toBe(on("06-12"));
    expect(jobOf(jobs, "wild", "cut before bloom").text).toContain("Wild carrot by the road");
    expect(jobs.some(({ job, planting }) => job === "first flower" && planting === "cress")).toBe(
      false,
    );
  });

  test("taped buds are a job of the evening before, pollinating of the morning after", () => {
    expect(jobOf(jobs, "squash", "tape buds").day).toBe(on("07-09"));
    expect(jobOf(jobs, "squash", "hand pollinate").day).toBe(on("07-10"));
    expect(jobs.some(({ job, planting }) => job === "tape buds" && planting !== "squash")).toBe(
      false,
    );
  });

  test("the words are those of the kind's flower", () => {
    const words = (id: string) => {
      const kind = book.kind(id);
      if (!kind) throw new Error(`no kind ${id}`);
      return handPollination(kind);
    };
    expect(words("summer-squash").close).toContain("male and female buds");
    expect(words("maize").close).toContain("ears");
    expect(words("tomato").pollinate).toContain("shake");
    expect(words("watermelon").close).toContain("bags");
    expect(words("watermelon").pollinate).not.toContain("tape");
  });

  test("they are in the calendar file under ids without blanks", () => {
    const checked = checkLayout(garden, "layout-1");
    const text = icalendar(garden, checked.layout, jobs, "20270201T090000Z");
    expect(text).toMatch(/UID:[^ \r]*\.wild\.cut-before-bloom@/);
    expect(text).toContain("CATEGORIES:hand pollinate");
  });
});

describe("jobs in the field", () => {
  test("have their days as grown", () => {
    const plan = { ...garden, entries: [entry("beans", "06-21", "first flower")] };
    expect(jobOf(asGrownJobs(plan, "06-21"), "beans", "first flower").day).toBe(on("06-21"));
  });

  test("a cover that is overdue stays a job, though it counts for nothing", () => {
    const grown = checkAsGrown(garden, "layout-1", on("07-05"));
    expect(grown.result.standById.get("beans")?.cover).toBe("none");
    expect(jobOf(asGrownJobs(garden, "07-05"), "beans", "cover on").day).toBe(on("06-28"));
    expect(jobOf(asGrownJobs(garden, "07-20"), "squash", "tape buds").day).toBe(on("07-09"));
  });

  test("a tick is an entry that says the job is done, in the record's own word where it has one", () => {
    let plan: Plan = garden;
    for (const job of jobs) {
      const fields = tickFields(job, job.day);
      plan = addEntry(fields, { id: `t-${plan.entries.length}` }, "plot").apply(plan);
      expect(jobsDone([job], plan.entries).get(job)?.id, `${job.job} ${job.planting}`).toBe(
        `t-${plan.entries.length - 1}`,
      );
    }
    expect(jobsDone(jobs, plan.entries).size).toBe(jobs.length);
    expect(jobsDone(jobs, garden.entries).size).toBe(0);
    const watch = plan.entries.filter(({ what }) => what === "done");
    expect(watch.every(({ job, note }) => job !== undefined && note !== undefined)).toBe(true);
  });

  test("buds taped are a cover that stands from the day it is ticked", () => {
    const tape = jobOf(jobs, "squash", "tape buds");
    const plan = addEntry(tickFields(tape, tape.day), { id: "t" }, "plot").apply(garden);
    const coverOf = (of: Plan) =>
      checkAsGrown(of, "layout-1", on("07-20")).result.standById.get("squash")?.cover;
    expect(coverOf(garden)).toBe("none");
    expect(coverOf(plan)).toBe("hand");
  });

  test("a round of roguing long before is not the last look before bloom", () => {
    const rogue = jobOf(jobs, "beans", "rogue");
    expect(jobsDone([rogue], [entry("beans", "06-01", "rogued")]).has(rogue)).toBe(false);
    expect(jobsDone([rogue], [entry("beans", "06-20", "rogued")]).has(rogue)).toBe(true);
  });

  test("a job struck out again is not done", () => {
    const rogue = jobOf(jobs, "beans", "rogue");
    const tick = entry("beans", "06-28", "rogued");
    const strike: Entry = {
      ...entry("beans", "06-28", "rogued"),
      corrects: tick.id,
      isStruck: true,
    };
    expect(jobsDone([rogue], [tick, strike]).has(rogue)).toBe(false);
  });
});
