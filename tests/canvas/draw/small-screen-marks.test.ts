/** What a small screen needs: a ring about what is tried, and a scale bar that hides no ground. */
import { expect, test } from "vitest";
import { drawScaleBar } from "../../../src/canvas/draw/draw-furniture.ts";
import { sheetItems } from "../../../src/canvas/scene/sheet-items.ts";
import { drawTrial } from "../../../src/canvas/sheet/draw-trial.ts";
import { layoutOf, trialPlan } from "../../support/trial-plan.ts";
import { book } from "../../support/drawn-plan.ts";
import { recorder } from "../../support/told-canvas.ts";

const plan = trialPlan({ one: { kind: "carrot", at: 10 } });
const items = [...sheetItems(plan, layoutOf(plan), book).byId.values()].filter(
  ({ id }) => id === "one",
);

test("what is tried is ringed where it is small on the screen, and not where it is large", () => {
  const arcs = (scale: number) => {
    const { told, brush } = recorder({ view: { x: 0, y: 0, scale } });
    drawTrial(brush, items, items);
    return told.filter((each) => each.startsWith("arc "));
  };
  expect(items).toHaveLength(1);
  expect(arcs(4)).toHaveLength(1);
  const radius = Number(arcs(4)[0]?.split(",")[2]);
  expect(radius).toBeGreaterThanOrEqual(12);
  expect(arcs(400)).toEqual([]);
});

test("on a low sheet the scale bar lies on no paper, and is as true as on a high one", () => {
  const bars = (heightPx: number) => {
    const { told, brush } = recorder({ heightPx, view: { x: 0, y: 0, scale: 6 } });
    drawScaleBar(brush, "m", "grid 10 m");
    return told;
  };
  expect(bars(700).some((each) => each.startsWith("fillRect "))).toBe(true);
  const low = bars(240);
  expect(low.some((each) => each.startsWith("fillRect "))).toBe(false);
  const widths = low
    .filter((each) => each.startsWith("rect "))
    .map((each) => Number(each.split(",")[2]));
  const length = Number(/fillText (\d+) m/.exec(low.join("\n"))?.[1]);
  expect(widths.reduce((sum, width) => sum + width, 0)).toBeCloseTo(length * 6, 6);
});
