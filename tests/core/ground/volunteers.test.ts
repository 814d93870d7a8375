/**
 * Earlier crops on the ground of a seed parent. Land years are those printed in 7 CFR 201.76
 * (tomato 1, rape and mustard 4 for foundation seed, rice 1, corn 0).
 */
import { describe, expect, test } from "vitest";
import type { EarlierCrop, Plan } from "../../../src/core/model/plan.ts";
import { copyLayout } from "../../../src/core/edits/layout-edits.ts";
import {
  type TrialPlanting,
  bloom,
  check,
  day,
  findingsOf,
  squareAt,
  trialPlan,
  wordsOf,
} from "../../support/trial-plan.ts";

function crop(more: Partial<EarlierCrop>): EarlierCrop {
  return { id: "c1", outline: squareAt(0), kind: "tomato", year: 2026, ...more };
}

/** A seed planting in the first metre of the sheet's x, in 2027, after these crops. */
function after(
  crops: readonly EarlierCrop[],
  planting: Partial<TrialPlanting> = {},
  more: Partial<Plan> = {},
): Plan {
  return trialPlan({ p: { at: 0, kind: "tomato", ...planting } }, [], {
    earlierCrops: crops,
    ...more,
  });
}

const found = (plan: Plan) => findingsOf(plan, "volunteers");

