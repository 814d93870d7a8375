/** Beds of any outline: plants stand on the bed's ground, and never on each other's. */
import { describe, expect, test } from "vitest";
import { overlapDepth, protrusion } from "../../../src/core/geometry/containment.ts";
import { outlineOf } from "../../../src/core/geometry/outline.ts";
import { placeInBed } from "../../../src/core/beds/place-planting.ts";
import { cropBook } from "../../../src/core/kinds/crop-book.ts";
import type { Kind } from "../../../src/core/kinds/crop.ts";
import type { AreaShape, Bed, Layout, Planting } from "../../../src/core/model/plan.ts";

const lettuce: Kind = {
  ...(cropBook().kind("lettuce") as Kind),
  spacing: { inRowM: { value: 0.25, source: "own" }, betweenRowsM: { value: 0.3, source: "own" } },
};

/** A bed along a quarter of a circle, as it is drawn: corners on both arcs. */
function curved(innerM: number, outerM: number, corners: number): AreaShape {
  const arc = (radius: number) =>
    Array.from({ length: corners }, (_, index): [number, number] => {
      const angle = (Math.PI / 2) * (index / (corners - 1));
      return [radius * Math.cos(angle), radius * Math.sin(angle)];
    });
  return { shape: "polygon", corners: [...arc(outerM), ...arc(innerM).toReversed()] };
}

const beds: Readonly<Record<string, AreaShape>> = {
  "an L": {
    shape: "polygon",
    corners: [
      [0, 0],
      [6, 0],
      [6, 1.2],
      [1.2, 1.2],
      [1.2, 5],
      [0, 5],
    ],
  },
  "a curved bed": curved(5, 6.2, 12),
  "a horseshoe": {
    shape: "polygon",
    corners: [
      [0, 0],
      [6, 0],
      [6, 8],
      [4, 8],
      [4, 2],
      [2, 2],
      [2, 7],
      [0, 7],
    ],
  },
  "a ring about a tree": {
    shape: "polygon",
    corners: [
      [0, 0],
      [5, 0],
      [5, 5],
      [0, 5],
    ],
    holes: [
      [
        [1.5, 1.5],
        [3.5, 1.5],
        [3.5, 3.5],
        [1.5, 3.5],
      ],
    ],
  },
  "a turned triangle": {
    shape: "polygon",
    corners: [
      [10, 3],
      [16, 7],
      [9, 9],
    ],
  },
};

function planting(id: string, bed: Bed, outline: AreaShape): Planting {
  return {
    id,
    code: id,
    variety: "v",
    bed: bed.id,
    outline,
    purpose: "seed",
    flowering: "yes",
    cover: "none",
  };
}

describe.each(Object.entries(beds))("%s", (_, outline) => {
  const bed: Bed = { id: "bed", code: "C01", outline };
  const empty: Layout = { id: "l", name: "L", beds: [bed], plantings: [] };

  test("takes one variety after the other, on its ground and clear of each other", () => {
    let layout = empty;
    let plants = 0;
    for (let number = 1; number <= 12; number += 1) {
      const placed = placeInBed(layout, bed, lettuce, 12);
      if (!placed) break;
      const ground = outlineOf(placed.outline);
      expect(protrusion(ground, outlineOf(bed.outline)).distanceM).toBeLessThan(1e-6);
      for (const other of layout.plantings) {
        expect(overlapDepth(ground, outlineOf(other.outline)).distanceM).toBeLessThan(1e-6);
      }
      plants += placed.plants;
      const added = planting(`p${number}`, bed, placed.outline);
      layout = { ...layout, plantings: [...layout.plantings, added] };
    }
    expect(layout.plantings.length).toBeGreaterThanOrEqual(3);
    expect(plants).toBeGreaterThanOrEqual(36);
  });

  test("holds at least half of what its area would take in one piece or in several", () => {
    const placed = placeInBed(empty, bed, lettuce, 10_000);
    expect(placed?.rows).toBeGreaterThan(1);
    expect(placed?.plants).toBeGreaterThan(24);
  });
});

test("what is asked for at a place comes to lie there", () => {
  const bed: Bed = { id: "bed", code: "C01", outline: beds["an L"] as AreaShape };
  const layout: Layout = { id: "l", name: "L", beds: [bed], plantings: [] };
  const placed = placeInBed(layout, bed, lettuce, 8, { x: 5.5, y: 0.6 });
  const xs = placed?.outline.shape === "polygon" ? placed.outline.corners.map(([x]) => x) : [];
  expect(Math.min(...xs)).toBeGreaterThan(4);
  expect(placed?.plants).toBe(8);
});
