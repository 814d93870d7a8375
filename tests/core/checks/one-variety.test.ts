/** Isolation and population agree about what one variety is, and so do files and forms. */
import { describe, expect, test } from "vitest";
import { type Stand, isSameLot, lotsOf } from "../../../src/core/checks/stand.ts";
import { acceptanceOf } from "../../../src/core/checks/acceptance.ts";
import type { Plan } from "../../../src/core/model/plan.ts";
import { checkAsGrown } from "../../../src/core/record/as-grown.ts";
import {
  type TrialTraits,
  bloom,
  day,
  findingsOf,
  layoutOf,
  source,
  squareAt,
  standingsOf,
  trialPlan,
  wordsOf,
} from "../../support/trial-plan.ts";

describe("a variety entered twice", () => {
  // Carrot: 50 seed plants to keep a variety, by its kind; twice 40 are enough, once 40 too few.
  const twice = (second: string, more = {}) =>
    trialPlan({
      p: { at: 0, kind: "carrot", plants: 40, variety: { id: "v1", name: "Long Acre" } },
      q: { at: 2, kind: "carrot", plants: 40, variety: { id: "v2", name: second }, ...more },
    });

  test("is one population and no risk to itself, however its name is written", () => {
    for (const name of ["Long Acre", "LONG  acre", " long acre "]) {
      expect(findingsOf(twice(name), "population"), name).toEqual([]);
      expect(standingsOf(twice(name)), name).toEqual({});
    }
  });

  test("is two populations when a lot is kept apart, as it is two to isolation", () => {
    const apart = twice("Long Acre", { keepApart: true });
    expect(findingsOf(apart, "population").map(({ plants }) => plants)).toEqual([40, 40]);
    expect(new Set(findingsOf(apart, "population").map(({ id }) => id)).size).toBe(2);
    expect(standingsOf(apart)["p<-q"]).toBe("conflict");
  });

  test("is not one with a hybrid of its name", () => {
    const hybrid = trialPlan({
      p: { at: 0, kind: "carrot", variety: { id: "v1", name: "Long Acre" } },
      q: { at: 2, kind: "carrot", variety: { id: "v2", name: "Long Acre", hybrid: true } },
    });
    expect(standingsOf(hybrid)["p<-q"]).toBe("conflict");
  });
});

test.each(["unknown", "Unknown", "?", "???", "--", "Not  known", "unnamed", "n/a"])(
  "two of which nobody knows the name are not one variety: %s",
  (name) => {
    const plan = trialPlan({ p: { at: 0, kind: "carrot", variety: { name } } }, [
      source("n", "carrot", squareAt(5), { varietyName: name }),
    ]);
    expect(standingsOf(plan)["p<-n"]).toBe("conflict");
  },
);

describe("a planting kept for seed and marked as cut", () => {
  const lettuce = (more: TrialTraits) => trialPlan({ a: { at: 0, kind: "lettuce", ...more } });

  test("is told, as nothing is checked for it", () => {
    expect(findingsOf(lettuce({ flowering: "cut" }), "cut-seed")).toHaveLength(1);
    expect(wordsOf(lettuce({ flowering: "cut" }), "cut-seed")[0]).toContain("marked as cut");
    expect(findingsOf(lettuce({}), "cut-seed")).toEqual([]);
    expect(findingsOf(lettuce({ flowering: "cut", purpose: "food" }), "cut-seed")).toEqual([]);
  });

  test("is left alone where it was cut in the field", () => {
    const plan = lettuce({});
    const on = day("2027-06-20");
    const entries: Plan["entries"] = [
      {
        id: "e1",
        on: day("2027-06-10"),
        of: "a",
        what: "cut before bloom",
      },
    ];
    const { result } = checkAsGrown({ ...plan, entries }, layoutOf(plan).id, on);
    expect(result.standById.get("a")?.isSeedParent).toBe(false);
    expect(result.findings.filter(({ check: name }) => name === "cut-seed")).toEqual([]);
  });
});

test("accepted, blooms that dates alone keep apart come back when fewer days lie between", () => {
  const plan = (first: string) =>
    trialPlan({
      a: { at: 0, kind: "carrot", bloom: { ...bloom("06-01", "06-20"), basis: "rule of thumb" } },
      b: { at: 5, kind: "carrot", bloom: { ...bloom(first, "08-20"), basis: "rule of thumb" } },
    });
  const [finding] = findingsOf(plan("07-20"), "unsure-time");
  if (!finding) throw new Error("nothing found");
  const accepted = [acceptanceOf(finding, "layout-1", "we look every week")];
  const open = (first: string) => findingsOf({ ...plan(first), accepted }, "unsure-time").length;
  expect(["07-20", "07-30", "07-04"].map(open)).toEqual([0, 0, 1]);
});

test("numbers of lots tell of any two what is told of the two themselves", () => {
  const keys = [null, "carrot|long acre", "carrot|orchard"];
  const stands = [...keys, ...keys].flatMap((varietyKey) =>
    [false, true].map((keepApart) => ({ varietyKey, keepApart }) as Stand),
  );
  const lots = lotsOf(stands);
  const told = new Set<boolean>();
  for (const [one, a] of stands.entries()) {
    for (const [other, b] of stands.entries()) {
      if (one === other) continue;
      const isOne = lots[one] !== 0 && lots[one] === lots[other];
      expect(isOne).toBe(isSameLot(a, b));
      told.add(isOne);
    }
  }
  expect(told.size).toBe(2);
});