describe("volunteers", () => {
  test("of what it can cross with, grown here last year, are a caution", () => {
    const plan = after([crop({ varietyName: "Old Gate" })]);
    expect(found(plan)).toMatchObject([
      {
        severity: "caution",
        subjects: ["p"],
        landYears: 1,
        source: "cfr-201-76",
        crops: [{ id: "c1", kind: "tomato", year: 2026, varietyName: "Old Gate" }],
      },
    ]);
    const [words] = wordsOf(plan, "volunteers");
    expect(words).toContain("On its ground grew tomato Old Gate in 2026.");
    expect(words).toContain("free of what crosses with tomato for 1 year");
  });

  test.each([
    ["tomato", 1],
    ["mustard", 4],
  ])("count for the land years of %s, %i, and no longer", (kind, years) => {
    const grown = (year: number) => after([crop({ kind, year })], { kind });
    expect(found(grown(2027 - years))).toHaveLength(1);
    expect(found(grown(2027 - years - 1))).toEqual([]);
    expect(found(grown(2027)), "earlier in the same year").toHaveLength(1);
    expect(found(grown(2028)), "still to come").toEqual([]);
  });

  test("are none where the published figure is 0 years", () => {
    expect(found(after([crop({ kind: "sweet-corn" })], { kind: "sweet-corn" }))).toEqual([]);
  });

  test("count on ground it touches, and not beside it", () => {
    expect(found(after([crop({ outline: squareAt(1) })]))).toHaveLength(1);
    expect(found(after([crop({ outline: squareAt(1.01) })]))).toEqual([]);
    const around = { ...squareAt(0), widthM: 9, lengthM: 9 } as EarlierCrop["outline"];
    expect(found(after([crop({ outline: around })]))).toHaveLength(1);
  });

  test("of its own variety are no risk, unless its lots are kept apart", () => {
    const own = [crop({ varietyName: " variety P" })];
    expect(found(after(own))).toEqual([]);
    expect(found(after(own, { keepApart: true }))).toHaveLength(1);
    expect(found(after([crop({})])), "a crop of no known variety").toHaveLength(1);
  });

  test("matter to seed parents only, and only within a crossing group", () => {
    expect(found(after([crop({})], { purpose: "food" }))).toEqual([]);
    expect(found(after([crop({})], { flowering: "cut" }))).toEqual([]);
    expect(found(after([crop({ kind: "beet" })]))).toEqual([]);
  });

  test("are unknown where no land years are published, however long ago", () => {
    const plan = after([crop({ kind: "celery", year: 1990 })], { kind: "celeriac" });
    expect(found(plan)).toMatchObject([{ severity: "unknown", landYears: null, source: null }]);
    expect(wordsOf(plan, "volunteers")[0]).toContain("No figure is known here");
  });

  test("of two tables: the longest years that count it, each named with its column", () => {
    const chard = (year: number, more: Partial<EarlierCrop> = {}, level?: "stock") =>
      found(
        after([crop({ kind: "beet", year, ...more })], {
          kind: "chard",
          ...(level ? { level } : {}),
        }),
      );
    expect(chard(2025)).toMatchObject([
      { severity: "caution", landYears: 2, source: "uk-annex-1" },
    ]);
    expect(chard(2024), "the minimum is kept").toEqual([]);
    expect(chard(2022, { wentToSeed: "yes" }, "stock")).toMatchObject([{ landYears: 5 }]);
    expect(chard(2022, { wentToSeed: "no" }, "stock"), "beet that was eaten: 2 years").toEqual([]);
    expect(chard(2021, { wentToSeed: "yes" }, "stock")).toEqual([]);
    const [words] = wordsOf(
      after([crop({ kind: "beet", wentToSeed: "yes" })], { kind: "chard", level: "stock" }),
      "volunteers",
    );
    expect(words).toContain("beet in 2026 (went to seed)");
    expect(words).toContain("good practice, taken for stock seed");
    const home = wordsOf(after([crop({ kind: "beet" })], { kind: "chard" }), "volunteers");
    expect(home[0]).toContain("its column of the minimum");
  });

  test("a stricter level never asks for less", () => {
    for (const kind of ["chard", "turnip", "pea", "common-bean", "flax", "mustard", "wheat"]) {
      for (let year = 2018; year < 2027; year += 1) {
        const at = (level: "home" | "stock") =>
          found(after([crop({ kind, year, wentToSeed: "yes" })], { kind, level })).length;
        expect([kind, year, at("stock") >= at("home")]).toEqual([kind, year, true]);
      }
    }
  });

  test("of crucifers: what bore no seed does not count where the source says so", () => {
    const mustard = (more: Partial<EarlierCrop>) =>
      found(
        after([crop({ kind: "black-mustard", year: 2025, ...more })], { kind: "black-mustard" }),
      );
    expect(mustard({ wentToSeed: "yes" })).toMatchObject([{ landYears: 2 }]);
    expect(mustard({}), "not known to have borne none").toMatchObject([{ landYears: 2 }]);
    expect(mustard({ wentToSeed: "no" })).toEqual([]);
    // 7 CFR 201.76 counts any stand of mustard (Brassica juncea).
    const juncea = [crop({ kind: "mustard", year: 2025, wentToSeed: "no" })];
    expect(found(after(juncea, { kind: "mustard" }))).toMatchObject([{ landYears: 4 }]);
  });

  test("a row printed for kin asks for years, and never clears", () => {
    const cabbage = (year: number, more: Partial<EarlierCrop> = {}) =>
      found(after([crop({ kind: "kale", year, ...more })], { kind: "cabbage" }));
    expect(cabbage(2025, { wentToSeed: "yes" })).toMatchObject([
      { severity: "caution", landYears: 2, rules: [{ note: "printed for rape and mustards" }] },
    ]);
    expect(cabbage(2023, { wentToSeed: "yes" })).toMatchObject([{ severity: "unknown" }]);
    expect(cabbage(2023, { wentToSeed: "no" }), "eaten").toEqual([]);
  });

  test("roots of last year that bore no seed may flower where they were left", () => {
    const carrot = (year: number) =>
      after([crop({ kind: "carrot", year, wentToSeed: "no" })], { kind: "carrot" });
    expect(found(carrot(2026))).toMatchObject([{ severity: "caution", leftPlants: ["c1"] }]);
    expect(wordsOf(carrot(2026), "volunteers")[0]).toContain("left in the ground may flower");
    expect(found(carrot(2025))).toEqual([]);
    const lettuce = [crop({ kind: "lettuce", wentToSeed: "no" })];
    expect(found(after(lettuce, { kind: "lettuce" })), "an annual").toEqual([]);
  });

  test("of rape count on a rim of 2.157 m round its ground, of others on the ground alone", () => {
    const beside = (kind: string, gapM: number, more: Partial<EarlierCrop> = {}) =>
      after([crop({ kind, outline: squareAt(1 + gapM), ...more })], { kind });
    expect(found(beside("oilseed-rape", 2.15))).toMatchObject([{ within: [{ id: "c1" }] }]);
    expect(wordsOf(beside("oilseed-rape", 2.15), "volunteers")[0]).toContain("99.9 %");
    expect(found(beside("oilseed-rape", 2.16))).toEqual([]);
    expect(found(beside("oilseed-rape", 0.5, { wentToSeed: "no" })), "nothing was shed").toEqual(
      [],
    );
    expect(found(beside("tomato", 0.02))).toEqual([]);
  });

  test("of what was cleared earlier in the same season count as well", () => {
    const bean = (more: Partial<TrialPlanting>, then: Partial<TrialPlanting> = {}) =>
      trialPlan({
        first: {
          at: 0,
          kind: "common-bean",
          purpose: "food",
          bloom: bloom("05-20", "06-10"),
          end: day("2027-08-30"),
          ...more,
        },
        p: {
          at: 0,
          kind: "common-bean",
          start: { method: "sown", date: day("2027-09-01") },
          ...then,
        },
      });
    expect(found(bean({}))).toMatchObject([{ subject: "p", crops: [{ id: "first", year: 2027 }] }]);
    expect(found(bean({ flowering: "cut" }))).toMatchObject([{ subject: "p" }]);
    expect(found(bean({ kind: "lettuce" }))).toEqual([]);
    expect(found(bean({ end: undefined })), "stands there still").toEqual([]);
    const later = { start: { method: "sown", date: day("2027-08-01") } } as const;
    expect(found(bean({}, later)), "not cleared before it").toEqual([]);
  });

  test("are counted from the year the season begins in, also over New Year", () => {
    const season = { name: "2026/27", first: day("2026-09-01"), last: day("2027-05-31") };
    const grown = (year: number) => after([crop({ year })], {}, { season });
    expect(found(grown(2026))).toHaveLength(1);
    expect(found(grown(2025))).toHaveLength(1);
    expect(found(grown(2024))).toEqual([]);
  });

  test("once accepted come back when another crop joins", () => {
    const plan = after([crop({})]);
    const [finding] = found(plan);
    const accepted = [{ finding: finding?.id ?? "", reason: "Hoed", requiredM: null }];
    expect(found({ ...plan, accepted })).toEqual([]);
    const more = [crop({}), crop({ id: "c2", year: 2027 })];
    expect(found({ ...plan, accepted, earlierCrops: more })).toHaveLength(1);
  });

  test("carried forward are the same as on a fresh run, whatever changed", () => {
    const plan = after([crop({})]);
    const before = check(plan);
    const next = { ...plan, earlierCrops: [crop({ id: "c2", outline: squareAt(50) })] };
    expect(check(next, before).findings).toEqual(check(copied(next)).findings);
    expect(check(plan, check(next, before)).findings).toEqual(check(copied(plan)).findings);
  });
});

/** The same plan of other objects, of which nothing is remembered. */
function copied(plan: Plan): Plan {
  return copyLayout("layout-1", "other", "Other").apply(structuredClone(plan));
}
