/** What a season showed, kept with the variety: it widens a forecast and never narrows it alone. */
import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { checkLayout } from "../../../src/core/checks/checked-layout.ts";
import type { Entry, Plan, Variety } from "../../../src/core/model/plan.ts";
import {
  MARGIN_DAYS,
  SEASONS_TO_NARROW,
  learned,
  seasonsTogether,
  seenBeside,
  seenInPlan,
  seenThisSeason,
  takeSeenDays,
} from "../../../src/core/record/learning.ts";
import { book, day, trialPlan } from "../../support/trial-plan.ts";

const entry = (id: string, on: string, what: Entry["what"]): Entry => ({
  id,
  of: "p",
  on: day(`2027-${on}`),
  what,
});

const garden = (entries: readonly Entry[], variety: Partial<Variety> = {}, kind = "common-bean") =>
  trialPlan(
    {
      p: { at: 0, kind, bloom: null, start: { method: "sown", date: day("2027-05-20") }, variety },
    },
    [],
    { entries },
  );
const varietyOf = (plan: Plan) => plan.varieties[0] as Variety;
const seen = (plan: Plan) => seenThisSeason(plan, "layout-1", "v-p");
const outer = (plan: Plan) =>
  checkLayout(plan, "layout-1").result.standById.get("p")?.bloom?.outer as {
    first: number;
    last: number;
  };

/** Days between two days by the calendar of the JavaScript engine. */
const calendarDays = (from: string, to: string) =>
  Math.round(
    (Date.parse(`2027-${to}T00:00:00Z`) - Date.parse(`2027-${from}T00:00:00Z`)) / 86_400_000,
  );

describe("days seen this season", () => {
  test("from the sowing written down, as early as it was last seen shut", () => {
    const plan = garden([
      entry("1", "05-25", "sown"),
      entry("2", "07-01", "looked at"),
      entry("3", "07-06", "first flower"),
      entry("4", "07-30", "last flower"),
    ]);
    expect(seen(plan)).toEqual({
      season: plan.season.name,
      sownToFlower: [calendarDays("05-25", "07-02"), calendarDays("05-25", "07-06")],
      bloomDays: [25, 25],
    });
  });

  test("where nobody looked before, as early as its forecast", () => {
    const plan = garden([entry("1", "08-20", "first flower")]);
    const forecast = seenBeside(plan, "layout-1")[0]?.forecast;
    expect(seen(plan)?.sownToFlower).toEqual([
      (forecast?.first ?? 0) - day("2027-05-20"),
      calendarDays("05-20", "08-20"),
    ]);
  });

  test("nothing where no flower was written down", () => {
    expect(seen(garden([entry("1", "05-25", "sown")]))).toBeNull();
  });
});

const season = (name: string, days: [number, number]) => ({ season: name, sownToFlower: days });

describe("what is taken", () => {
  test("one season never narrows the forecast, whatever it showed; it may widen it", () => {
    fc.assert(
      fc.property(fc.integer({ min: 5, max: 120 }), fc.integer({ min: 0, max: 20 }), (at, span) => {
        const plan = garden([]);
        const taken = takeSeenDays(
          learned(varietyOf(plan), [season("2027", [at, at + span])], book),
        ).apply(plan);
        const [before, after] = [outer(plan), outer(taken)];
        const start = day("2027-05-20");
        expect(after.first).toBe(Math.min(before.first, start + at));
        expect(after.last).toBeGreaterThanOrEqual(Math.max(before.last, start + at + span));
        const basis = (each: Plan) =>
          checkLayout(each, "layout-1").result.standById.get("p")?.bloom?.opens;
        expect(basis(taken), "a rule of thumb stays one").toBe(basis(plan));
      }),
      { numRuns: 60, seed: 16 },
    );
  });

  test("a season widens the grower's own typed range as well", () => {
    const typed = garden([], { sownToFlower: [40, 42] }, "lettuce");
    const taken = takeSeenDays(learned(varietyOf(typed), [season("2027", [50, 52])], book)).apply(
      typed,
    );
    expect(outer(taken).first).toBe(outer(typed).first);
    expect(outer(taken).last).toBeGreaterThanOrEqual(outer(typed).last + 10);
  });

  test("several seasons become its own range, with a margin either way, in one step", () => {
    const seasons = [season("2025", [41, 43]), season("2026", [44, 46]), season("2027", [39, 40])];
    expect(seasons).toHaveLength(SEASONS_TO_NARROW);
    const plan = garden([]);
    const made = learned(varietyOf(plan), seasons, book);
    expect(made.isOwnRange).toBe(true);
    const taken = takeSeenDays(made).apply(plan);
    expect(varietyOf(taken).sownToFlower).toEqual([39 - MARGIN_DAYS, 46 + MARGIN_DAYS]);
    expect(checkLayout(taken, "layout-1").result.standById.get("p")?.bloom?.opens).toBe("own");
  });

  test("how long an open-ended kind flowered is never its range", () => {
    const lengths = ["2025", "2026", "2027"].map((name) => ({
      season: name,
      bloomDays: [10, 12] as [number, number],
    }));
    const bean = garden([]);
    expect(learned(varietyOf(bean), lengths, book).variety.bloomDays).toBeUndefined();
    const carrot = garden([], {}, "carrot");
    expect(learned(varietyOf(carrot), lengths, book).variety.bloomDays).toEqual([3, 19]);
  });
});

test("seasons are held once each, from this plan, the variety and other plans", () => {
  const plan = garden([entry("1", "07-01", "looked at"), entry("2", "07-04", "first flower")], {
    seen: [season("2025", [41, 43]), season("2027", [1, 2])],
  });
  const found = seenInPlan(plan, { kind: "common-bean", name: "variety P" });
  expect(found.map(({ season: name }) => name)).toEqual(["2025", "2027"]);
  expect(found[1]?.sownToFlower).toEqual([43, 45]);
  expect(seenInPlan(plan, { kind: "carrot", name: "Variety p" })).toEqual([]);
  expect(seasonsTogether(found, [season("2026", [1, 2])])).toHaveLength(3);
});
