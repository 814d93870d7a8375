/** Dates of another year than the season: told, and no ground for "clear". */
import { describe, expect, test } from "vitest";
import type { Plan, Surrounding } from "../../../src/core/model/plan.ts";
import {
  changeSeason,
  datedCounts,
  datesLeftBehind,
  seasonLater,
  yearsBetween,
} from "../../../src/core/edits/change-season.ts";
import {
  type TrialPlanting,
  check,
  day,
  findingsOf,
  layoutOf,
  source,
  standingsOf,
  trialPlan,
  wordsOf,
} from "../../support/trial-plan.ts";

const between = (first: string, last: string) => ({ first: day(first), last: day(last) });
const season = (first: string, last: string): Plan["season"] => ({
  name: first.slice(0, 4),
  ...between(first, last),
});

function carrots(wild: Partial<Surrounding>, more: Partial<Plan> = {}): Plan {
  return trialPlan(
    { p: { at: 0, kind: "carrot", bloom: between("2027-06-20", "2027-08-01") } },
    [source("w", "carrot", { shape: "point", x: 5.5, y: 0.5 }, wild)],
    more,
  );
}

describe("a bloom of another year", () => {
  const left = carrots({ bloom: between("2026-06-25", "2026-09-10") });

  test("clears nothing by time, and is told", () => {
    expect(standingsOf(left)).toEqual({ "p<-w": "unknown" });
    expect(findingsOf(left, "other-season")).toMatchObject([
      { subject: "w", severity: "unknown", against: ["p"], dates: [{ what: "bloom" }] },
    ]);
    const [words] = wordsOf(left, "other-season");
    expect(words).toContain("25 Jun 2026 to 10 Sep 2026, lies outside the season");
    expect(words).toContain("time clears nothing");
  });

  test("of this year clears or conflicts as ever, and nothing is told", () => {
    const apart = carrots({ bloom: between("2027-09-01", "2027-09-10") });
    expect(standingsOf(apart)).toEqual({ "p<-w": "time" });
    expect(standingsOf(carrots({ bloom: between("2027-06-25", "2027-09-10") }))).toEqual({
      "p<-w": "conflict",
    });
    expect(findingsOf(apart, "other-season")).toEqual([]);
  });

  test("clears by time where one season spans both years", () => {
    const both = { season: season("2026-01-01", "2027-12-31") };
    const plan = carrots({ bloom: between("2026-06-25", "2026-09-10") }, both);
    expect(standingsOf(plan)).toEqual({ "p<-w": "time" });
    expect(findingsOf(plan, "other-season")).toEqual([]);
  });

  test("that is forecast from a start of another year clears nothing either", () => {
    const sown = (at: number, date: string): TrialPlanting => ({
      at,
      kind: "tomato",
      bloom: null,
      start: { method: "sown", date: day(date) },
    });
    const base = trialPlan({ p: sown(0, "2027-04-01"), q: sown(1.5, "2026-04-01") });
    const plan = { ...base, site: { ...base.site, firstAutumnFrost: day("2027-10-12") } };
    expect(Object.values(standingsOf(plan))).not.toContain("time");
    expect(check(plan).findings.map(({ severity }) => severity)).toContain("unknown");
  });

  test.each([
    ["2027-04-01", "2027-09-30", "2027-10-20", "2027-11-10", true],
    ["2026-07-01", "2027-06-30", "2026-12-20", "2027-01-20", true],
    ["2026-07-01", "2027-06-30", "2026-03-20", "2026-04-20", false],
    ["2026-07-01", "2027-06-30", "2027-08-20", "2027-09-20", false],
  ])("season %s to %s, bloom %s to %s: of it %s", (from, to, first, last, isOfIt) => {
    const plan = trialPlan({ p: { at: 0, kind: "lettuce", bloom: between(first, last) } }, [], {
      season: season(from, to),
    });
    expect(findingsOf(plan, "other-season").length === 0).toBe(isOfIt);
  });
});

test("starts and frosts of another year are told; overwintered plants are not", () => {
  const plan = (date: string, frosts: Partial<Plan["site"]> = {}) => {
    const base = trialPlan({
      p: { at: 0, kind: "carrot", start: { method: "sown", date: day(date) } },
    });
    return { ...base, site: { ...base.site, ...frosts } };
  };
  const told = (of: Plan) =>
    findingsOf(of, "other-season").map(({ subject, dates }) => [
      subject,
      ...dates.map((d) => d.what),
    ]);
  expect(told(plan("2026-07-10"))).toEqual([]);
  expect(told(plan("2025-07-10"))).toEqual([["p", "start"]]);
  expect(told(plan("2028-07-10"))).toEqual([["p", "start"]]);
  const frosts = { lastSpringFrost: day("2026-05-10"), firstAutumnFrost: day("2026-10-12") };
  expect(told(plan("2027-04-10", frosts))).toEqual([["site", "spring frost", "autumn frost"]]);
  const good = { lastSpringFrost: day("2027-05-10"), firstAutumnFrost: day("2027-10-12") };
  expect(told(plan("2027-04-10", good))).toEqual([]);
});

