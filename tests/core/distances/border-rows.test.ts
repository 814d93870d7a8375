/** Maize border rows against the printed tables. */
import { describe, expect, test } from "vitest";
import {
  type BorderRowTable,
  type FieldSize,
  cfrBorderRows,
  distanceWithBorderRows,
  sweetCornDistance,
  washingtonBorderRows,
} from "../../../src/core/distances/border-rows.ts";
import { fixtureRows } from "../../support/fixture-rows.ts";

const METRES_PER_FOOT = 0.3048;

function printed(source: string, size: FieldSize): readonly (readonly [number, number])[] {
  return fixtureRows("us-border-rows.tsv")
    .filter((row) => row.source?.startsWith(source))
    .map((row) => [Number(row.feet), Number(row[size] || "NaN")] as const)
    .filter(([feet, rows]) => Number.isFinite(feet) && Number.isFinite(rows));
}

const tables: readonly (readonly [string, BorderRowTable])[] = [
  ["7 CFR 201.76 footnote 12", cfrBorderRows],
  ["Washington WAC 16-302-295", washingtonBorderRows],
];

describe.each(tables)("%s", (source, table) => {
  test.each(["small", "large"] as const)("every row for a %s field, by rows", (size) => {
    const rows = printed(source, size);
    expect(rows.length).toBeGreaterThan(8);
    for (const [feet, count] of rows)
      expect(distanceWithBorderRows(table, count, size) / METRES_PER_FOOT).toBeCloseTo(feet, 9);
  });

  test("one row fewer than printed does not permit the distance", () => {
    for (const [feet, count] of printed(source, "small").filter(([, rows]) => rows > 0))
      expect(distanceWithBorderRows(table, count - 1) / METRES_PER_FOOT).toBeGreaterThan(feet + 1);
  });

  test("more rows never ask for more distance", () => {
    let before = Infinity;
    for (let rows = 0; rows <= 30; rows += 1) {
      const metres = distanceWithBorderRows(table, rows);
      expect(metres).toBeLessThanOrEqual(before);
      before = metres;
    }
  });

  test("nearer than the last row of a small field no number of rows will do", () => {
    expect(distanceWithBorderRows(table, 40) / METRES_PER_FOOT).toBeCloseTo(85, 9);
  });

  test("without rows the full distance stands", () => {
    const full = table.rows[0]?.[0] ?? 0;
    expect(distanceWithBorderRows(table, 0) / METRES_PER_FOOT).toBeCloseTo(full, 9);
  });
});

test("only a large field may lie at no distance, with 10 rows", () => {
  expect(distanceWithBorderRows(cfrBorderRows, 10, "large")).toBe(0);
  expect(distanceWithBorderRows(cfrBorderRows, 9, "large")).toBeGreaterThan(0);
  expect(distanceWithBorderRows(cfrBorderRows, 40, "small")).toBeGreaterThan(0);
});

describe("sweet corn, footnote 14", () => {
  test.each([
    [1, 4, 660],
    [4, 4, 645],
    [10, 4, 630],
    [10, 5, 590],
    [10, 16, 150],
    [10, 40, 150],
    [12, 0, 615],
    [40, 4, 510],
    [400, 4, 510],
    [40, 16, 30],
  ])("%d acres and %d border rows: %d ft", (acres, rows, feet) => {
    expect((sweetCornDistance(acres, rows) ?? 0) / METRES_PER_FOOT).toBeCloseTo(feet, 9);
  });

  test("a field of 10 acres or less without its four rows has no distance by this footnote", () => {
    expect(sweetCornDistance(10, 3)).toBeNull();
  });
});
