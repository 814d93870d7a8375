/** Covers: what they need, what they do not stop, and one cage over two that cross. */
import { describe, expect, test } from "vitest";
import { type CheckResult, runChecks } from "../../../src/core/checks/run-checks.ts";
import { moveObjects } from "../../../src/core/edits/move-objects.ts";
import { changePlantings } from "../../../src/core/edits/object-edits.ts";
import type { Layout, Plan, Planting } from "../../../src/core/model/plan.ts";
import {
  type TrialTraits,
  bloom,
  book,
  day,
  findingsOf,
  source,
  squareAt,
  standingsOf,
  trialPlan,
  wordsOf,
} from "../../support/trial-plan.ts";

function one(kind: string, traits: TrialTraits): Plan {
  return trialPlan({ p: { at: 0, kind, ...traits } });
}

describe("cover-care", () => {
  test.each([
    ["carrot", "cage", "no-pollinators"],
    ["carrot", "bags", "no-pollinators"],
    // Umbels, heads of florets and wind pollen are not pollinated flower by flower: common practice.
    ["carrot", "hand", "not-by-hand"],
    ["kale", "hand", "not-by-hand"],
    ["spinach", "hand", "not-by-hand"],
    // Squash taped, maize by ear and tassel, onion umbels brushed: The Manual of Seed Saving.
    ["summer-squash", "hand", null],
    ["maize", "hand", null],
    ["onion", "hand", null],
    ["tomato", "hand", null],
    ["carrot", "none", null],
    ["tomato", "cage", null],
    ["maize", "cage", "wind-passes"],
    ["maize", "bags", null],
  ] as const)("%s under %s: %s", (kind, cover, trouble) => {
    const found = findingsOf(one(kind, { cover }), "cover-care");
    expect(found.map((finding) => finding.trouble)).toEqual(trouble === null ? [] : [trouble]);
  });

  test("says what to do", () => {
    expect(wordsOf(one("carrot", { cover: "cage" }), "cover-care")[0]).toMatch(
      /Let pollinators in and keep it shut/,
    );
    expect(wordsOf(one("maize", { cover: "cage" }), "cover-care")[0]).toMatch(/Bags do stop it/);
  });
});

describe("what around must be cut in time", () => {
  const weed = source("w", "wild-carrot", squareAt(3000), { flowering: "cut" });
  const plan = trialPlan({ p: { at: 0, kind: "carrot" } }, [weed]);
  const near = moveObjects("layout-1", ["p"], 2990, 0).apply(plan);
  const run = (of: Plan, previous?: CheckResult) =>
    runChecks(of, of.layouts[0] as Layout, book, previous);
  const told = ({ findings }: CheckResult) =>
    findings.filter(({ check }) => check === "cover-care");

  // A seed bed dragged beside what is cut rests on the cutting from then on, and no longer once away.
  test("is told while a seed planting is dragged, as by a fresh run", () => {
    const away = run(plan);
    expect(told(away)).toEqual([]);
    const dragged = run(near, away);
    expect(told(dragged)).toHaveLength(1);
    expect(told(dragged)).toEqual(told(run(near)));
    expect(told(run(plan, dragged))).toEqual([]);
  });

  test("and so is a cover that was changed, one that may not be cut any more", () => {
    const before = run(near);
    const covered = (cover: Planting["cover"]) =>
      changePlantings("layout-1", ["p"], { cover }, "").apply(near);
    for (const cover of ["hand", "cage", "none"] as const) {
      expect(told(run(covered(cover), before))).toEqual(told(run(covered(cover))));
    }
    const flowering = { ...near, surroundings: [{ ...weed, flowering: "yes" as const }] };
    expect(told(run(flowering, before))).toEqual([]);
  });
});

