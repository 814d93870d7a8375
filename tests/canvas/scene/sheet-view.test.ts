/** What is brought into view, the grid, the scale bar and the handles. */
import { describe, expect, test } from "vitest";
import { boundsOfIds, contentBounds } from "../../../src/canvas/scene/content-bounds.ts";
import { scaleBarLength } from "../../../src/canvas/draw/draw-furniture.ts";
import { gridFigure, sheetGrid } from "../../../src/canvas/draw/draw-grid.ts";
import {
  handleAt,
  handleCursor,
  handleSizes,
  handlesOf,
} from "../../../src/canvas/scene/handles.ts";
import type { View } from "../../../src/canvas/scene/viewport.ts";
import { bedOf, drawnPlan, rectangle, sourceAt } from "../../support/drawn-plan.ts";

const beds = [bedOf("b1", rectangle(0, 0, 2, 10)), bedOf("b2", rectangle(10, 0, 2, 10))];

describe("brought into view", () => {
  test("are the beds with what lies around them", () => {
    const { plan, layout } = drawnPlan({ beds, surroundings: [sourceAt("near", 20, 0)] });
    expect(contentBounds(plan, layout)).toEqual({ minX: -2, minY: -6, maxX: 21, maxY: 6 });
  });

  test("but not a far source that would make the beds tiny", () => {
    const surroundings = [sourceAt("far", 900, 0), sourceAt("near", 20, 0)];
    const { plan, layout } = drawnPlan({ beds, surroundings });
    expect(contentBounds(plan, layout).maxX).toBe(21);
  });

  test("some ground when there is nothing yet", () => {
    const { plan, layout } = drawnPlan({});
    const { minX, maxX } = contentBounds(plan, layout);
    expect(maxX - minX).toBeGreaterThan(10);
  });

  test("single objects with room around them, and nothing for ids that are gone", () => {
    const { plan, layout } = drawnPlan({ beds });
    expect(boundsOfIds(plan, layout, ["b1"])).toEqual({
      minX: -11,
      minY: -15,
      maxX: 11,
      maxY: 15,
    });
    expect(boundsOfIds(plan, layout, ["gone"])).toBeNull();
  });

  test("with the ground their isolation needs, as far as they can still be read in it", () => {
    const { plan, layout } = drawnPlan({ beds });
    expect(boundsOfIds(plan, layout, ["b1"], 25)?.maxX).toBe(26);
    expect(boundsOfIds(plan, layout, ["b1"], 800)?.maxX).toBe(41);
  });
});

describe("the grid", () => {
  test.each([
    [100, 1],
    [24, 5],
    [8, 10],
    [1.5, 50],
    [0.02, 5000],
  ])("at %s pixels to a metre has squares of %s m", (scale, spacing) => {
    expect(sheetGrid(scale, "m").spacing).toBe(spacing);
  });

  test("has squares of round feet in a plan in feet", () => {
    const grid = sheetGrid(24, "ft");
    expect(grid.spacing).toBe(10);
    expect(grid.spacingM).toBeCloseTo(3.048);
  });

  test("says how far its lines lie from the origin, whatever is in view", () => {
    const grid = sheetGrid(24, "m");
    expect([-2, 0, 3].map((line) => gridFigure(line, grid, "m"))).toEqual([
      "\u221210",
      "0 m",
      "15",
    ]);
    expect(gridFigure(2, sheetGrid(24, "ft"), "ft")).toBe("20");
  });

  test("leaves fine lines out when they would lie too close", () => {
    expect(sheetGrid(64, "m").fineM).toBeNull();
    expect(sheetGrid(24, "m").fineM).toBe(1);
  });
});

test("the scale bar is a round length that fits", () => {
  expect(scaleBarLength(24, "m")).toBe(5);
  expect(scaleBarLength(0.5, "m")).toBe(200);
  expect(scaleBarLength(24, "ft")).toBe(20);
});

describe("handles", () => {
  const view: View = { scale: 40, x: 0, y: 0 };
  const sizes = handleSizes(false);

  test("stand on every edge and corner of a large rectangle, and one turns it", () => {
    const handles = handlesOf(rectangle(0, 0, 2, 6, 0), view, sizes);
    expect(handles.filter(({ handle }) => handle.kind === "size")).toHaveLength(8);
    const turn = handles.find(({ handle }) => handle.kind === "turn");
    expect(turn?.at.x).toBeCloseTo(0);
    expect(turn?.at.y).toBeCloseTo(-120 - sizes.turnPx);
  });

  test("keep clear of each other on a small one, also for fingers", () => {
    for (const isCoarse of [false, true]) {
      const wide = handleSizes(isCoarse);
      const handles = handlesOf(rectangle(0, 0, 0.5, 1, 33), view, wide);
      for (const a of handles) {
        for (const b of handles) {
          if (a === b) continue;
          const apart = Math.hypot(a.at.x - b.at.x, a.at.y - b.at.y);
          expect(apart).toBeGreaterThanOrEqual(wide.reachPx);
        }
      }
    }
  });

  test("of a polygon pull its corners and new ones out of its edges", () => {
    const corners = [
      [0, 0],
      [4, 0],
      [4, 0.2],
      [0, 5],
    ] as const;
    const kindsAt = (scale: number) =>
      handlesOf({ shape: "polygon", corners }, { ...view, scale }, sizes).map(
        ({ handle }) => handle.kind,
      );
    const kinds = kindsAt(view.scale);
    // Two corners are 8 px apart: only one of them can be taken until the view is nearer.
    expect(kinds.filter((kind) => kind === "corner")).toHaveLength(3);
    expect(kindsAt(200).filter((kind) => kind === "corner")).toHaveLength(4);
    expect(kinds.filter((kind) => kind === "new-corner")).toHaveLength(3);
  });

  test("take the pointer within their reach", () => {
    const handles = handlesOf(rectangle(0, 0, 2, 6, 0), view, sizes);
    expect(handleAt(handles, { x: 41, y: -118 }, sizes)).toEqual({
      kind: "size",
      across: 1,
      along: 1,
    });
    expect(handleAt(handles, { x: 20, y: -20 }, sizes)).toBeNull();
  });

  test("show which way they pull on a turned bed", () => {
    const end = { kind: "size", across: 0, along: 1 } as const;
    expect(handleCursor(end, rectangle(0, 0, 2, 6, 0))).toBe("ns-resize");
    expect(handleCursor(end, rectangle(0, 0, 2, 6, 85))).toBe("ew-resize");
    expect(handleCursor(end, rectangle(0, 0, 2, 6, 45))).toBe("nesw-resize");
  });
});
