/** What a planting may state about its distance, and what comes of it, at the printed values. */
import { describe, expect, test } from "vitest";
import { adjustments } from "../../../src/core/distances/adjustments.ts";
import { kinds } from "../../../src/core/kinds/kinds.ts";
import {
  HECTARES_PER_ACRE,
  offeredAdjustments,
  statedDistance,
} from "../../../src/core/distances/stated-adjustments.ts";
import { placeWords } from "../../../src/core/distances/distance-words.ts";
import type { StatedAdjustment } from "../../../src/core/model/plan.ts";
import { stepWords } from "../../../src/core/distances/distance-words.ts";

const METRES_PER_FOOT = 0.3048;

/** On the figure of the regulation that prints the change. */
function feetAfter(kind: string, feet: number, ...stated: readonly StatedAdjustment[]): number {
  const source = stated[0]?.id === "wac-16-302-295" ? "wac-16-302-290" : "cfr-201-76";
  return statedDistance(kind, feet * METRES_PER_FOOT, stated, source).metres / METRES_PER_FOOT;
}

describe("printed cases", () => {
  test.each([
    ["watermelon", 1320, { id: "watermelon-barriers" }, 660],
    ["tomato", 30, { id: "classes-of-one-variety" }, 15],
    ["maize", 660, { id: "maize-same-colour" }, 410],
    ["maize", 660, { id: "maize-same-colour", borderRows: 2 }, 370],
    ["maize", 660, { id: "maize-same-colour", borderRows: 16 }, 85],
    ["maize", 660, { id: "maize-same-colour", borderRows: 8, fieldHa: 10 }, 85],
    ["popcorn", 660, { id: "maize-same-colour", borderRows: 4 }, 330],
    ["maize", 660, { id: "wac-16-302-295", borderRows: 3 }, 355],
    ["maize", 660, { id: "wac-16-302-295", borderRows: 9, fieldHa: 10 }, 45],
    ["sweet-corn", 660, { id: "sweet-corn-field", borderRows: 4 }, 660],
    ["sweet-corn", 660, { id: "sweet-corn-field", borderRows: 8 }, 500],
    ["sweet-corn", 660, { id: "sweet-corn-field", borderRows: 16 }, 180],
    [
      "sweet-corn",
      660,
      { id: "sweet-corn-field", borderRows: 4, fieldHa: 4 * HECTARES_PER_ACRE },
      645,
    ],
    [
      "sweet-corn",
      660,
      { id: "sweet-corn-field", borderRows: 16, fieldHa: 40 * HECTARES_PER_ACRE },
      30,
    ],
    ["sunflower", 2640, { id: "sunflower-types" }, 5280],
    ["rice", 10, { id: "rice-aerial" }, 100],
  ] as const)("%s: %d ft with %j is %d ft", (kind, feet, stated, expected) => {
    expect(feetAfter(kind, feet, stated)).toBeCloseTo(expected, 6);
  });
});

describe("nothing changes", () => {
  test.each([
    ["with nothing stated", "watermelon", []],
    ["by what is printed for another kind", "lettuce", [{ id: "watermelon-barriers" }]],
    ["by an unknown id", "watermelon", [{ id: "full-moon" }]],
    ["by too few border rows", "sweet-corn", [{ id: "sweet-corn-field", borderRows: 3 }]],
  ] as const)("%s", (_, kind, stated) => {
    expect(statedDistance(kind, 100, stated, "cfr-201-76")).toEqual({ metres: 100, steps: [] });
  });

  test("and nothing is said where a relief does not reach", () => {
    expect(statedDistance("maize", 50, [{ id: "maize-same-colour" }], "cfr-201-76").steps).toEqual(
      [],
    );
  });
});

describe("a change acts on the figure it is printed for", () => {
  // The audit's cases: a book's 152.4 m for watermelon, a teaching page's 500 m, a district's
  // 2 miles for mustard, the directive's 250 m for rye, home practice for tomato.
  test.each([
    ["watermelon", 152.4, "watermelon-barriers", "manual-seed-saving"],
    ["watermelon", 500, "watermelon-barriers", "icar-ecourse"],
    ["mustard", 3218.688, "classes-of-one-mustard", "wac-16-326-040"],
    ["rye", 250, "rye-ploidy", "eu-66-402"],
    ["tomato", 3.048, "classes-of-one-variety", "home-practice"],
  ])("%s %d m: %s leaves %s alone", (kind, metres, id, source) => {
    expect(statedDistance(kind, metres, [{ id }], source)).toEqual({ metres, steps: [] });
  });

  test("but an increase acts on any", () => {
    const { metres } = statedDistance("sunflower", 300, [{ id: "sunflower-types" }], "memory");
    expect(metres).toBeCloseTo(1609.344, 6);
  });
});

test("increases come last, in whatever order they were stated", () => {
  const relief = { id: "flowers-kept-shut" };
  const increase = { id: "tobacco-types" };
  for (const stated of [
    [relief, increase],
    [increase, relief],
  ]) {
    expect(feetAfter("tobacco", 150, ...stated)).toBeCloseTo(1320, 9);
  }
});

test("each step says what it does, why and where it is printed", () => {
  const words = (kind: string, stated: StatedAdjustment) =>
    statedDistance(
      kind,
      200,
      [stated],
      stated.id === "wac-16-302-295" ? "wac-16-302-290" : "cfr-201-76",
    ).steps.map(stepWords);
  expect(words("watermelon", { id: "watermelon-barriers" })).toEqual([
    "half the distance: natural or artificial barriers protect the field well (7 CFR 201.76 Table 5, footnote 26)",
  ]);
  expect(words("maize", { id: "maize-same-colour", borderRows: 1 })[0]).toContain("1 border row (");
  expect(words("maize", { id: "wac-16-302-295", borderRows: 12 })[0]).toMatch(
    /12 border rows \(WAC 16-302-295\)$/,
  );
});

test("every adjustment of a kind we carry is offered to it, with a place to look it up", () => {
  for (const { id } of kinds) {
    const offered = offeredAdjustments(id);
    const printed = adjustments.filter((entry) => entry.kinds.includes(id));
    expect(offered.map((offer) => offer.id)).toEqual(
      expect.arrayContaining(printed.map((entry) => entry.id)),
    );
    expect(offered.filter((offer) => placeWords(offer) === offer.source)).toEqual([]);
  }
  expect(offeredAdjustments("lettuce")).toEqual([]);
});