describe("shared-cage", () => {
  const carrots = (at: number, p: TrialTraits = {}, q: TrialTraits = p) =>
    trialPlan({ p: { at: 0, kind: "carrot", ...p }, q: { at, kind: "carrot", ...q } });
  const severities = (plan: Plan) =>
    findingsOf(plan, "shared-cage").map(({ severity }) => severity);

  const standings = (plan: Plan) => Object.values(standingsOf(plan));

  test("two caged plots within a metre of each other may stand under one cage", () => {
    for (const at of [1.01, 1.5, 1.99]) {
      expect(severities(carrots(at, { cover: "cage" }))).toEqual(["caution"]);
      expect(standings(carrots(at, { cover: "cage" }))).toEqual(["cover", "cover"]);
    }
    expect(severities(carrots(2, { cover: "cage" }))).toEqual([]);
    expect(wordsOf(carrots(1.5, { cover: "cage" }), "shared-cage")[0]).toContain("0.5 m apart");
  });

  test("a cage parts nothing where two touch or lie in each other, whichever is caged", () => {
    for (const at of [0.5, 1]) {
      for (const plan of [
        carrots(at, { cover: "cage" }),
        carrots(at, { cover: "cage" }, {}),
        carrots(at, {}, { cover: "cage" }),
      ]) {
        expect(standings(plan)).toEqual(["conflict", "conflict"]);
        expect(severities(plan)).toEqual([]);
        expect(wordsOf(plan, "isolation")[0]).toContain("No cage can stand between two");
      }
    }
  });

  test("a cage within a metre of a plot in the open must have its wall between them", () => {
    expect(severities(carrots(1.01, { cover: "cage" }, {}))).toEqual(["caution"]);
    expect(severities(carrots(2, { cover: "cage" }, {}))).toEqual([]);
    const [said] = wordsOf(carrots(1.5, {}, { cover: "cage" }), "shared-cage");
    expect(said).toMatch(/^The cage over .*q has little room beside .*p/i);
  });

  test("a wild plant within or on the edge of a caged plot is in the cage", () => {
    const beside = (x: number) =>
      trialPlan({ p: { at: 0, kind: "carrot", cover: "cage" } }, [
        {
          ...source("s", "wild-carrot", { shape: "point", x, y: 0 }),
          bloom: bloom("07-01", "07-31"),
        },
      ]);
    const told = [0.5, 1, 1.5, 2].map((x) => [...standings(beside(x)), ...severities(beside(x))]);
    expect(told).toEqual([["conflict"], ["conflict"], ["cover", "caution"], ["cover"]]);
  });

  test("bags and tape are on the flowers: nothing to ask where both have them", () => {
    expect(severities(carrots(0.5, { cover: "bags" }))).toEqual([]);
    // The bagged one is safe; the caged one is not, from flowers left open within its cage.
    expect(standingsOf(carrots(0.5, { cover: "bags" }, { cover: "cage" }))).toEqual({
      "p<-q": "cover",
      "q<-p": "conflict",
    });
  });

  test("one variety, and what time or distance parts, may share a cage", () => {
    const same = { cover: "cage", variety: { name: "Long Acre" } } as const;
    expect(severities(carrots(0.5, same))).toEqual([]);
    const late = { cover: "cage", bloom: bloom("09-01", "09-20") } as const;
    expect(severities(carrots(1.5, { cover: "cage" }, late))).toEqual([]);
  });

  test("within one cage a rule of thumb is not taken for certain", () => {
    const start = { method: "sown", date: day("2027-04-15") } as const;
    const sunflowers = (at: number) =>
      trialPlan({
        p: { at: 0, kind: "sunflower", cover: "cage", bloom: null, start },
        q: { at, kind: "sunflower", cover: "cage", bloom: bloom("08-10", "08-31") },
      });
    expect(findingsOf(sunflowers(1.5), "unsure-time")).toHaveLength(1);
    expect(findingsOf(sunflowers(3), "unsure-time")).toEqual([]);
  });

  test("where dates are missing a cage over both tells no more than none", () => {
    const undated = carrots(0.5, { cover: "cage", bloom: null });
    expect(standings(undated)).toEqual(["unknown", "unknown"]);
  });
});
