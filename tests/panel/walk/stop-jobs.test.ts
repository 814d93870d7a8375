/** Jobs as somebody who stands before the plot needs them. */
import { describe, expect, test } from "vitest";
import type { Job } from "../../../src/core/fieldwork/season-calendar.ts";
import type { Entry } from "../../../src/core/model/plan.ts";
import { stopJobs } from "../../../src/panel/walk/stop-jobs.ts";

const ON = 20_000;
const job = (name: Job["job"], day: number, more: Partial<Job> = {}): Job => ({
  job: name,
  planting: "p",
  day,
  text: name,
  caution: null,
  ...more,
});
const entry = (what: Entry["what"], on: number, of = "p"): Entry => ({ id: what, of, on, what });

const at = (
  jobs: readonly Job[],
  done: ReadonlyMap<Job, Entry> = new Map(),
  current: readonly Entry[] = [...done.values()],
) => stopJobs({ jobs, done, current, on: ON }, "p");

describe("jobs at a plot", () => {
  test("are those of this week and what is overdue; the rest waits", () => {
    const jobs = [job("rogue", ON - 5), job("cover on", ON + 7), job("seed ripe", ON + 8)];
    const { due, next } = at(jobs);
    expect(due.map(({ job: name }) => name)).toEqual(["rogue", "cover on"]);
    expect(next?.job).toBe("seed ripe");
  });

  test("of other plots are left out, but those that two share are a job of both", () => {
    const jobs = [
      job("rogue", ON, { planting: "q" }),
      job("watch blooms", ON, { planting: "q", beside: "p" }),
    ];
    expect(at(jobs).due.map(({ job: name }) => name)).toEqual(["watch blooms"]);
  });

  test("overdue for more than four weeks are counted, not listed", () => {
    const { due, older } = at([job("rogue", ON - 28), job("cover on", ON - 29)]);
    expect(due.map(({ job: name }) => name)).toEqual(["rogue"]);
    expect(older).toBe(1);
  });

  test("ticked of late are shown as done, longer ago they are gone", () => {
    const [lately, before] = [job("rogue", ON - 5), job("cover on", ON - 10)];
    const done = new Map([
      [lately, entry("rogued", ON - 2)],
      [before, entry("covered", ON - 7)],
    ]);
    expect(at([lately, before], done).done.map(({ entry: { what } }) => what)).toEqual(["rogued"]);
    expect(at([lately, before], done).due).toEqual([]);
  });

  test("sowing is not asked for where it is written that it is up or flowers", () => {
    const jobs = [job("sow", ON - 9), job("rogue", ON)];
    expect(
      at(jobs, new Map(), [entry("first flower", ON - 1)]).due.map((each) => each.job),
    ).toEqual(["rogue"]);
    expect(at(jobs, new Map(), [entry("note", ON - 1)]).due).toHaveLength(2);
  });
});
