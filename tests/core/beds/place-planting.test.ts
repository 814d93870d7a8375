import { describe, expect, test } from "vitest";
import { protrusion } from "../../../src/core/geometry/containment.ts";
import { outlineOf } from "../../../src/core/geometry/outline.ts";
import type { AreaShape, Bed, RectangleShape } from "../../../src/core/model/plan.ts";
import { cropBook } from "../../../src/core/kinds/crop-book.ts";
import type { Kind } from "../../../src/core/kinds/crop.ts";
import {
  alongBed,
  freeStretches,
  outlineOnBed,
  placeInBed,
  plantsThatFit,
  stretchOf,
} from "../../../src/core/beds/place-planting.ts";
import { bedOf, layoutOf, littlePlan, rectangle } from "../../support/little-plan.ts";

const lettuce: Kind = {
  ...(cropBook().kind("lettuce") as Kind),
  spacing: { inRowM: { value: 0.25, source: "own" }, betweenRowsM: { value: 0.3, source: "own" } },
};
const layout = layoutOf(littlePlan);
const bed = bedOf(littlePlan, "b1");
const shape = bed.outline as RectangleShape;

test("plants fit in rows along the length, at least one", () => {
  expect(plantsThatFit(lettuce, 1, 2)).toEqual({ rows: 3, plants: 24 });
  expect(plantsThatFit(lettuce, 0.9, 1)).toEqual({ rows: 3, plants: 12 });
  expect(plantsThatFit(lettuce, 0.1, 0.1)).toEqual({ rows: 1, plants: 1 });
});

describe("free stretches of a bed", () => {
  test("lie between, before and after what is planted", () => {
    // The bed runs from -5 to 5; plantings from -5 to -3 and from 0 to 2.
    expect(freeStretches(layout, bed)).toEqual([
      { fromM: 2, toM: 5 },
      { fromM: 7, toM: 10 },
    ]);
    expect(freeStretches(layout, bed, "p2")).toEqual([{ fromM: 2, toM: 10 }]);
    expect(freeStretches(layout, bedOf(littlePlan, "b2"))).toEqual([{ fromM: 0, toM: 10 }]);
  });

  test("of a turned bed are the same", () => {
    const turned: RectangleShape = { ...shape, x: 7, y: 3, turnDeg: 33 };
    const stretch = { fromM: 2, toM: 5 };
    const back = stretchOf(turned, outlineOnBed(turned, stretch));
    expect(back.fromM).toBeCloseTo(2, 9);
    expect(back.toM).toBeCloseTo(5, 9);
    expect(
      protrusion(outlineOf(outlineOnBed(turned, stretch)), outlineOf(turned)).distanceM,
    ).toBeLessThan(1e-9);
    expect(alongBed(turned, { x: 7, y: 3 })).toBeCloseTo(5, 9);
  });
});

describe("placing plants in a bed", () => {
  test("takes the first free stretch long enough", () => {
    expect(placeInBed(layout, bed, lettuce, 24)).toEqual({
      outline: rectangle(0, -2, 1, 2),
      plants: 24,
      rows: 3,
    });
    expect(placeInBed(layout, bed, lettuce, 36)?.outline).toEqual(rectangle(0, -1.5, 1, 3));
  });

  test("fills the longest when none is", () => {
    const placed = placeInBed(layout, bed, lettuce, 200);
    expect(placed).toEqual({ outline: rectangle(0, -1.5, 1, 3), plants: 36, rows: 3 });
  });

  test("goes to where it was dropped, as far as free ground allows", () => {
    const at = (y: number) => placeInBed(layout, bed, lettuce, 12, { x: 0, y })?.outline;
    expect(at(-1.5)).toEqual(rectangle(0, -1.5, 1, 1));
    expect(at(4.9)).toEqual(rectangle(0, 4.5, 1, 1));
    expect(at(2.1)).toEqual(rectangle(0, 2.5, 1, 1));
  });

  test("on taken ground goes to the nearest free ground that takes it", () => {
    const at = (y: number, plants: number) =>
      placeInBed(layout, bed, lettuce, plants, { x: 0, y })?.outline;
    expect(at(0.8, 12)).toEqual(rectangle(0, -0.5, 1, 1));
    expect(at(1.2, 12)).toEqual(rectangle(0, 2.5, 1, 1));
    expect(at(-4.5, 12)).toEqual(rectangle(0, -2.5, 1, 1));
  });

  test("finds no place in a full bed", () => {
    const full = {
      ...layout,
      plantings: [
        { ...(layout.plantings[0] as (typeof layout.plantings)[number]), outline: shape },
      ],
    };
    expect(placeInBed(full, bed, lettuce, 12)).toBeNull();
  });

  test("in a bed of any shape takes a piece of it, at its end or where it was dropped", () => {
    const corner: Bed = {
      id: "c",
      code: "C",
      outline: {
        shape: "polygon",
        corners: [
          [0, 0],
          [6, 0],
          [0, 6],
        ],
      },
    };
    const low = placeInBed(layout, corner, lettuce, 12);
    const high = placeInBed(layout, corner, lettuce, 12, { x: 1, y: 4 });
    for (const placed of [low, high]) {
      expect(placed?.plants).toBe(12);
      expect(
        protrusion(outlineOf(placed?.outline as AreaShape), outlineOf(corner.outline)).distanceM,
      ).toBeLessThan(1e-6);
    }
    const top = outlineOf(high?.outline as AreaShape).bounds;
    expect(top.minY).toBeLessThan(4);
    expect(top.maxY).toBeGreaterThan(4);
  });
});
