/** What holds for findings of every check: ids, order, JSON, acceptance. */
import { joinSeedReckoning } from "../../../src/core/checks/seed-lots.ts";
import { seedReckoning } from "../../../src/core/shelf/seed-reckoning.ts";
import { describe, expect, test } from "vitest";
import { acceptanceOf } from "../../../src/core/checks/acceptance.ts";
import { allChecks, describeFinding } from "../../../src/core/checks/all-checks.ts";
import { describeStanding } from "../../../src/core/checks/pair-words.ts";
import { severitySign, severityWord, wordingFor } from "../../../src/core/checks/wording.ts";
import { findingId, countBySeverity } from "../../../src/core/checks/finding.ts";
import type { Bed, Plan, Planting } from "../../../src/core/model/plan.ts";
import { bloom, check, day, layoutOf, squareAt, trialPlan } from "../../support/trial-plan.ts";

const bed: Bed = { id: "b", code: "B01", outline: squareAt(0) };

/** A plan in which every check has something to say. */
function troubledPlan(): Plan {
  const sown = { method: "sown", date: day("2027-08-01") } as const;
  const plan = trialPlan(
    {
      leafy: { at: 0.2, kind: "tomato", bed: "b", plants: 2, variety: { form: "potato-leaf" } },
      plain: { at: 3, kind: "tomato", plants: 100 },
      undated: { at: 5, kind: "tomato", bloom: null },
      late: { at: 400, kind: "common-bean", bloom: null, start: sown },
      husk: { at: 500, kind: "husk-tomato" },
      husk2: { at: 502, kind: "husk-tomato", purpose: "food" },
      flax: { at: 550, kind: "flax", isolationM: undefined },
      flax2: { at: 552, kind: "flax", isolationM: undefined },
      root: { at: 600, kind: "beet", bloom: null, start: sown },
      cross: { at: 700, kind: "tomato", variety: { hybrid: true } },
      caged: { at: 900, kind: "carrot", cover: "cage" },
      caged2: { at: 901.5, kind: "carrot", cover: "cage" },
      bean: { at: 300, kind: "soybean", isolationM: 50, bloom: bloom("08-01", "08-20") },
      bean2: {
        at: 303,
        kind: "soybean",
        isolationM: 50,
        bloom: null,
        start: { method: "sown", date: day("2027-04-01") },
        variety: { bloomDays: [5, 5] },
      },
      squash: { at: 1200, kind: "summer-squash", isolationM: 50 },
      older: {
        at: 1500,
        kind: "lettuce",
        bloom: { first: day("2026-07-01"), last: day("2026-08-01") },
      },
      leaf: { at: 1600, kind: "lettuce", flowering: "first-year" },
      twin: { at: 1700, kind: "tomato", variety: { name: "Twin", form: "potato-leaf" } },
      twin2: { at: 1702, kind: "tomato", variety: { name: "Twin", form: "regular" } },
      misread: { at: 1800, kind: "tomato", variety: { figure: "no-such-figure" } },
      squash2: { at: 1200.5, kind: "winter-squash", isolationM: 50 },
      sparse: { at: 1900, kind: "lettuce", plants: 900, start: sown, lots: ["few"] },
      stale: { at: 2000, kind: "onion", plants: 20, start: sown, lots: ["dead"] },
      worn: { at: 2200, kind: "pea", plants: 40, start: sown, lots: ["g3"] },
      mixed: { at: 2100, kind: "pea", plants: 20, start: sown, lots: ["few"] },
      clubbed: { at: 2200, kind: "kale" },
      rotten: { at: 2300, kind: "leek" },
      cleared: { at: 2400, kind: "dill", end: day("2027-07-02") },
      mown: { at: 2600, kind: "spinach", flowering: "cut" },
      backwards: { at: 2500, kind: "fennel", start: sown, end: day("2027-07-02") },
    },
    [],
    {
      site: { name: "Garden", upBearingDeg: 0, firstAutumnFrost: day("2027-10-01") },
      earlierCrops: [
        { id: "c", outline: squareAt(3), kind: "tomato", year: 2026 },
        { id: "d", outline: squareAt(2200), kind: "cabbage", year: 2025, wentToSeed: "no" },
      ],
      groundMarks: [
        { id: "m", outline: squareAt(2300), disease: "white-rot", seenOn: day("2020-07-01") },
      ],
      lots: [
        {
          id: "few",
          code: "FEW",
          variety: "v-sparse",
          state: "in stock",
          amount: { unit: "seeds", value: 30 },
        },
        { id: "dead", code: "DEAD", variety: "v-stale", state: "in stock", harvestYear: 1990 },
        ...["g0", "g1", "g2", "g3"].map((id, at) => ({
          id,
          code: id.toUpperCase(),
          variety: "v-worn",
          state: "in stock" as const,
          ...(at === 0 ? {} : { grownFrom: [`g${at - 1}`], mayHaveCrossed: true }),
        })),
      ],
    },
  );
  return { ...plan, layouts: [{ ...layoutOf(plan), beds: [bed] }] };
}

