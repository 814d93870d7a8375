/**
 * Ground that keeps plants and harvest apart. 7 CFR 201.76 footnote 23 says that 0 ft is enough
 * space to prevent mechanical mixing; Oklahoma reads it as 10 ft for cowpea.
 */
import { describe, expect, test } from "vitest";
import { changePlantings } from "../../../src/core/edits/object-edits.ts";
import type { Plan, Surrounding } from "../../../src/core/model/plan.ts";
import { JULY, check, pairsOf, squareAt, trialPlan, wordsOf } from "../../support/trial-plan.ts";

const mixing = (plan: Plan) => check(plan).findings.filter((finding) => finding.check === "mixing");

/** Two plantings whose outlines lie so many metres apart; less than 0: they lie in each other. */
function two(kind: string, apartM: number, more: Partial<Plan> = {}): Plan {
  return trialPlan({ p: { at: 0, kind }, q: { at: 1 + apartM, kind } }, [], more);
}

describe("a published 0 is no licence to touch", () => {
  test.each(["soybean", "wheat", "flax", "mung-bean", "peanut", "barley", "oat", "proso-millet"])(
    "%s at 0, 1 and 3 m: caution; at 3.1 m nothing",
    (kind) => {
      for (const apartM of [0, 1, 3]) {
        expect(mixing(two(kind, apartM))).toMatchObject([
          { severity: "caution", subjects: ["p", "q"], cause: "published zero" },
        ]);
      }
      expect(mixing(two(kind, 3.1))).toEqual([]);
    },
  );

  test("lying in each other is a conflict", () => {
    expect(mixing(two("wheat", -0.5))).toMatchObject([{ severity: "conflict", isOverlap: true }]);
  });

  test("the source's own words stand where it has any", () => {
    expect(wordsOf(two("wheat", 1), "mixing").join(" ")).toContain(
      "ears must not be able to touch",
    );
    expect(wordsOf(two("flax", 1), "mixing").join(" ")).toContain("mechanical mixing");
  });

  test("a typed 0, one population and unlike kinds are left alone", () => {
    const typed = trialPlan({
      p: { at: 0, kind: "flax", isolationM: 0 },
      q: { at: 1, kind: "flax", isolationM: 0 },
    });
    expect(mixing(typed)).toEqual([]);
    const one = { name: "Blue" };
    const same = trialPlan({
      p: { at: 0, kind: "flax", variety: one },
      q: { at: 1, kind: "flax", variety: one },
    });
    expect(mixing(same)).toEqual([]);
    const unlike = trialPlan({ p: { at: 0, kind: "flax" }, q: { at: 1, kind: "wheat" } });
    expect(mixing(unlike)).toEqual([]);
  });

  test("in a large group nothing is missed", () => {
    const plan = trialPlan(
      Object.fromEntries(
        Array.from({ length: 100 }, (_, place) => [`p${place}`, { at: place * 3, kind: "flax" }]),
      ),
    );
    // Each stands 2 m from the next and 5 m from the one after.
    expect(mixing(plan)).toHaveLength(99);
  });
});

describe("beside stock seed", () => {
  const neighbour = (at: number): Surrounding => ({
    id: "n",
    label: "Next door",
    what: "pollen",
    kind: "tomato",
    varietyName: "Variety p",
    outline: squareAt(at),
    flowering: "yes",
    cover: "none",
    bloom: JULY,
  });
  const garden = (at: number, level: Plan["level"]) =>
    trialPlan({ p: { at: 0, kind: "tomato" } }, [neighbour(at)], { level });

  // Footnote 25: half of 200 ft between classes of one variety.
  test("a neighbour of the same name wants half the law's distance", () => {
    expect(mixing(garden(31, "stock"))).toMatchObject([
      { severity: "conflict", cause: "same name", requiredM: 30.48 },
    ]);
    expect(mixing(garden(32, "stock"))).toEqual([]);
    expect(mixing(garden(2, "home"))).toEqual([]);
  });

  test("the conflict goes when the last stock planting becomes one for sale, and returns", () => {
    const plan = garden(20, "sale");
    const leveled = (level: Plan["level"]) =>
      changePlantings("layout-1", ["p"], { level }, "Level").apply(plan);
    const stock = leveled("stock");
    const before = check(stock);
    expect(mixing(stock)).toHaveLength(1);
    const after = check(leveled("sale"), before);
    expect(after.findings).toEqual(check(leveled("sale")).findings);
    expect(check(stock, after).findings).toEqual(before.findings);
  });

  test("where the law is silent a strip is advised", () => {
    const plan = trialPlan(
      {
        p: { at: 0, kind: "kale", variety: { name: "Same" } },
        q: { at: 3, kind: "kale", variety: { name: "Same" } },
      },
      [],
      { level: "stock" },
    );
    expect(mixing(plan)).toMatchObject([{ severity: "caution", cause: "same name" }]);
  });
});

describe("wild plants are kept farther, unasked", () => {
  // 7 CFR 201.76 footnote 45; ICAR on carrot; Directive 2002/55/EC on beet.
  test.each([
    ["sunflower", "wild-sunflower", "sale", 900, 1609.344],
    ["carrot", "wild-carrot", "home", 160, 1000],
    ["lettuce", "prickly-lettuce", "home", 6, 40],
    ["radish", "wild-radish", "home", 600, 804.672],
  ] as const)("%s from %s at %s, %d m: conflict, %d m asked", (kind, wild, level, at, asked) => {
    const plan = trialPlan(
      { p: { at: 0, kind }, q: { at: 1 + at, kind: wild, purpose: "other" } },
      [],
      { level },
    );
    const pair = pairsOf(plan).get("p<-q");
    expect(pair).toMatchObject({ standing: "conflict" });
    expect(pair?.requiredM).toBeCloseTo(asked, 6);
    expect(pair?.requirement?.increase).toBeDefined();
    expect(wordsOf(plan, "isolation").join(" ")).toContain("from this wild kind");
  });

  test("a distance typed by hand stands", () => {
    const plan = trialPlan({
      p: { at: 0, kind: "carrot", isolationM: 100 },
      q: { at: 161, kind: "wild-carrot", purpose: "other" },
    });
    expect(pairsOf(plan).get("p<-q")?.standing).toBe("distance");
  });
});

describe("purity never weakens", () => {
  test.each(["rocket", "parsnip", "basil", "quinoa"])(
    "%s at 30 m is a conflict at every level",
    (kind) => {
      for (const level of ["home", "sale", "stock"] as const) {
        expect(pairsOf(two(kind, 30, { level })).get("p<-q")?.standing).toBe("conflict");
      }
    },
  );

  test("beyond a laxer level's figure it is unknown, and says what is kept", () => {
    const plan = two("basil", 60, { level: "stock" });
    expect(pairsOf(plan).get("p<-q")?.standing).toBe("unknown");
    expect(wordsOf(plan, "missing-figure").join(" ")).toContain(
      "whether that is enough is not known",
    );
  });

  test("a tomato whose form is not said is asked for it", () => {
    expect(wordsOf(two("tomato", 4), "isolation").join(" ")).toContain("say which it is");
  });
});
