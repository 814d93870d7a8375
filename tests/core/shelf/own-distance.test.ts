/**
 * Distances typed far below what is published. Figures by hand from 7 CFR 201.76 (tomato, 200 ft
 * foundation seed; sunflower, a mile from wild plants), the manual "Seed saving" (carrot, 500 ft)
 * and a handbook chart (carrot, half a mile), as entered in core/kinds with their sources.
 */
import { describe, expect, test } from "vitest";
import { acceptanceOf } from "../../../src/core/checks/acceptance.ts";
import * as said from "../../../src/core/words/own-distance-words.ts";
import type { Plan } from "../../../src/core/model/plan.ts";
import {
  type TrialPlanting,
  check,
  findingsOf,
  layoutOf,
  source,
  standingsOf,
  trialPlan,
  wordsOf,
} from "../../support/trial-plan.ts";

const FOOT = 0.3048;
const carrot = (more: Partial<TrialPlanting>, plan: Partial<Plan> = {}) =>
  trialPlan({ a: { at: 0, kind: "carrot", ...more } }, [], { level: "home", ...plan });
const told = (plan: Plan) =>
  findingsOf(plan, "own-distance").map(({ subjects, measuredM, requiredM, from }) => [
    ...subjects,
    measuredM,
    requiredM,
    from,
  ]);

describe("a distance of one's own, held against what is published", () => {
  test("far below is told beside the figure and the least one, and stands", () => {
    const plan = trialPlan(
      { a: { at: 0, kind: "carrot", isolationM: 5 }, b: { at: 10, kind: "carrot" } },
      [],
      { level: "home" },
    );
    // Published for home: 500 ft and half a mile; of two the larger is asked.
    expect(told(plan)).toEqual([["a", 5, 2640 * FOOT, "planting"]]);
    expect(standingsOf(plan)).toEqual({ "a<-b": "distance", "b<-a": "conflict" });
    const [words] = wordsOf(plan, "own-distance");
    expect(words).toContain(said.told.planting("5 m", "805 m", "carrot"));
    expect(words).toContain("805 m is published");
    expect(words).toContain("1/2 mile");
    expect(words).toMatch(/The least that is published for home is 153 m\./);
  });

  test.each([
    ["less than half of it, but printed by one", 200, 0],
    ["under the least, and far below", 152, 1],
    ["none at all", 0, 1],
    ["more than is published", 2000, 0],
  ])("%s", (_, isolationM, count) => {
    expect(told(carrot({ isolationM }))).toHaveLength(count);
  });

  test("what is published alone, and what keeps no seed, are left alone", () => {
    expect(told(carrot({}))).toEqual([]);
    expect(told(carrot({ isolationM: 5, purpose: "food" }))).toEqual([]);
    expect(told(carrot({ isolationM: 5, flowering: "cut" }))).toEqual([]);
    expect(told(carrot({ isolationM: 5, variety: { hybrid: true } }))).toEqual([]);
  });

  test("of a variety it is told once for all its plantings, for each level", () => {
    const variety = { id: "v", name: "One", isolationM: 5 };
    const plan = trialPlan({
      a: { at: 0, kind: "carrot", variety },
      b: { at: 5, kind: "carrot", variety },
      c: { at: 9, kind: "carrot", variety, level: "stock" },
    });
    expect(told({ ...plan, level: "home" })).toEqual([
      ["a", "b", 5, 2640 * FOOT, "variety"],
      ["c", 5, 1000, "variety"],
    ]);
  });

  test("a figure picked for gardens does not pass unsaid for stock seed", () => {
    const picked = (level: "home" | "stock") =>
      trialPlan(
        {
          a: {
            at: 0,
            kind: "tomato",
            variety: { figure: "practice-regular", form: "regular" },
          },
        },
        [],
        { level },
      );
    expect(told(picked("home"))).toEqual([]);
    expect(told(picked("stock"))).toEqual([["a", 10 * FOOT, 200 * FOOT, "picked"]]);
  });

  test("beside a wild kind in the plan what its sources ask counts", () => {
    const sunflower = (kind: string) =>
      trialPlan({ a: { at: 0, kind: "sunflower", isolationM: 790 } }, [
        source("w", kind, { shape: "point", x: 900, y: 0 }),
      ]);
    expect(told(sunflower("sunflower"))).toEqual([]);
    expect(told(sunflower("wild-sunflower"))).toEqual([["a", 790, 5280 * FOOT, "planting"]]);
    expect(wordsOf(sunflower("wild-sunflower"), "own-distance")[0]).toContain("footnote 45");
  });

  test("accepted, it comes back when the distance is made shorter, not when longer", () => {
    const plan = carrot({ isolationM: 50 });
    const [finding] = findingsOf(plan, "own-distance");
    if (!finding) throw new Error("nothing found");
    const accepted = [acceptanceOf(finding, layoutOf(plan).id, "hedges all round")];
    const open = (isolationM: number) =>
      findingsOf({ ...carrot({ isolationM }), accepted }, "own-distance").length;
    expect([50, 60, 20].map(open)).toEqual([0, 0, 1]);
  });

  test("a carried run says what a fresh one says", () => {
    const first = check(carrot({ isolationM: 5 }));
    for (const isolationM of [5, 100, 400]) {
      const next = carrot({ isolationM });
      expect(check(next, first).findings).toEqual(check(next).findings);
    }
  });
});
