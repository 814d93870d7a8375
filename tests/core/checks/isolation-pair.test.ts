import { expect, test } from "vitest";
import { checkLayout } from "../../../src/core/checks/checked-layout.ts";
import { countPairs, pairKey, unorderedPairs } from "../../../src/core/checks/isolation-pair.ts";
import { LAYOUT, gardenPlan } from "../../support/garden-plan.ts";

const { result } = checkLayout(gardenPlan(), LAYOUT);

test("two stands are one pair whichever way pollen goes, and none is lost", () => {
  const pairs = unorderedPairs(result.pairs);
  expect(result.pairs.length).toBeGreaterThan(pairs.size);
  expect([...pairs.values()].flat()).toHaveLength(result.pairs.length);
  for (const [key, ways] of pairs) {
    expect(ways.length).toBeLessThan(3);
    expect(ways.map(pairKey)).toEqual(ways.map(() => key));
    expect(new Set(ways.flatMap((way) => [way.seedParent, way.pollenSource])).size).toBe(2);
  }
  expect(unorderedPairs(result.pairs)).toBe(pairs);
});

test("a pair counts once for a standing either way has", () => {
  const [pair] = result.pairs;
  if (!pair) throw new Error("the garden has no pair");
  const back = { ...pair, seedParent: pair.pollenSource, pollenSource: pair.seedParent };
  const ways = [
    { ...pair, standing: "time" as const },
    { ...back, standing: "cover" as const },
  ];
  expect(["time", "cover", "conflict"].map((each) => countPairs(ways, each as "time"))).toEqual([
    1, 1, 0,
  ]);
});
