/** The tables for a regional register hold what the crop base holds. `UPDATE=1` writes them anew. */
import { readFileSync, writeFileSync } from "node:fs";
import { expect, test } from "vitest";
import { cropBook } from "../../src/core/kinds/crop-book.ts";
import { kindsTable, relationsTable, wildTable } from "../postgis/regional-tables.ts";

test.each([
  ["regional-kinds.csv", kindsTable],
  ["regional-relations.csv", relationsTable],
  ["regional-wild.csv", wildTable],
])("docs/%s", (name, make) => {
  const path = new URL(`../../docs/${name}`, import.meta.url);
  const table = make(cropBook());
  if (process.env["UPDATE"] === "1") writeFileSync(path, table);
  expect(readFileSync(path, "utf8")).toBe(table);
});

/** Rows of a table as the view reads them. */
function rows(table: string): readonly (readonly string[])[] {
  return table
    .trim()
    .split("\n")
    .map((line) => line.split(","));
}

test("chicory takes the pollen of endive, endive none of chicory", () => {
  const chicory = rows(relationsTable(cropBook())).filter(
    (row) => row.includes("chicory") && row.includes("endive"),
  );
  expect(chicory.map(([seed, pollen]) => [seed, pollen])).toEqual([["chicory", "endive"]]);
});

test("a carrot needs more from wild carrot than from a carrot, a lettuce from prickly lettuce", () => {
  const wild = rows(wildTable(cropBook()));
  // ICAR eCourse, carrot, strictest class; hybrids of lettuce and prickly lettuce found at 40 m.
  expect(wild).toContainEqual(["carrot", "wild-carrot", "1000"]);
  expect(wild).toContainEqual(["lettuce", "prickly-lettuce", "40"]);
});

test("a level without a figure carries a laxer level's as the least, and says so", () => {
  const [header = [], ...kinds] = rows(kindsTable(cropBook()));
  const least = kinds.filter((row) => row[header.indexOf("stock_is_least")] === "true");
  expect(least.length).toBeGreaterThan(0);
  for (const row of least) expect(Number(row[header.indexOf("stock_m")])).toBeGreaterThan(0);
});
