import { expect, test } from "vitest";
import { freeLayoutName } from "../../../src/core/edits/layout-edits.ts";
import {
  countedObjects,
  selectedObjects,
  sharedValue,
} from "../../../src/panel/state/selected-objects.ts";
import { plantingAt, smallPlan } from "../../support/small-plan.ts";

test("selected ids become objects; ids of nothing are left out", () => {
  const { plan, layout } = smallPlan([plantingAt(1, 0), plantingAt(2, 3)]);
  const selected = selectedObjects(plan, layout, ["planting-2", "bed-1", "planting-1", "gone"]);
  expect(selected.plantings.map((planting) => planting.id)).toEqual(["planting-1", "planting-2"]);
  expect(countedObjects(selected)).toBe("1 bed, 2 plantings");
});

test("a shared value is told from one that differs, and nothing shared by all from differing", () => {
  const items = [{ plants: 3 }, { plants: 3 }];
  expect(sharedValue(items, (item) => item.plants)).toEqual({ value: 3 });
  expect(sharedValue([...items, { plants: 4 }], (item) => item.plants)).toBeNull();
  expect(sharedValue(items, () => undefined)).toEqual({ value: undefined });
  expect(sharedValue([], () => 1)).toBeNull();
});

test("a layout to be added gets a free id and a free name", () => {
  const { plan, layout } = smallPlan();
  expect(freeLayoutName(plan)).toEqual({ id: "layout-2", name: "Layout 2" });
  const named = { ...plan, layouts: [layout, { ...layout, id: "layout-7", name: "Layout 3" }] };
  expect(freeLayoutName(named)).toEqual({ id: "layout-8", name: "Layout 4" });
});
