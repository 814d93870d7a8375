import { expect, test } from "vitest";
import { seedListRows, seedListSummary } from "../../../src/panel/seed-list/seed-list-rows.ts";
import { book, plantingAt, smallPlan } from "../../support/small-plan.ts";

test("placed plants add up over the plantings of a variety", () => {
  const { plan, layout } = smallPlan([
    plantingAt(1, 0, { plants: 4 }),
    plantingAt(2, 3, { variety: "variety-1", plants: 6 }),
    plantingAt(3, 6, { variety: "variety-2", plants: 5 }),
  ]);
  const rows = seedListRows(plan, layout, book);
  expect(rows.map((row) => row.placedText)).toEqual(["10 of 10", "5 of 20", "0 of 30"]);
  expect(rows.map((row) => row.isShort)).toEqual([false, true, true]);
  expect(rows[0]?.plantingIds).toEqual(["planting-1", "planting-2"]);
  expect(seedListSummary(rows)).toBe("3 varieties, 2 still to place");
});

test("a variety without a wanted number is short only while nothing of it is placed", () => {
  const { plan, layout } = smallPlan([plantingAt(1, 0)]);
  const varieties = plan.varieties.map(({ wantedPlants: _wanted, ...rest }) => rest);
  const rows = seedListRows({ ...plan, varieties }, layout, book);
  expect(rows.map((row) => row.isShort)).toEqual([false, true, true]);
  expect(rows[0]?.placedText).toBe("0 plants");
});

test("what waits for another year is not short of plants until it is placed again", () => {
  const { plan, layout } = smallPlan([plantingAt(1, 0, { plants: 4 })]);
  const varieties = plan.varieties.map((variety) => ({ ...variety, waits: true }));
  const rows = seedListRows({ ...plan, varieties }, layout, book);
  expect(rows.map((row) => row.placedText)).toEqual(["4 of 10", "waits", "waits"]);
  expect(rows.map((row) => row.isShort)).toEqual([true, false, false]);
});

test("a kind that is not known is named as it stands in the plan", () => {
  const { plan, layout } = smallPlan();
  const varieties = plan.varieties
    .slice(0, 1)
    .map((variety) => ({ ...variety, kind: "moonfruit" }));
  expect(seedListRows({ ...plan, varieties }, layout, book)[0]?.kindText).toBe(
    'unknown kind "moonfruit"',
  );
});

test("rows stay the same while plantings are moved, and are made anew for all they tell of", () => {
  const { plan, layout } = smallPlan([plantingAt(1, 0, { plants: 4 }), plantingAt(2, 3)]);
  const rows = seedListRows(plan, layout, book);
  const [first, ...others] = layout.plantings;
  if (!first) throw new Error("nothing is planted");
  const withFirst = (planting: typeof first) =>
    seedListRows(plan, { ...layout, plantings: [planting, ...others] }, book);
  expect(
    withFirst({
      ...first,
      outline: { shape: "rectangle", x: 40, y: 2, widthM: 1, lengthM: 2, turnDeg: 0 },
    }),
  ).toBe(rows);
  expect(withFirst({ ...first, plants: 9 })[0]?.placedText).toBe("9 of 10");
  expect(withFirst({ ...first, variety: "variety-3" })[0]?.isShort).toBe(true);
  expect(seedListRows(plan, { ...layout, plantings: others }, book)[0]?.plantingIds).toEqual([]);
  expect(seedListRows({ ...plan, varieties: [] }, layout, book)).toEqual([]);
});
