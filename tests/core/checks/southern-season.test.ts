/** A southern season: from July to June, across New Year and a 29 February. */
import { describe, expect, test } from "vitest";
import { checkLayout } from "../../../src/core/checks/checked-layout.ts";
import { staggerOffers } from "../../../src/core/remedies/stagger.ts";
import { jobsByWeek, seasonJobs } from "../../../src/core/fieldwork/season-calendar.ts";
import { isoFromDay } from "../../../src/core/model/day.ts";
import type { Climate, Plan } from "../../../src/core/model/plan.ts";
import { monthlyMeans } from "../../support/climate-rows.ts";
import { check, day, findingsOf, pairsOf, trialPlan } from "../../support/trial-plan.ts";

/** Medford's year turned by six months: a southern site with the same summers. */
const turned = (values: readonly number[]) => [...values.slice(6), ...values.slice(0, 6)];
const climate: Climate = {
  normals: {
    minC: turned(monthlyMeans("medford", "tmin")),
    maxC: turned(monthlyMeans("medford", "tmax")),
  },
};
const southern: Partial<Plan> = {
  season: { name: "2027/28", first: day("2027-07-01"), last: day("2028-06-30") },
  site: {
    name: "South",
    upBearingDeg: 0,
    lastSpringFrost: day("2027-10-28"),
    firstAutumnFrost: day("2028-04-20"),
    climate,
  },
};
const sown = (iso: string) => ({ bloom: null, start: { method: "sown", date: day(iso) } as const });

function maizes(first: string, second: string): Plan {
  return trialPlan(
    { p: { at: 0, kind: "maize", ...sown(first) }, q: { at: 3, kind: "maize", ...sown(second) } },
    [],
    southern,
  );
}

describe("two maizes sown in November", () => {
  const plan = maizes("2027-11-10", "2027-11-10");

  test("flower after New Year, counted in the heat of a southern summer", () => {
    const bloom = check(plan).standById.get("p")?.bloom;
    expect(bloom?.counted).toBe("heat");
    expect(isoFromDay(bloom?.likely.first ?? 0)).toMatch(/^2028-0[12]-/);
  });

  test("are in conflict, and a later sowing clears it", () => {
    expect(pairsOf(plan).get("p<-q")?.standing).toBe("conflict");
    const laterIn = (at: Plan) =>
      staggerOffers(checkLayout(at, "layout-1"), ["p", "q"]).filter(
        ({ startShift }) => startShift > 0,
      );
    expect(laterIn(plan), "seed would ripen after the April frost").toEqual([]);
    const longer = { ...plan, site: { ...plan.site, firstAutumnFrost: day("2028-06-10") } };
    expect(laterIn(longer).length).toBe(2);
    for (const { edit } of laterIn(longer)) {
      expect(findingsOf(edit.apply(longer), "isolation")).toEqual([]);
    }
  });

  test("have their jobs listed in order over New Year, by ISO week", () => {
    const jobs = seasonJobs(checkLayout(plan, "layout-1"));
    const days = jobs.map((job) => job.day);
    expect(days).toEqual([...days].sort((a, b) => a - b));
    expect(jobs.some((job) => job.day < day("2028-01-01"))).toBe(true);
    expect(jobs.some((job) => job.day >= day("2028-01-01"))).toBe(true);
    const labels = jobsByWeek(jobs).map((week) => week.label);
    expect(labels).toEqual([...labels].sort());
  });
});

test("seed that ripens after the April frost is told", () => {
  expect(findingsOf(maizes("2027-10-10", "2027-12-20"), "late-seed")).toMatchObject([
    { subject: "p", isBeyond: true },
    { subject: "q", isBeyond: true, frost: day("2028-04-20") },
  ]);
});

test("days are counted over 29 February", () => {
  const plan = trialPlan(
    {
      p: {
        at: 0,
        kind: "tomato",
        ...sown("2027-12-31"),
        variety: { sownToFlower: [60, 60], bloomDays: [1, 1] },
      },
    },
    [],
    southern,
  );
  expect(isoFromDay(check(plan).standById.get("p")?.bloom?.likely.first ?? 0)).toBe("2028-02-29");
});

test("a perennial neighbour flowers in this season whatever year its dates were typed in", () => {
  const plan = trialPlan(
    {
      p: { at: 0, kind: "asparagus", bloom: { first: day("2027-11-20"), last: day("2027-12-20") } },
    },
    [
      {
        id: "n",
        label: "Old bed next door",
        what: "pollen",
        kind: "asparagus",
        outline: { shape: "point", x: 5, y: 0 },
        flowering: "yes",
        cover: "none",
        bloom: { first: day("2024-12-01"), last: day("2025-01-10") },
      },
    ],
    southern,
  );
  expect(check(plan).standById.get("n")?.bloom?.outer).toEqual({
    first: day("2027-12-01"),
    last: day("2028-01-10"),
  });
});
