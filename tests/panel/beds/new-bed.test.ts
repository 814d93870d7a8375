import { expect, test } from "vitest";
import { circleOf } from "../../../src/core/geometry/round.ts";
import { protrusion } from "../../../src/core/geometry/containment.ts";
import { outlineOf } from "../../../src/core/geometry/outline.ts";
import { rowsDrawn, suggestedRows } from "../../../src/panel/beds/bed-rows-form.ts";
import {
  bedFromTyped,
  codeProblem,
  offPlot,
  suggestedBed,
} from "../../../src/panel/beds/new-bed.ts";
import { rectanglePlot } from "../../../src/panel/site/plot-form.ts";
import { plantingAt, smallPlan } from "../../support/small-plan.ts";

test("the next bed has the next code and the last bed's size, one path further", () => {
  const { plan, layout } = smallPlan();
  const suggested = suggestedBed(plan, layout);
  expect(suggested).toMatchObject({ code: "B03", widthM: 1, lengthM: 10, turnDeg: 0, y: 0 });
  expect(suggested.x).toBeCloseTo(4.6, 9);
});

test("beside a turned bed the next one lies across its turn", () => {
  const { plan, layout } = smallPlan();
  const beds = layout.beds.map((bed) => ({
    ...bed,
    outline: { ...bed.outline, turnDeg: 90 },
  }));
  const suggested = suggestedBed(plan, { ...layout, beds });
  expect(suggested.x).toBeCloseTo(3, 9);
  expect(suggested.y).toBeCloseTo(-1.6, 9);
});

test("an empty layout still gets a first bed", () => {
  const { plan, layout } = smallPlan();
  const bare = { ...plan, site: { name: plan.site.name, upBearingDeg: 0 } };
  expect(suggestedBed(bare, { ...layout, beds: [] })).toMatchObject({ code: "A01", x: 0, y: 0 });
});

test("the first bed of a plot that has an edge lies inside it, a path from its lower left corner", () => {
  const { plan, layout } = smallPlan();
  const outline = rectanglePlot(20, 8);
  const edged = { ...plan, site: { ...plan.site, outline } };
  expect(suggestedBed(edged, { ...layout, beds: [] })).toMatchObject({
    widthM: 1.2,
    lengthM: 6.8,
    x: 1.2,
    y: 4,
  });
});

test("the first bed of a plot of any outline lies on it, and rows of beds lie on it together", () => {
  const { plan, layout } = smallPlan();
  const corners = [
    [0, 8],
    [9, 0],
    [30, 6],
    [24, 20],
    [12, 14],
    [4, 22],
  ] as const;
  const edged = {
    ...plan,
    site: { ...plan.site, outline: { shape: "polygon" as const, corners } },
  };
  const bare = { ...layout, beds: [], plantings: [] };
  const plot = outlineOf(edged.site.outline);
  const bed = bedFromTyped(edged, bare, suggestedBed(edged, bare));
  expect(protrusion(outlineOf(bed.outline), plot).distanceM).toBe(0);
  const rows = rowsDrawn(edged, bare, suggestedRows(edged, bare));
  expect(rows.length).toBeGreaterThan(2);
  for (const { outline } of rows) expect(protrusion(outlineOf(outline), plot).distanceM).toBe(0);
  expect(offPlot(edged, rows)).toEqual([]);
  const many = rowsDrawn(edged, bare, { ...suggestedRows(edged, bare), count: 30 });
  expect(offPlot(edged, many)).toContain(many.at(-1)?.code);
  expect(offPlot({ ...edged, site: { name: "", upBearingDeg: 0 } }, many)).toEqual([]);
});

test("a code is needed, is short and is nobody else's", () => {
  const { layout } = smallPlan([plantingAt(1, 0)]);
  expect(codeProblem(layout, "  ", null)).not.toBeNull();
  expect(codeProblem(layout, "x".repeat(41), null)).not.toBeNull();
  expect(codeProblem(layout, "B02", null)).toBe("B02 is taken");
  expect(codeProblem(layout, " B02 ", "bed-2")).toBeNull();
  expect(codeProblem(layout, "B01-1", null)).toBe("B01-1 is taken");
});

test("a typed bed gets an id nobody has", () => {
  const { plan, layout } = smallPlan();
  const bed = bedFromTyped(plan, layout, { ...suggestedBed(plan, layout), code: " C01 " });
  expect(bed).toMatchObject({ id: "bed-3", code: "C01" });
});

test("a round bed has its width as diameter", () => {
  const { plan, layout } = smallPlan();
  const bed = bedFromTyped(plan, layout, {
    ...suggestedBed(plan, layout),
    isRound: true,
    widthM: 3,
  });
  expect(circleOf(bed.outline)?.diameterM).toBeCloseTo(3, 5);
});
