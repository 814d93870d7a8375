/** The grower's own total: their weights times the values, none by default. */
import { describe, expect, test } from "vitest";
import { ownTotals } from "../../../src/core/compare/own-totals.ts";
import type { Measure } from "../../../src/core/compare/compare-layouts.ts";

const layouts = [
  { id: "a", name: "A" },
  { id: "b", name: "B" },
];

function measure(
  name: Measure["name"],
  better: Measure["better"],
  values: Measure["values"],
): Measure {
  return { name, better, values, unit: "count", isBest: [false, false] };
}

const measures = [
  measure("conflicts", "less", [2, 0]),
  measure("least slack", "more", [null, 4]),
  measure("ground planted", "neither", [10, 20]),
  measure("moved", "less", [0, 12.5]),
];

describe("the grower's own total", () => {
  test("there is none before a weight is given, and a weight of 0 is none", () => {
    expect(ownTotals({ layouts, measures }, {})).toBeNull();
    expect(ownTotals({ layouts, measures }, { conflicts: 0 })).toBeNull();
  });

  test("weights times values; more of what is better lowers it, nothing measured counts nothing", () => {
    const weights = { conflicts: 10, "least slack": 2, moved: 0.4 };
    expect(ownTotals({ layouts, measures }, weights)).toEqual([20, -3]);
  });

  test("a measure without a better end cannot be weighed", () => {
    expect(ownTotals({ layouts, measures }, { "ground planted": 5 })).toBeNull();
  });
});
