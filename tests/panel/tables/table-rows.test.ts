import { expect, test } from "vitest";
import type { Surrounding } from "../../../src/core/model/plan.ts";
import { runChecks } from "../../../src/core/checks/run-checks.ts";
import {
  type ObjectTable,
  bedTable,
  plantingTable,
  sortedRows,
  surroundingTable,
} from "../../../src/panel/tables/table-rows.ts";
import { book, day, plantingAt, smallPlan } from "../../support/small-plan.ts";

/** Cells under their headings. */
function read({ columns, rows }: ObjectTable): readonly Readonly<Record<string, string>>[] {
  return rows.map(({ cells }) =>
    Object.fromEntries(columns.map((column, index) => [column, cells[index] ?? "missing"])),
  );
}

const bloom = { first: day("2027-07-01"), last: day("2027-07-31") };

const SHED: Surrounding = {
  id: "surrounding-1",
  label: "tool shed",
  what: "building",
  outline: { shape: "rectangle", x: 20, y: 4, widthM: 2.5, lengthM: 4, turnDeg: 30 },
  flowering: "yes",
  cover: "none",
  locked: true,
};

test("a bed's row says how large it is, where, and what stands in it", () => {
  const { plan, layout } = smallPlan([
    plantingAt(1, 0, { bloom, bed: "bed-1" }),
    plantingAt(2, 0, { bloom, bed: "bed-1" }),
    plantingAt(3, 8, { bloom }),
  ]);
  expect(read(bedTable(plan, layout))).toEqual([
    {
      Bed: "B01",
      Size: "1 m × 10 m",
      Turn: "0°",
      "Right (x)": "0 m",
      "Up (y)": "0 m",
      Plantings: "2",
      Locked: "",
    },
    {
      Bed: "B02",
      Size: "1 m × 10 m",
      Turn: "0°",
      "Right (x)": "3 m",
      "Up (y)": "0 m",
      Plantings: "0",
      Locked: "",
    },
  ]);
});

test("a surrounding's row says what it is; a plant has a kind, a shed has none", () => {
  const { plan } = smallPlan();
  const carrot: Surrounding = {
    id: "surrounding-2",
    label: "lane",
    what: "pollen",
    kind: "wild-carrot",
    outline: { shape: "point", x: 1, y: 2 },
    flowering: "yes",
    cover: "none",
  };
  const table = surroundingTable({ ...plan, surroundings: [SHED, carrot] }, (id) => `<${id}>`);
  expect(read(table)).toEqual([
    {
      Name: "tool shed",
      "What it is": "building",
      Kind: "",
      Size: "2.5 m × 4 m",
      "Right (x)": "20 m",
      "Up (y)": "4 m",
      Locked: "locked",
    },
    {
      Name: "lane",
      "What it is": "pollen source",
      Kind: "<wild-carrot>",
      Size: "a point",
      "Right (x)": "1 m",
      "Up (y)": "2 m",
      Locked: "",
    },
  ]);
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
