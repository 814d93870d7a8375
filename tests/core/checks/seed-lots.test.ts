import { describe, expect, test } from "vitest";
import type { Lot, Plan } from "../../../src/core/model/plan.ts";
import { check, day, findingsOf, layoutOf, trialPlan } from "../../support/trial-plan.ts";
import { describeFinding } from "../../../src/core/checks/all-checks.ts";
import { wordingFor } from "../../../src/core/checks/wording.ts";
import { moveObjects } from "../../../src/core/edits/move-objects.ts";

const lot = (id: string, more: Partial<Lot>): Lot => ({
  id,
  code: id.toUpperCase(),
  variety: "v-a",
  state: "in stock",
  ...more,
});
const tested = (sprouted: number) => [{ id: "t1", date: day("2027-03-01"), sown: 100, sprouted }];
const start = { method: "sown" as const, date: day("2027-04-01") };

function plan(
  lots: readonly Lot[],
  plantingLots?: readonly string[],
  more: Partial<Plan> = {},
): Plan {
  return {
    ...trialPlan({
      a: {
        at: 0,
        kind: "lettuce",
        plants: 50,
        start,
        ...(plantingLots ? { lots: plantingLots } : {}),
      },
      b: { at: 90, kind: "pea", plants: 50, start },
    }),
    lots,
    ...more,
  };
}

const namesOf = (one: Plan) =>
  check(one)
    .findings.map((finding) => finding.check)
    .filter((name) => ["short-of-seed", "old-seed", "lot-of-other-variety"].includes(name));

function words(one: Plan): readonly string[] {
  const result = check(one);
  const wording = wordingFor(one, layoutOf(one), (id) => result.standById.get(id));
  return result.findings
    .filter(({ check: name }) =>
      ["short-of-seed", "old-seed", "lot-of-other-variety"].includes(name),
    )
    .flatMap((finding) => describeFinding(finding, wording).title);
}

describe("short-of-seed", () => {
  test("says how many plants there is no seed for, and the seeds they take", () => {
    const short = plan([lot("l", { tests: tested(90), amount: { unit: "seeds", value: 60 } })]);
    const [finding] = findingsOf(short, "short-of-seed");
    expect(finding).toMatchObject({ severity: "caution", subjects: ["a"], plants: 50 });
    expect(finding?.missingPlants).toBeGreaterThan(15);
    expect(finding?.missingPlants).toBeLessThan(30);
    expect(words(short)).toEqual(["Seed of Variety a does not reach"]);
  });

  test("is silent with enough, with no count, and with no shelf at all", () => {
    expect(
      namesOf(plan([lot("l", { tests: tested(90), amount: { unit: "g", value: 3 } })])),
    ).toEqual([]);
    expect(namesOf(plan([lot("l", { tests: tested(90) })]))).toEqual([]);
    expect(namesOf(plan([]))).toEqual([]);
  });

  test("counts lots that are used up or discarded as nothing, named or not", () => {
    for (const state of ["used up", "discarded"] as const) {
      const gone = lot("l", { tests: tested(90), amount: { unit: "g", value: 3 }, state });
      expect(namesOf(plan([gone]))).toEqual(["short-of-seed"]);
      expect(namesOf(plan([gone], ["l"]))).toEqual(["short-of-seed"]);
    }
  });

  test("follows the lot that is named, however much lies beside it", () => {
    const lots = [
      lot("small", { tests: tested(90), amount: { unit: "seeds", value: 5 } }),
      lot("big", { tests: tested(90), amount: { unit: "g", value: 50 } }),
    ];
    expect(namesOf(plan(lots, ["small"]))).toEqual(["short-of-seed"]);
    expect(namesOf(plan(lots, ["small", "big"]))).toEqual([]);
  });
});

describe("old-seed", () => {
  const old = (sprouted: number) => plan([lot("l", { tests: tested(sprouted) })], ["l"]);

  test("speaks only where even the best edge lies under the standard of 80 %", () => {
    expect(findingsOf(old(60), "old-seed")).toMatchObject([
      { lot: "l", subjects: ["a"], standard: 0.8, severity: "caution" },
    ]);
    expect(findingsOf(old(78), "old-seed")).toEqual([]);
    expect(findingsOf(old(95), "old-seed")).toEqual([]);
    expect(words(old(60))).toEqual(["Lot L of Variety a may hardly come up"]);
  });

  test("looks at the day of sowing: a lot good today is old three years on", () => {
    const later = plan([lot("l", { tests: tested(95) })], ["l"]);
    const [first, ...rest] = later.layouts[0]?.plantings ?? [];
    if (!first) throw new Error("no planting");
    const moved: Plan = {
      ...later,
      layouts: [
        {
          ...layoutOf(later),
          plantings: [{ ...first, start: { method: "sown", date: day("2042-04-01") } }, ...rest],
        },
      ],
    };
    expect(findingsOf(moved, "old-seed")).toHaveLength(1);
  });

  test("leaves roots alone that are set out in their second year", () => {
    const roots: Plan = {
      ...trialPlan({
        a: {
          at: 0,
          kind: "beet",
          lots: ["l"],
          start: { method: "transplanted", date: day("2027-04-01") },
        },
      }),
      lots: [lot("l", { tests: tested(5) })],
    };
    expect(namesOf(roots)).toEqual([]);
  });
});

describe("lot-of-other-variety", () => {
  test("names the planting, the lot and both varieties", () => {
    const wrong = plan([lot("l", { variety: "v-b", tests: tested(95) })], ["l"]);
    expect(findingsOf(wrong, "lot-of-other-variety")).toMatchObject([
      { subjects: ["a"], code: "L", lotVariety: "Variety b", varietyName: "Variety a" },
    ]);
    expect(words(wrong)[0]).toContain("is sown from a lot of Variety b");
  });

  test("is silent for its own, and for two entries of one kind and name", () => {
    expect(namesOf(plan([lot("l", { tests: tested(95) })], ["l"]))).toEqual([]);
    const twins = plan([lot("l", { variety: "v-c", tests: tested(95) })], ["l"]);
    const same = { id: "v-c", name: " variety A", kind: "lettuce" };
    expect(namesOf({ ...twins, varieties: [...twins.varieties, same] })).toEqual([]);
  });
});

test("after a move the findings are those of a fresh run", () => {
  const short = plan([lot("l", { tests: tested(60), amount: { unit: "seeds", value: 20 } })]);
  const before = check(short);
  const moved = moveObjects("layout-1", ["a"], 3, 0).apply(short);
  expect(check(moved, before).findings).toEqual(check(moved).findings);
});
