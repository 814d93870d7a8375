import { expect, test } from "vitest";
import { countEntries, idsOnSheet } from "../../../src/core/model/collections.ts";
import { copyLayout } from "../../../src/core/edits/layout-edits.ts";
import { layoutOf, source, squareAt, trialPlan } from "../../support/trial-plan.ts";

const plan = copyLayout("layout-1", "layout-2", "Second").apply(
  trialPlan(
    { p: { at: 0, kind: "tomato" }, q: { at: 9, kind: "tomato" } },
    [source("feral", "carrot", squareAt(3))],
    { earlierCrops: [{ id: "c", outline: squareAt(3), kind: "tomato", year: 2026 }] },
  ),
);

test("what is on the sheet is what the layout and the surroundings hold, and no entry of a list", () => {
  expect([...idsOnSheet(plan, layoutOf(plan))].sort()).toEqual(["feral", "p", "q"]);
});

test("every list is counted, plantings of all layouts together", () => {
  expect(Object.fromEntries(countEntries(plan))).toEqual({
    surroundings: 1,
    varieties: 2,
    lots: 0,
    storagePlaces: 0,
    ownKinds: 0,
    earlierCrops: 1,
    groundMarks: 0,
    entries: 0,
    beds: 0,
    plantings: 4,
  });
});
