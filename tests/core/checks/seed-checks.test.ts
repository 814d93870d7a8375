/** Checks of single plantings: numbers, frost, first years, hybrids, covers, safety. */
import { describe, expect, test } from "vitest";
import type { Plan, Variety } from "../../../src/core/model/plan.ts";
import {
  type TrialPlanting,
  type TrialTraits,
  bloom,
  book,
  check,
  day,
  findingsOf,
  source,
  standingsOf,
  trialPlan,
  wordsOf,
} from "../../support/trial-plan.ts";

function one(kind: string, traits: TrialTraits, more: Partial<Plan> = {}): Plan {
  return trialPlan({ p: { at: 0, kind, ...traits } }, [], more);
}

describe("population", () => {
  const { viable, maintenance } = book.kind("carrot")?.population ?? {};
  const few = viable?.value ?? 0;
  const enough = maintenance?.value ?? 0;

  test("has two floors, each with its source", () => {
    expect(few).toBeGreaterThan(1);
    expect(enough).toBeGreaterThan(few);
    const found = (plants: number) => findingsOf(one("carrot", { plants }), "population");
    expect(found(few - 1)).toMatchObject([
      { floor: "viable", needed: few, plants: few - 1, source: viable?.source },
    ]);
    expect(found(few)).toMatchObject([{ floor: "maintenance", needed: enough, plants: few }]);
    expect(found(enough)).toEqual([]);
  });

  test("adds up the plantings of one variety", () => {
    const variety: Partial<Variety> = { id: "v", name: "Long Acre" };
    const half = { kind: "carrot", variety, plants: Math.ceil(enough / 2) };
    const both = trialPlan({ p: { at: 0, ...half }, q: { at: 2, ...half } });
    expect(findingsOf(both, "population")).toEqual([]);
    const short = trialPlan({ p: { at: 0, ...half }, q: { at: 2, ...half, plants: 1 } });
    expect(findingsOf(short, "population")).toMatchObject([
      { subjects: ["p", "q"], plants: half.plants + 1 },
    ]);
  });

  test("says who advises how many, what this season loses, and what its line lost before", () => {
    const lots = [
      { id: "a", code: "A", variety: "v-p", state: "in stock" as const },
      {
        id: "b",
        code: "B",
        variety: "v-p",
        state: "in stock" as const,
        grownFrom: ["a"],
        from: { what: "own" as const, plants: 5, pollenPlants: 5 },
      },
    ];
    const [words] = wordsOf(one("kale", { plants: 10, lots: ["b"] }, { lots }), "population");
    expect(words).toContain("Variety p: 10 of 20 seed plants");
    expect(words).toMatch(
      /Gene banks grow 100 plants of kale or more \(Brassica production.*; handbooks advise 20/,
    );
    // 1/(2 x 10), and 1 - 0.9 x 0.95.
    expect(words).toMatch(
      /this season would lose 5 % .*lost 10 % in 1 generation; with this season 15 %/,
    );
    expect(words).not.toMatch(/memory/);
  });

  test("names handbooks first for what selfs, and counts its plants as half", () => {
    const [words] = wordsOf(one("tomato", { plants: 4 }), "population");
    expect(words).toMatch(/Handbooks advise 10 plants of tomato or more.*gene banks grow 7/);
    expect(words).toMatch(/4 plants, in effect 2\.2/);
  });

  test("tells of no loss where pollen comes from plants of the grower's choice", () => {
    const [words] = wordsOf(one("summer-squash", { plants: 3, cover: "hand" }), "population");
    expect(words).toMatch(/hangs on how many plants give pollen/);
  });

  test("leaves out what is not kept for seed", () => {
    expect(findingsOf(one("carrot", { plants: 1, purpose: "food" }), "population")).toEqual([]);
    expect(findingsOf(one("carrot", { plants: 1, flowering: "first-year" }), "population")).toEqual(
      [],
    );
  });

  test("says nothing of plantings without a count", () => {
    expect(findingsOf(one("carrot", {}), "population")).toEqual([]);
  });
});

describe("late-seed", () => {
  const sown = (date: string, frost: string | null) =>
    one(
      "tomato",
      {
        bloom: null,
        start: { method: "sown", date: day(date) },
        variety: { sownToFlower: [60, 80], bloomDays: [30, 40] },
      },
      {
        site: {
          name: "Garden",
          upBearingDeg: 0,
          ...(frost === null ? {} : { firstAutumnFrost: day(frost) }),
        },
      },
    );

  test("says when seed would ripen after the frost given, and nothing without one", () => {
    const ripe = check(sown("2027-05-01", null)).standById.get("p")?.ripe;
    if (!ripe) throw new Error("no ripe seed");
    expect(findingsOf(sown("2027-05-01", null), "late-seed")).toEqual([]);
    expect(findingsOf(sown("2027-05-01", "2027-12-01"), "late-seed")).toEqual([]);
    expect(findingsOf(sown("2027-07-01", "2027-10-01"), "late-seed")).toMatchObject([
      { subject: "p", severity: "caution", frost: day("2027-10-01"), ripeLatest: ripe.latest + 61 },
    ]);
  });
});

describe("late-seed has two ways out", () => {
  const words = (kind: string) =>
    wordsOf(
      one(
        kind,
        { bloom: bloom("09-01", "09-20") },
        { site: { name: "Garden", upBearingDeg: 0, firstAutumnFrost: day("2027-10-08") } },
      ),
      "late-seed",
    )[0];

  // Park and others 2015: 92 % after 20 days in the cut fruit, under half without.
  test("fruit is cut and rested", () => {
    expect(words("watermelon")).toMatch(
      /Cut the fruit before frost.*20 days in the cut fruit 92 %/,
    );
    expect(words("tomato")).toMatch(/Cut the fruit before frost.*common practice/);
  });

  test("dry seed is not, and what frost does to it stands there where it was measured", () => {
    expect(words("common-bean")).toMatch(/does not ripen once it is cut green/);
    expect(words("common-bean")).not.toMatch(/rest it/);
    expect(words("soybean")).toMatch(/-2 °C/);
  });
});

test("biennial: sown in place this season it will not flower in it", () => {
  const start = { method: "sown", date: day("2027-04-10") } as const;
  expect(findingsOf(one("beet", { bloom: null, start }), "biennial")).toMatchObject([
    { subject: "p", severity: "caution" },
  ]);
  const noBiennial = (traits: TrialTraits, kind = "beet") =>
    expect(findingsOf(one(kind, traits), "biennial")).toEqual([]);
  noBiennial({ bloom: null, start: { ...start, method: "transplanted" } });
  noBiennial({ bloom: null, start: { ...start, date: day("2026-07-10") } });
  noBiennial({ bloom: null, start, flowering: "first-year" });
  noBiennial({ start });
  noBiennial({ bloom: null, start }, "tomato");
  const raised = { method: "transplanted", date: day("2027-04-21") } as const;
  const glass = { ...raised, sownUnderGlass: day("2027-03-01") };
  expect(findingsOf(one("kale", { bloom: null, start: glass }), "biennial")).toHaveLength(1);
  expect(findingsOf(one("kale", { bloom: null, start: raised }), "biennial")).toEqual([]);
});

test("hybrid-seed: a hybrid kept for seed, not one that is eaten", () => {
  const hybrid = { variety: { hybrid: true } };
  expect(findingsOf(one("tomato", hybrid), "hybrid-seed")).toMatchObject([
    { subject: "p", severity: "caution" },
  ]);
  expect(findingsOf(one("tomato", { ...hybrid, purpose: "food" }), "hybrid-seed")).toEqual([]);
  expect(findingsOf(one("tomato", {}), "hybrid-seed")).toEqual([]);
});

test("safety: each caution once, with all plantings kept for seed that it is about", () => {
  const plan = trialPlan({
    p: { at: 0, kind: "summer-squash", bloom: bloom("07-01", "07-02") },
    q: { at: 5, kind: "summer-squash", bloom: bloom("08-01", "08-02") },
    r: { at: 9, kind: "summer-squash", purpose: "food" },
  });
  const found = findingsOf(plan, "safety").filter(({ caution }) => caution === "bitter-cucurbits");
  expect(found).toMatchObject([
    { id: "safety|bitter-cucurbits", subjects: ["p", "q"], severity: "caution" },
  ]);
  expect(findingsOf(one("lettuce", {}), "safety")).toEqual([]);
});

describe("an annual marked as in its first year", () => {
  const marked = (kind: string) =>
    trialPlan({
      p: { at: 0, kind },
      q: { at: 1.5, kind, purpose: "food", flowering: "first-year" },
    });

  test("flowers all the same, and is told", () => {
    expect(standingsOf(marked("lettuce"))).toEqual({ "p<-q": "conflict" });
    const [words] = wordsOf(marked("lettuce"), "annual-first-year");
    expect(words).toContain("is an annual and flowers in its first year");
  });

  test("is nothing to tell of a biennial, nor of a perennial", () => {
    for (const kind of ["carrot", "chives"]) {
      expect(findingsOf(marked(kind), "annual-first-year"), kind).toEqual([]);
      expect(standingsOf(marked(kind)), kind).toEqual({});
    }
  });

  test("next door flowers as well", () => {
    const next = source(
      "s",
      "lettuce",
      { shape: "point", x: 2, y: 0.5 },
      { flowering: "first-year" },
    );
    const plan = trialPlan({ p: { at: 0, kind: "lettuce" } }, [next]);
    expect(standingsOf(plan)).toEqual({ "p<-s": "conflict" });
    expect(findingsOf(plan, "annual-first-year")).toMatchObject([{ subject: "s" }]);
  });
});

describe("the seed list", () => {
  const tomatoes = (first: object, second: object, more: Partial<TrialPlanting> = {}) =>
    trialPlan({
      p: { at: 0, kind: "tomato", variety: { id: "v1", name: "Old Ferry", ...first } },
      q: { at: 1.5, kind: "tomato", variety: { id: "v2", name: "Old Ferry", ...second }, ...more },
    });
  const [usual, other] = (book.kind("tomato")?.forms ?? []).map(({ id }) => ({ form: id }));

  test("tells of two flower forms under one name, for then nothing is checked between them", () => {
    const plan = tomatoes({ ...usual }, { ...other });
    expect(standingsOf(plan)).toEqual({});
    expect(findingsOf(plan, "two-forms")).toMatchObject([{ subjects: ["p", "q"] }]);
    for (const same of [
      tomatoes({ ...usual }, { ...usual }),
      tomatoes({ ...usual }, {}),
      tomatoes({ ...usual }, { ...other }, { keepApart: true }),
      tomatoes({ ...usual }, { ...other, name: "New Ferry" }),
    ]) {
      expect(findingsOf(same, "two-forms")).toEqual([]);
    }
  });

  test("tells of a figure and of a form that the kind does not have", () => {
    const plan = tomatoes({ figure: "us-certifed" }, { form: "potatoleaf" });
    expect(findingsOf(plan, "unknown-choice")).toMatchObject([
      { variety: "v1", severity: "unknown", named: [{ field: "figure", id: "us-certifed" }] },
      { variety: "v2", named: [{ field: "form", id: "potatoleaf" }] },
    ]);
    expect(wordsOf(plan, "unknown-choice")[0]).toContain('"us-certifed", is none that is listed');
    const [figure] = book.kind("tomato")?.isolation ?? [];
    const known = tomatoes({ figure: figure?.id }, { ...usual });
    expect(findingsOf(known, "unknown-choice")).toEqual([]);
  });
});

describe("mother-lot", () => {
  const chain = (length: number, first: object = {}) =>
    Array.from({ length }, (_, at) => ({
      id: `g${at}`,
      code: `G${at}`,
      variety: "v-p",
      state: "in stock" as const,
      ...(at === 0 ? first : { grownFrom: [`g${at - 1}`] }),
    }));
  const found = (length: number, first?: object) =>
    findingsOf(
      one("pea", { plants: 40, lots: [`g${length - 1}`] }, { lots: chain(length, first) }),
      "mother-lot",
    );

  // Rao 2006, Crop Genebank Knowledge Base: at most three cycles from the original stock.
  test("three growings-out are allowed, the fourth is told, with the lot to go back to", () => {
    expect(found(3)).toEqual([]);
    expect(found(4)).toMatchObject([{ subject: "p", cycles: 4, code: "G3", motherCode: "G0" }]);
  });

  test("nothing is told where there is nothing to go back to", () => {
    expect(found(4, { state: "used up" })).toEqual([]);
    expect(found(5, { state: "used up" })).toMatchObject([{ cycles: 4, motherCode: "G1" }]);
  });
});