describe("in a plan full of trouble", () => {
  // As the command line does, and the window once a plan has lots.
  joinSeedReckoning(seedReckoning);
  const plan = troubledPlan();
  const result = check(plan);

  test("every check finds something", () => {
    const found = new Set(result.findings.map((finding) => finding.check));
    expect(allChecks.map(({ name }) => name).filter((name) => !found.has(name))).toEqual([]);
  });

  test("findings are plain data that JSON keeps", () => {
    expect(JSON.parse(JSON.stringify(result.findings))).toEqual(result.findings);
    expect(JSON.parse(JSON.stringify(result.pairs))).toEqual(result.pairs);
  });

  test("ids are unique, and the same again", () => {
    const ids = result.findings.map((finding) => finding.id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(check(structuredClone(plan)).findings).toEqual(result.findings);
  });

  test("conflicts come first, then cautions, then unknowns, each in the order of the checks", () => {
    const severities = ["conflict", "caution", "unknown"];
    const names = allChecks.map(({ name }) => name);
    const ranks = result.findings.map(
      ({ severity, check: name }) => severities.indexOf(severity) * 100 + names.indexOf(name),
    );
    expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
    expect(countBySeverity(result.findings).conflict).toBeGreaterThan(0);
  });

  test("subjects are sorted and each of them is there", () => {
    const ids = new Set([...result.standById.keys(), "b"]);
    for (const { subjects } of result.findings) {
      expect(subjects).toEqual([...subjects].sort());
      expect(subjects.filter((id) => !ids.has(id))).toEqual([]);
    }
  });

  test("the order of plantings in the plan makes no difference to what is found", () => {
    const layout = layoutOf(plan);
    const turned = {
      ...plan,
      layouts: [{ ...layout, plantings: [...layout.plantings].reverse() }],
    };
    // Of places equally near, the first met is named.
    const found = (some: Plan) => check(some).findings.map(({ where: _place, ...rest }) => rest);
    expect(found(turned)).toEqual(found(plan));
  });

  test("every finding and every pair has words, without a hole in them", () => {
    const wording = wordingFor(plan, layoutOf(plan), (id) => result.standById.get(id));
    const words = [
      ...result.findings.flatMap((finding) => {
        const { title, sentences } = describeFinding(finding, wording);
        expect(sentences.length).toBeGreaterThan(0);
        return [title, ...sentences];
      }),
      ...result.pairs.map((pair) => describeStanding(pair, wording)),
    ];
    for (const text of words) {
      expect(text).not.toMatch(/undefined|null|NaN|Infinity|\[object|\(\)| {2}/);
      expect(text.trim()).not.toBe("");
    }
  });

  test("a severity is a sign and a word, all different", () => {
    expect(new Set(Object.values(severitySign)).size).toBe(3);
    expect(new Set(Object.values(severityWord)).size).toBe(3);
  });
});

test("an id is the check and its sorted subjects", () => {
  expect(findingId("isolation", ["q", "B2", "a"])).toBe("isolation|B2|a|q");
  expect(findingId("safety", [], "bitter")).toBe("safety|bitter");
});

describe("an accepted finding", () => {
  const base = trialPlan({
    p: { at: 0, kind: "tomato" },
    q: { at: 2, kind: "tomato", purpose: "food" },
  });
  const [finding] = check(base).findings;
  if (!finding) throw new Error("nothing found");
  const accepted = {
    ...base,
    accepted: [acceptanceOf(finding, "layout-1", "We can live with it.")],
  };

  const withPlanting = (plan: Plan, id: string, changes: Partial<Planting>): Plan => ({
    ...plan,
    layouts: [
      {
        ...layoutOf(plan),
        plantings: layoutOf(plan).plantings.map((planting) =>
          planting.id === id ? { ...planting, ...changes } : planting,
        ),
      },
    ],
  });

  test("stays away, and is kept on its own list", () => {
    expect(check(accepted).findings).toEqual([]);
    expect(check(accepted).accepted).toEqual([finding]);
  });

  test("stays away while only the measured distance grows", () => {
    expect(check(withPlanting(accepted, "q", { outline: squareAt(2.5) })).findings).toEqual([]);
  });

  test("comes back when the required distance changes", () => {
    expect(check(withPlanting(accepted, "p", { isolationM: 6 })).findings).toHaveLength(1);
    const atStock = check({ ...accepted, level: "stock" }).findings;
    expect(atStock.map(({ check: name }) => name)).toEqual(["isolation", "safety"]);
  });

  test("about numbers stays accepted as a variety is planted on, until more plants are needed", () => {
    const plan = trialPlan({
      p: { at: 0, kind: "carrot", plants: 40 },
      q: { at: 9, kind: "lettuce", purpose: "food" },
    });
    const short = check(plan).findings.find(({ check: name }) => name === "population");
    if (!short) throw new Error("no shortfall");
    const lived: Plan = {
      ...plan,
      accepted: [acceptanceOf(short, "layout-1", "")],
    };
    expect(check(lived).accepted).toHaveLength(1);
    const more = withPlanting(lived, "q", { variety: "v-p", plants: 2, purpose: "seed" });
    expect(check(more).accepted).toHaveLength(1);
    const tooFew = withPlanting(lived, "p", { plants: 3 });
    expect(check(tooFew).findings.map(({ check: name }) => name)).toEqual(["population"]);
  });

  test("about frost comes back when the frost date changes", () => {
    const start = { method: "sown", date: day("2027-08-01") } as const;
    const plan = (frost: string, entries: Plan["accepted"]): Plan => ({
      ...trialPlan({ p: { at: 0, kind: "common-bean", bloom: null, start } }),
      site: { name: "Garden", upBearingDeg: 0, firstAutumnFrost: day(frost) },
      accepted: entries,
    });
    const { findings } = check(plan("2027-10-01", []));
    expect(findings.map(({ id }) => id)).toContain("late-seed|p|2027-10-01");
    const lived = findings.map((each) => acceptanceOf(each, "layout-1", ""));
    expect(check(plan("2027-10-01", lived)).findings).toEqual([]);
    expect(check(plan("2027-09-20", lived)).findings.map(({ id }) => id)).toEqual([
      "late-seed|p|2027-09-20",
    ]);
  });

  test("has an id short enough to keep, however many plantings it is about", () => {
    const variety = { id: "v", name: "Long Acre" };
    const plan = trialPlan(
      Object.fromEntries(
        Array.from({ length: 60 }, (_, index) => [
          `a-planting-with-a-rather-long-id-${index}`,
          { at: index * 2, kind: "carrot", variety, plants: 0 },
        ]),
      ),
    );
    expect(check(plan).findings.length).toBeGreaterThan(0);
    for (const { id } of check(plan).findings) expect(id.length).toBeLessThanOrEqual(400);
  });
});
