/** Maize border rows against the printed tables, both ways. */
import { describe, expect, test } from "vitest";
import {
  type BorderRowTable,
  type FieldSize,
  borderRowsNeeded,
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

  test.each(["small", "large"] as const)("every row for a %s field, by distance", (size) => {
    for (const [feet, count] of printed(source, size))
      expect(borderRowsNeeded(table, feet * METRES_PER_FOOT, size)).toBe(count);
  });

  test("more distance never asks for more rows", () => {
    let before = Infinity;
    for (let feet = 0; feet <= 700; feet += 5) {
      const rows = borderRowsNeeded(table, feet * METRES_PER_FOOT) ?? Infinity;
      expect(rows).toBeLessThanOrEqual(before);
      before = rows;
    }
  });

  test("nearer than the last row of a small field no number of rows will do", () => {
    expect(borderRowsNeeded(table, 80 * METRES_PER_FOOT)).toBeNull();
    expect(distanceWithBorderRows(table, 40) / METRES_PER_FOOT).toBeCloseTo(85, 9);
  });

  test("without rows the full distance stands", () => {
    const full = table.rows[0]?.[0] ?? 0;
    expect(distanceWithBorderRows(table, 0) / METRES_PER_FOOT).toBeCloseTo(full, 9);
  });
});

test("only a large field may lie at no distance, with 10 rows", () => {
  expect(borderRowsNeeded(cfrBorderRows, 0, "large")).toBe(10);
  expect(borderRowsNeeded(cfrBorderRows, 0, "small")).toBeNull();
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
