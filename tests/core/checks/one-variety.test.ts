/** Isolation and population agree about what one variety is, and so do files and forms. */
import { describe, expect, test } from "vitest";
import { type Stand, isSameLot, lotsOf } from "../../../src/core/checks/stand.ts";
import { findingsOf, standingsOf, trialPlan } from "../../support/trial-plan.ts";

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
