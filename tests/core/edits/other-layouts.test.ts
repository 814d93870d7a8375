/** Plantings and beds taken from one layout to another. */
import { expect, test } from "vitest";
import { copyLayout } from "../../../src/core/edits/layout-edits.ts";
import { moveObjects } from "../../../src/core/edits/move-objects.ts";
import { removeObjects } from "../../../src/core/edits/object-edits.ts";
import {
  copyToLayout,
  moveToLayout,
  sameBedsInLayouts,
} from "../../../src/core/edits/other-layouts.ts";
import type { Layout, Plan } from "../../../src/core/model/plan.ts";
import {
  bed,
  firstLayout,
  gardenPlan,
  planting,
  square,
  variety,
} from "../../support/arrange-garden.ts";

function twoLayouts(): Plan {
  const plan = gardenPlan(
    [variety("a", "tomato")],
    [bed("b1", 0, 0, 4, 20), bed("b2", 10, 0, 4, 20)],
    [
      planting("p1", "a", { outline: square(0, 0, 1), bed: "b1", code: "B1-1" }),
      planting("p2", "a", { outline: square(0, 4, 1), bed: "b1", code: "B1-2" }),
    ],
  );
  return copyLayout("layout-1", "layout-2", "Layout 2").apply(plan);
}

function second(plan: Plan): Layout {
  const layout = plan.layouts.find(({ id }) => id === "layout-2");
  if (!layout) throw new Error("no second layout");
  return layout;
}

test("a copied planting takes its new place along, and stands once", () => {
  const moved = moveObjects("layout-1", ["p1"], 10, 2).apply(twoLayouts());
  const plan = copyToLayout("layout-1", ["p1"], "layout-2", "").apply(moved);
  const found = second(plan).plantings.filter(({ id }) => id === "p1");
  expect(found).toHaveLength(1);
  expect(found[0]).toMatchObject({ bed: "b2", outline: { x: 10, y: 2 } });
  expect(firstLayout(plan)).toBe(firstLayout(moved));
});

test("a moved planting leaves its layout and gets a free code", () => {
  const base = twoLayouts();
  const other = {
    ...second(base),
    plantings: [planting("q", "a", { outline: square(0, 8, 1), bed: "b1", code: "B1-1" })],
  };
  const plan = moveToLayout("layout-1", ["p1"], "layout-2", "").apply({
    ...base,
    layouts: [firstLayout(base), other],
  });
  expect(firstLayout(plan).plantings.map(({ id }) => id)).toEqual(["p2"]);
  expect(second(plan).plantings.map(({ id, code }) => [id, code])).toEqual([
    ["q", "B1-1"],
    ["p1", "B1-2"],
  ]);
});

test("nothing happens for plantings that are not there, or within one layout", () => {
  const plan = twoLayouts();
  expect(copyToLayout("layout-1", ["gone"], "layout-2", "").apply(plan)).toBe(plan);
  expect(moveToLayout("layout-1", ["p1"], "layout-1", "").apply(plan)).toBe(plan);
});

test("beds go to other layouts; plantings there stay and belong to the bed under them", () => {
  const edited = removeObjects("layout-1", ["p1", "p2"]).apply(twoLayouts());
  const moved = moveObjects("layout-1", ["b1"], -20, 0).apply(edited);
  const plan = sameBedsInLayouts("layout-1", ["layout-2"], "").apply(moved);
  expect(second(plan).beds).toEqual(firstLayout(plan).beds);
  const [first] = second(plan).plantings;
  expect(first).toMatchObject({ id: "p1", outline: { x: 0, y: 0 } });
  expect(first?.bed).toBeUndefined();
});
