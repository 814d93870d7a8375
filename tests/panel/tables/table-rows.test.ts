import { expect, test } from "vitest";
import { runChecks } from "../../../src/core/checks/run-checks.ts";
import {
  bedTable,
  plantingTable,
  sortedRows,
  surroundingTable,
} from "../../../src/panel/tables/table-rows.ts";
import { book, day, plantingAt, smallPlan } from "../../support/small-plan.ts";

const bloom = { first: day("2027-07-01"), last: day("2027-07-31") };

test("every row has a cell for every column", () => {
  const { plan, layout } = smallPlan([
    plantingAt(1, 0, { bloom, bed: "bed-1" }),
    plantingAt(2, 1.2, { bloom }),
  ]);
  const withNeighbour = {
    ...plan,
    surroundings: [
      {
        id: "surrounding-1",
        label: "lane",
        what: "path" as const,
        outline: { shape: "point" as const, x: 1, y: 2 },
        flowering: "yes" as const,
        cover: "none" as const,
      },
    ],
  };
  const tables = [
    bedTable(plan, layout),
    plantingTable(plan, layout, runChecks(plan, layout, book)),
    surroundingTable(withNeighbour, (id) => id),
  ];
  for (const { columns, rows } of tables) {
    expect(rows.length).toBeGreaterThan(0);
    for (const row of rows) expect(row.cells).toHaveLength(columns.length);
  }
});

test("a planting's row says its bed, plants and conflicts", () => {
  const { plan, layout } = smallPlan([
    plantingAt(1, 0, { bloom, bed: "bed-1", plants: 12 }),
    plantingAt(2, 1.2, { bloom }),
  ]);
  const { columns, rows } = plantingTable(plan, layout, runChecks(plan, layout, book));
  const cell = (column: string) => rows[0]?.cells[columns.indexOf(column)];
  expect([cell("Bed"), cell("Plants"), cell("Conflicts"), cell("First flower")]).toEqual([
    "B01",
    "12",
    "1",
    "1 Jul",
  ]);
});

test("rows sort by the numbers in their texts, both ways, alike ones staying in order", () => {
  const rows = ["B10", "B2", "B1"].map((code, index) => ({
    id: String(index),
    cells: [code, index < 2 ? "x" : "w"],
  }));
  const codes = (column: number, isDescending: boolean) =>
    sortedRows(rows, { column, isDescending }).map((row) => row.cells[0]);
  expect(codes(0, false)).toEqual(["B1", "B2", "B10"]);
  expect(codes(0, true)).toEqual(["B10", "B2", "B1"]);
  expect(codes(1, false)).toEqual(["B1", "B10", "B2"]);
  expect(sortedRows(rows, null)).toBe(rows);
});
