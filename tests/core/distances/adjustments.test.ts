/** Changes to a distance that regulations give, against their printed tables. */
import { describe, expect, test } from "vitest";
import type { Adjustment } from "../../../src/core/distances/adjustment.ts";
import { adjustmentWords } from "../../../src/core/distances/adjustment-words.ts";
import {
  adjustedDistance,
  adjustments,
  adjustmentsOf,
} from "../../../src/core/distances/adjustments.ts";
import { kinds } from "../../../src/core/kinds/kinds.ts";
import { fixtureRows } from "../../support/fixture-rows.ts";

const METRES_PER_FOOT = 0.3048;

function adjustment(id: string): Adjustment {
  const found = adjustments.find((entry) => entry.id === id);
  if (!found) throw new Error(`no adjustment "${id}"`);
  return found;
}

function feetAfter(feet: number, ...ids: readonly string[]): number {
  return adjustedDistance(feet * METRES_PER_FOOT, ids.map(adjustment)).metres / METRES_PER_FOOT;
}

describe("printed cases", () => {
  test.each([
    ["watermelon behind barriers", 1320, "watermelon-barriers", 660],
    ["tomato of another class of one variety", 30, "classes-of-one-variety", 15],
    ["mustard of another class of one variety", 660, "classes-of-one-mustard", 10],
    ["maize of the same colour and texture", 660, "maize-same-colour", 410],
    ["rye of another ploidy", 660, "rye-ploidy", 15],
    ["millet of another genus", 660, "millet-genera", 6],
    ["sunflower of another type", 2640, "sunflower-types", 5280],
    ["sorghum of another height", 660, "sorghum-height", 990],
    ["grass sorghum", 660, "sorghum-grass", 1320],
    ["tobacco of another type", 150, "tobacco-types", 1320],
    ["broadcast rice", 10, "rice-broadcast", 50],
    ["rice sown from the air", 10, "rice-aerial", 100],
    ["small clover field, foundation", 600, "small-clover", 900],
    ["small clover field, registered", 300, "small-clover", 450],
    ["small trefoil field, certified", 165, "small-trefoil", 330],
    ["small alfalfa field, foundation", 600, "small-alfalfa", 900],
    ["small alfalfa field, registered", 300, "small-alfalfa", 450],
  ] as const)("%s: %d ft with %s is %d ft", (_, feet, id, expected) => {
    expect(feetAfter(feet, id)).toBeCloseTo(expected, 9);
  });

  test("each distance of a footnote we carry is in the printed list", () => {
    const printed = fixtureRows("us-7cfr-201-76-adjustments.tsv");
    const carried = adjustments.flatMap(({ effect, place, source }) =>
      source === "cfr-201-76" && effect.kind !== "times" && effect.feet > 0
        ? [[place.replace(/\D*(\d+).*/, "$1"), String(effect.feet)] as const]
        : [],
    );
    const missing = carried.filter(
      ([footnote, feet]) => !printed.some((row) => row.footnote === footnote && row.feet === feet),
    );
    expect(missing).toEqual([]);
  });
});

describe("adjustedDistance", () => {
  test("without a choice nothing changes and nothing is recorded", () => {
    expect(adjustedDistance(402.336, [])).toEqual({ metres: 402.336, steps: [] });
  });

  test("a relief never lengthens, an increase never shortens", () => {
    expect(feetAfter(100, "maize-same-colour")).toBeCloseTo(100, 9);
    expect(feetAfter(9000, "sunflower-types")).toBeCloseTo(9000, 9);
  });

  test("choices are applied in their order, each step on record", () => {
    const chosen = ["watermelon-barriers", "sunflower-types"].map(adjustment);
    expect(adjustedDistance(400, chosen)).toEqual({
      metres: 5280 * METRES_PER_FOOT,
      steps: [
        { adjustment: "watermelon-barriers", fromM: 400, toM: 200 },
        { adjustment: "sunflower-types", fromM: 200, toM: 5280 * METRES_PER_FOOT },
      ],
    });
  });
});

test("adjustments are offered to the kinds they are printed for, which exist", () => {
  expect(adjustmentsOf("watermelon").map((entry) => entry.id)).toEqual(["watermelon-barriers"]);
  expect(adjustmentsOf("lettuce")).toEqual([]);
  const known = new Set(kinds.map((kind) => kind.id));
  expect(adjustments.flatMap((entry) => entry.kinds).filter((id) => !known.has(id))).toEqual([]);
});

test("effects in words", () => {
  expect(adjustmentWords({ kind: "times", factor: 0.5 })).toBe("half the distance");
  expect(adjustmentWords({ kind: "times", factor: 1.5 })).toBe("1.5 times the distance");
  expect(adjustmentWords({ kind: "at most", feet: 0 })).toBe("no distance");
  expect(adjustmentWords({ kind: "at least", feet: 990 })).toBe("at least 990 ft (301.75 m)");
});