test("a frost typed for last year is compared in this season's year", () => {
  const base = trialPlan({ p: { at: 0, kind: "tomato" } });
  const plan = { ...base, site: { ...base.site, firstAutumnFrost: day("2026-10-12") } };
  expect(findingsOf(plan, "late-seed")).toEqual([]);
  const early = { ...base, site: { ...base.site, firstAutumnFrost: day("2026-07-12") } };
  expect(findingsOf(early, "late-seed")).toMatchObject([{ frost: day("2027-07-12") }]);
});

describe("another season", () => {
  const base = carrots(
    { bloom: between("2027-06-25", "2027-09-10") },
    { site: { ...carrots({}).site, firstAutumnFrost: day("2027-10-12") } },
  );
  const [first] = base.layouts;
  const plantings = layoutOf(base).plantings.map((planting) => ({
    ...planting,
    start: { method: "transplanted" as const, date: day("2027-04-02") },
  }));
  const plan: Plan = {
    ...base,
    layouts: [
      { ...layoutOf(base), plantings },
      { ...layoutOf(base), plantings, id: "layout-2", name: "Second" },
    ],
  };
  const next = seasonLater(plan.season, 1);

  test("takes name and days a year on, and counts what it leaves behind", () => {
    expect(first).toBeDefined();
    expect(next).toMatchObject({ first: day("2028-01-01"), last: day("2028-12-31") });
    expect(yearsBetween(plan.season, next)).toBe(1);
    expect(datesLeftBehind(plan, plan.season)).toBe(0);
    // Blooms and starts of two plantings, the neighbour's bloom, and the frost.
    expect(datesLeftBehind(plan, next)).toBe(6);
    expect(datedCounts(plan)).toEqual({ starts: 2, ends: 0, blooms: 2, neighbours: 1, frosts: 1 });
  });

  test("counts years in the season's name along", () => {
    const named = (name: string, years: number) =>
      seasonLater({ ...plan.season, name }, years).name;
    expect(named("2027/28", 1)).toBe("2028/29");
    expect(named("2099-00", 1)).toBe("2100-01");
    expect(named("Garden 2027", -1)).toBe("Garden 2026");
    expect(named("2027-05 early", 1)).toBe("2028-05 early");
    expect(named("spring", 1)).toBe("spring");
  });

  test("moves all dates by whole years in one step, and the verdicts stay", () => {
    const moved = changeSeason(next, "move").apply(plan);
    expect(datesLeftBehind(moved, next)).toBe(0);
    for (const layout of moved.layouts) {
      expect(layout.plantings[0]).toMatchObject({
        start: { date: day("2028-04-02") },
        bloom: between("2028-06-20", "2028-08-01"),
      });
    }
    expect(moved.site.firstAutumnFrost).toBe(day("2028-10-12"));
    expect(standingsOf(moved)).toEqual(standingsOf(plan));
  });

  test("keeps them and tells of them, or takes them out", () => {
    const kept = changeSeason(next, "keep").apply(plan);
    expect(kept.layouts).toBe(plan.layouts);
    expect(findingsOf(kept, "other-season").length).toBeGreaterThan(1);
    const dropped = changeSeason(next, "drop").apply(plan);
    expect(datesLeftBehind(dropped, next)).toBe(0);
    expect(dropped.layouts[1]?.plantings[0]).not.toHaveProperty("bloom");
    expect(dropped.layouts[1]?.plantings[0]).not.toHaveProperty("start");
    expect(dropped.site).not.toHaveProperty("firstAutumnFrost");
    expect(standingsOf(dropped)).toEqual({ "p<-w": "unknown" });
  });

  test("takes the end and the sowing under glass along", () => {
    const start = {
      method: "transplanted" as const,
      date: day("2027-05-10"),
      sownUnderGlass: day("2027-03-20"),
    };
    const raised = trialPlan({
      p: { at: 0, kind: "tomato", bloom: null, start, end: day("2027-09-30") },
    });
    expect(datesLeftBehind(raised, next)).toBe(2);
    const [moved, dropped] = (["move", "drop"] as const).map(
      (dates) => changeSeason(next, dates).apply(raised).layouts[0]?.plantings[0],
    );
    expect(moved).toMatchObject({
      start: { method: "transplanted", date: day("2028-05-10"), sownUnderGlass: day("2028-03-20") },
      end: day("2028-09-30"),
    });
    expect(dropped).not.toHaveProperty("start");
    expect(dropped).not.toHaveProperty("end");
  });

  test("29 February becomes the 28th", () => {
    const leap = { ...plan, season: season("2028-01-01", "2028-12-31") };
    const dated = changeSeason(seasonLater(leap.season, 1), "move").apply({
      ...leap,
      site: { ...leap.site, lastSpringFrost: day("2028-02-29") },
    });
    expect(dated.site.lastSpringFrost).toBe(day("2029-02-28"));
  });
});
