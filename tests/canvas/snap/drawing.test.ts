/** Snapping while drawing, typed sides, and what the corners of an outline become. */
import { describe, expect, test } from "vitest";
import { sheetItems } from "../../../src/canvas/scene/sheet-items.ts";
import { equalGapLines } from "../../../src/canvas/snap/snap-equal.ts";
import { snapPlace } from "../../../src/canvas/snap/snap-place.ts";
import { type SnapSettings, boundsInFrame, snapMove } from "../../../src/canvas/snap/snap.ts";
import { snapTargets } from "../../../src/canvas/snap/snap-targets.ts";
import {
  leastCorners,
  outlineTargets,
  shapeOfCorners,
} from "../../../src/core/outlines/drawn-outline.ts";
import { alongSide, readDegrees } from "../../../src/canvas/tools/typed-side.ts";
import { beginsNumber } from "../../../src/canvas/tools/typed-values.ts";
import { shapeCorners } from "../../../src/core/geometry/outline.ts";
import { surroundingSorts } from "../../../src/core/model/plan.ts";
import { bedOf, book, drawnPlan, rectangle } from "../../support/drawn-plan.ts";

const sheet = { origin: { x: 0, y: 0 }, turnDeg: 0 };

/** Beds of 1 m, 2 m apart: from 0 to 1 and from 3 to 4. */
const row = [bedOf("b1", rectangle(0.5, 0, 1, 10)), bedOf("b2", rectangle(3.5, 0, 1, 10))];

function moved(shape: ReturnType<typeof rectangle>, beds = row) {
  const { plan, layout } = drawnPlan({ beds });
  const settings: SnapSettings = {
    lines: snapTargets({ items: sheetItems(plan, layout, book), moving: new Set() }, sheet, {
      what: "bed",
      shape,
    }),
    reachM: 0.2,
    stepM: 0.1,
    gridFrom: { x: 0, y: 0 },
  };
  const { shift, guides } = snapMove(sheet, boundsInFrame(sheet, shapeCorners(shape)), settings);
  return { x: shape.x + shift.x, y: shape.y + shift.y, guides };
}

describe("a third bed in a row", () => {
  test("comes to the same gap after the second, and shows both gaps", () => {
    const { x, guides } = moved(rectangle(6.62, 0.9, 1, 10));
    expect(x).toBeCloseTo(6.5);
    const equal = guides.find(({ label }) => label === "equal gaps");
    const gaps = equal?.gaps?.map(([from, to]) => Math.abs(to.x - from.x));
    expect(gaps?.map((gap) => Math.round(gap * 1e6) / 1e6)).toEqual([2, 2]);
  });

  test("before the first", () => {
    expect(moved(rectangle(-2.37, 0.9, 1, 10)).x).toBeCloseTo(-2.5);
  });

  test("or halfway between the two", () => {
    const { x, guides } = moved(rectangle(2.1, 0.9, 0.6, 10));
    expect(x).toBeCloseTo(2);
    expect(guides.map(({ label }) => label)).toContain("equal gaps");
  });

  test("and takes no notice of beds beside its row", () => {
    expect(equalGapLines([], { minX: 0, minY: 0, maxX: 1, maxY: 1 })).toEqual({ x: [], y: [] });
    expect(moved(rectangle(6.62, 30, 1, 10)).guides).toEqual([]);
  });
});

test("beds of unequal length come to each other's middles", () => {
  const { y, guides } = moved(rectangle(12, 0.15, 1, 6));
  expect(y).toBeCloseTo(0);
  expect(guides.map(({ label }) => label)).toContain("middle of bed B1");
});

describe("a single place", () => {
  const { plan, layout } = drawnPlan({ beds: row });
  const items = sheetItems(plan, layout, book);

  test("comes to a corner before an edge", () => {
    expect(snapPlace(items, { x: 0.95, y: 4.9 }, 0.2)).toMatchObject({
      at: { x: 1, y: 5 },
      label: "corner of bed B1",
    });
    const edge = snapPlace(items, { x: 0.9, y: 2 }, 0.2);
    expect(edge?.label).toBe("edge of bed B1");
    expect(edge?.at.x).toBeCloseTo(1);
    expect(edge?.at.y).toBeCloseTo(2);
  });

  test("but not to its own object, nor to anything out of reach", () => {
    expect(snapPlace(items, { x: 0.95, y: 4.9 }, 0.2, "b1")).toBeNull();
    expect(snapPlace(items, { x: 2, y: 2 }, 0.2)).toBeNull();
  });
});

describe("a typed side", () => {
  const from = { last: { x: 1, y: 1 }, drawn: 30, pointed: { x: 5, y: 1.2 } };

  test("goes where the pointer nearly means", () => {
    expect(alongSide(from, 6.5, null)).toEqual({ x: 7.5, y: 1 });
    // Square to the side before, 30 degrees: 120.
    const square = alongSide({ ...from, pointed: { x: 3, y: -0.2 } }, 2, null);
    expect(square.x).toBeCloseTo(1 + 2 * Math.sin((120 * Math.PI) / 180), 5);
  });

  test("or in the direction that is typed too", () => {
    expect(alongSide(from, 2, 180)).toEqual({ x: 1, y: -1 });
    expect(["90", "12,5°", " -45 ", "", "north"].map(readDegrees)).toEqual([
      90,
      12.5,
      -45,
      null,
      undefined,
    ]);
  });

  test("begins with a digit or a decimal mark", () => {
    expect(["1", ",", ".", "a", "Enter"].map(beginsNumber)).toEqual([
      true,
      true,
      true,
      false,
      false,
    ]);
  });
});

describe("the corners of an outline become", () => {
  const corners = [
    { x: 0, y: 0 },
    { x: 0, y: 8 },
    { x: 3, y: 8 },
  ];

  test("a point, a line of a width, or an outline", () => {
    expect(shapeOfCorners(corners.slice(0, 1), 1)).toEqual({ shape: "point", x: 0, y: 0 });
    expect(shapeOfCorners(corners.slice(0, 2), 0.5)).toEqual(rectangle(0, 4, 0.5, 8));
    expect(shapeOfCorners(corners, 1)).toMatchObject({ shape: "polygon" });
  });

  test("only what makes sense for what is drawn", () => {
    expect(["bed", "fence", "tree", "building"].map((name) => leastCorners(name as "bed"))).toEqual(
      [3, 2, 1, 3],
    );
  });

  test("every sort of ground can be drawn", () => {
    const offered = new Set<string>(outlineTargets.map(({ value }) => value));
    expect(surroundingSorts.filter((sort) => !offered.has(sort))).toEqual([]);
  });
});
