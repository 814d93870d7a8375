import { describe, expect, test } from "vitest";
import { measuredToPoint, unaskedAround } from "../../../src/core/fieldwork/unasked-around.ts";
import { pointWords, unaskedWords } from "../../../src/core/fieldwork/unasked-words.ts";
import type { Plan } from "../../../src/core/model/plan.ts";
import { type TrialTraits, check, source, trialPlan } from "../../support/trial-plan.ts";

const told = (plan: Plan) =>
  unaskedAround(check(plan)).map(({ kinds, wild, metres }) => ({
    kinds: kinds.map(({ id }) => id),
    wild: wild.map(({ id }) => id),
    metres,
  }));
const one = (kind: string, traits: TrialTraits = {}, around: Plan["surroundings"] = []) =>
  told(trialPlan({ p: { at: 0, kind, ...traits } }, around));
const far = { shape: "point", x: 900, y: 0 } as const;

describe("pollen around that nothing is said of", () => {
  // 1000 m from wild carrot, a contaminant in Directive 2002/55/EC's strictest row; see figures.md.
  test("a lone carrot is clear of nothing that is entered: wild carrot is to be looked for", () => {
    expect(one("carrot")).toEqual([{ kinds: ["carrot"], wild: ["wild-carrot"], metres: 1000 }]);
  });

  test("whatever is entered of its group, however far, answers; of another group it does not", () => {
    expect(one("carrot", {}, [source("s", "carrot", far)])).toEqual([]);
    expect(one("carrot", {}, [source("s", "beet", far)])).toHaveLength(1);
  });

  test("what is bagged, not kept for seed or needs less than lies between is asked nothing", () => {
    expect(one("carrot", { cover: "cage" })).toEqual([]);
    expect(one("carrot", { purpose: "food" })).toEqual([]);
    expect(one("common-bean")).toEqual([]);
    // A cage keeps no wind off.
    expect(one("beet", { cover: "cage" })).toHaveLength(1);
  });

  test("a planting well inside the beds reaches less far beyond them", () => {
    const inside = (isolationM: number) =>
      told(
        trialPlan({
          west: { at: -100, kind: "okra", isolationM: 1 },
          p: {
            at: 0,
            kind: "pepper",
            isolationM,
            outline: { shape: "rectangle", x: 0, y: 0, widthM: 1, lengthM: 1, turnDeg: 0 },
          },
          north: {
            at: 0,
            kind: "okra",
            isolationM: 1,
            outline: { shape: "rectangle", x: 0, y: 100, widthM: 1, lengthM: 1, turnDeg: 0 },
          },
          south: {
            at: 0,
            kind: "okra",
            isolationM: 1,
            outline: { shape: "rectangle", x: 0, y: -100, widthM: 1, lengthM: 1, turnDeg: 0 },
          },
          east: { at: 100, kind: "okra", isolationM: 1 },
        }),
      ).map(({ kinds }) => kinds);
    expect(inside(105)).toEqual([]);
    expect(inside(115)).toEqual([["pepper"]]);
  });

  test("the farthest first, and what no figure tells before all", () => {
    const plan = trialPlan({
      a: { at: 0, kind: "radish" },
      b: { at: 9, kind: "husk-tomato" },
      c: { at: 5, kind: "beet" },
      d: { at: 19, kind: "chard" },
    });
    const groups = told(plan);
    expect(groups.map(({ kinds }) => kinds)).toEqual([
      ["husk-tomato"],
      ["beet", "chard"],
      ["radish"],
    ]);
    expect(groups[0]?.metres).toBeNull();
  });

  test("in words, in the grower's units", () => {
    const found = unaskedAround(check(trialPlan({ p: { at: 0, kind: "carrot" } })));
    expect(unaskedWords(found, "m")?.lines).toEqual([
      "carrot, within 1000 m (look for wild carrot too)",
    ]);
    expect(unaskedWords(found, "ft")?.lines[0]).toContain("within 3281'");
    expect(unaskedWords([], "m")).toBeNull();
  });

  test("a crop entered as a point is named, for a field reaches nearer; a wild plant is a point", () => {
    const around = [
      source("s", "carrot", far),
      source("w", "wild-carrot", far),
      source("b", "beet", far),
    ];
    const plan = trialPlan({ p: { at: 0, kind: "carrot" } }, around);
    expect(measuredToPoint(check(plan))).toEqual([around[0]?.label]);
    expect(pointWords(["Mill field"])).toMatch(/^Measured to a single point: Mill field\. /);
    expect(pointWords(["a", "b", "c", "d", "e", "f", "g"])).toContain("5 more");
    expect(pointWords([])).toBeNull();
  });
});
