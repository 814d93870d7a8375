import { expect, test } from "vitest";
import { cropBook } from "../../../src/core/kinds/crop-book.ts";
import type { Kind } from "../../../src/core/kinds/crop.ts";
import { plantRoom, plantsInRow, rowLength } from "../../../src/core/beds/plant-room.ts";
import { setPlantsAndOutline } from "../../../src/core/edits/planting-size.ts";
import { LAYOUT, littlePlan, plantingOf, rectangle } from "../../support/little-plan.ts";

const lettuce: Kind = {
  ...(cropBook().kind("lettuce") as Kind),
  spacing: { inRowM: { value: 0.25, source: "own" }, betweenRowsM: { value: 0.3, source: "own" } },
};

test("rows run along a rectangle; any other ground is counted by its area", () => {
  expect(plantRoom(lettuce, rectangle(0, 0, 1, 2))).toMatchObject({
    grid: { rows: 3, perRow: 8 },
    plants: 24,
    source: "own",
  });
  const corners: [number, number][] = [
    [0, 0],
    [3, 0],
    [0, 2],
  ];
  // Half of 3 by 2 m is 3 square metres, 0.075 for each plant.
  expect(plantRoom(lettuce, { shape: "polygon", corners })).toMatchObject({
    grid: null,
    plants: 40,
  });
});

test("a kind without a spacing is counted at an assumed one, and says so", () => {
  const { spacing: _none, ...bare } = lettuce;
  expect(plantRoom(bare, rectangle(0, 0, 0.1, 0.1))).toMatchObject({ source: null, plants: 1 });
});

test("plants, rows and plants in a row agree; a last row may hold fewer", () => {
  expect([plantsInRow(24, 2), plantsInRow(25, 2), plantsInRow(5, 0)]).toEqual([12, 13, 5]);
  const room = plantRoom(lettuce, rectangle(0, 0, 1, 2));
  expect(rowLength(room, 24, 2)).toBe(3);
  expect(rowLength(room, 0, 2)).toBe(0.25);
});

test("size and plants are given in one step, and a locked planting keeps both", () => {
  const size = { outline: rectangle(0, 1, 1, 4), plants: 30, rows: 2 };
  const next = setPlantsAndOutline(LAYOUT, "p2", size, "Fit").apply(littlePlan);
  expect(plantingOf(next, "p2")).toMatchObject(size);
  const [only] = littlePlan.layouts;
  if (!only) throw new Error("no layout");
  const plantings = only.plantings.map((each) => ({ ...each, locked: true }));
  const locked = { ...littlePlan, layouts: [{ ...only, plantings }] };
  expect(setPlantsAndOutline(LAYOUT, "p2", size, "Fit").apply(locked)).toBe(locked);
});
