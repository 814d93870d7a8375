/**
 * No spring figure across a winter. When these crops flower after a winter outdoors is common
 * practice in the trade (April to July in the north); none of the days or heat known here tell
 * it, so nothing may be called clear on them.
 */
import { describe, expect, test } from "vitest";
import { isoFromDay } from "../../../src/core/model/day.ts";
import type { Plan } from "../../../src/core/model/plan.ts";
import {
  check,
  day,
  findingsOf,
  standingsOf,
  trialPlan,
  wordsOf,
} from "../../support/trial-plan.ts";

type Method = "sown" | "transplanted";
const start = (method: Method, iso: string) => ({ bloom: null, start: { method, date: day(iso) } });

/** The overwintered stand 3 m from one of this season with dates of its own in `month`. */
function beside(kind: string, method: Method, iso: string, more: Partial<Plan> = {}): Plan {
  return trialPlan(
    {
      old: { at: 0, kind, isolationM: 1000, ...start(method, iso) },
      young: {
        at: 4,
        kind,
        isolationM: 1000,
        bloom: { first: day("2027-06-01"), last: day("2027-06-30") },
      },
    },
    [],
    more,
  );
}

/** How each is usually carried over the winter for seed of 2027. */
const overwintered: readonly (readonly [string, Method, string])[] = [
  ["cabbage", "transplanted", "2026-07-10"],
  ["kale", "transplanted", "2026-07-10"],
  ["cauliflower", "transplanted", "2026-08-01"],
  ["brussels-sprouts", "transplanted", "2026-06-10"],
  ["turnip", "transplanted", "2026-10-01"],
  ["rutabaga", "transplanted", "2026-10-01"],
  ["leek", "transplanted", "2026-06-10"],
  ["onion", "transplanted", "2026-10-10"],
  ["carrot", "transplanted", "2026-10-15"],
  ["beet", "transplanted", "2026-10-15"],
  ["chard", "transplanted", "2026-10-15"],
  ["parsley", "transplanted", "2026-06-15"],
  ["celery", "transplanted", "2026-06-01"],
  ["chicory", "transplanted", "2026-10-15"],
  ["broad-bean", "sown", "2026-11-05"],
  ["spinach", "sown", "2026-09-10"],
  ["pea", "sown", "2026-11-01"],
  ["rocket", "sown", "2026-09-10"],
  ["coriander", "sown", "2026-09-10"],
  ["mustard", "sown", "2026-09-01"],
  ["radish", "sown", "2026-08-15"],
  ["chinese-cabbage", "sown", "2026-08-10"],
  ["pak-choi", "sown", "2026-09-01"],
  ["mizuna", "sown", "2026-09-01"],
  ["mustard-spinach", "sown", "2026-09-01"],
  ["lettuce", "sown", "2026-09-15"],
  ["wheat", "sown", "2026-10-10"],
  ["barley", "sown", "2026-10-01"],
  ["oat", "sown", "2026-10-01"],
  ["oilseed-rape", "sown", "2026-08-25"],
];

describe.each(overwintered)("overwintered %s (%s %s)", (kind, method, iso) => {
  test("is unknown beside one of this season, with the reason, and dates tell it", () => {
    const plan = beside(kind, method, iso);
    expect(standingsOf(plan)).toEqual({ "old<-young": "unknown", "young<-old": "unknown" });
    const [finding] = findingsOf(plan, "missing-bloom");
    expect(finding?.subject).toBe("old");
    expect(wordsOf(plan, "missing-bloom").join(" ")).toMatch(/winter|spring|season begins/);
    const dated = trialPlan({
      old: {
        at: 0,
        kind,
        isolationM: 1000,
        bloom: { first: day("2027-04-01"), last: day("2027-05-10") },
      },
      young: {
        at: 4,
        kind,
        isolationM: 1000,
        bloom: { first: day("2027-06-01"), last: day("2027-06-30") },
      },
    });
    expect(standingsOf(dated)).toEqual({ "old<-young": "time", "young<-old": "time" });
  });

  test("is unknown inside one season from September to August too", () => {
    const season = { name: "2026/27", first: day("2026-09-01"), last: day("2027-08-31") };
    expect(check(beside(kind, method, iso, { season })).standById.get("old")?.bloom).toBeNull();
  });
});

describe("in the season's own spring", () => {
  test.each([
    ["carrot", "transplanted", "2027-04-01"],
    ["onion", "transplanted", "2027-03-15"],
    ["beet", "transplanted", "2027-04-20"],
    ["broad-bean", "sown", "2027-03-10"],
    ["spinach", "sown", "2027-04-01"],
    ["wheat", "sown", "2027-04-01"],
  ] as const)("%s %s on %s keeps its figure, as a rule of thumb", (kind, method, iso) => {
    const bloom = check(beside(kind, method, iso)).standById.get("old")?.bloom;
    expect(bloom?.opens).toBe("rule of thumb");
  });

  test.each(["kale", "leek", "parsley", "cabbage"])(
    "%s set out in its usual month of this season is a first-year stand",
    (kind) => {
      const stand = check(beside(kind, "transplanted", "2027-06-10")).standById.get("old");
      expect([stand?.bloom, stand?.whyNoBloom]).toEqual([null, "first-year"]);
    },
  );
});

test("days of the variety's own that carry it clean over the winter are its own", () => {
  const plan = trialPlan({
    old: {
      at: 0,
      kind: "broad-bean",
      ...start("sown", "2026-11-05"),
      variety: { sownToFlower: [165, 180], bloomDays: [28, 35] },
    },
  });
  const bloom = check(plan).standById.get("old")?.bloom;
  expect(bloom && [isoFromDay(bloom.outer.first), bloom.opens, bloom.closes]).toEqual([
    "2027-04-19",
    "own",
    "own",
  ]);
});

test("the southern winter is six months off, and the tropics have none", () => {
  const site = (latitude: number) => ({
    site: { name: "", upBearingDeg: 0, position: { longitude: 0, latitude } },
    season: { name: "", first: day("2027-07-01"), last: day("2028-06-30") },
  });
  const known = (iso: string, more: Partial<Plan>) =>
    check(beside("pea", "sown", iso, more)).standById.get("old")?.bloom !== null;
  expect(known("2027-08-10", site(-38))).toBe(true);
  expect(known("2028-05-10", site(-38))).toBe(false);
  expect(known("2027-08-10", site(38))).toBe(false);
  const warm = { normals: { minC: Array<number>(12).fill(20), maxC: Array<number>(12).fill(30) } };
  const tropics = { ...site(5), site: { ...site(5).site, climate: warm } };
  expect(known("2027-10-10", tropics)).toBe(true);
});
