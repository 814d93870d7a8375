/**
 * Earlier crops on the ground of a seed parent. Land years are those printed in 7 CFR 201.76
 * (tomato 1, rape and mustard 4 for foundation seed, rice 1, corn 0).
 */
import { describe, expect, test } from "vitest";
import type { EarlierCrop, Plan } from "../../../src/core/model/plan.ts";
import { copyLayout } from "../../../src/core/edits/layout-edits.ts";
import {
  type TrialPlanting,
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
    const plan = after([crop({ kind: "beet", year: 1990 })], { kind: "chard" });
    expect(found(plan)).toMatchObject([{ severity: "unknown", landYears: null, source: null }]);
    expect(wordsOf(plan, "volunteers")[0]).toContain("No figure is known here");
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
