/** Isolation and population agree about what one variety is, and so do files and forms. */
import { describe, expect, test } from "vitest";
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
