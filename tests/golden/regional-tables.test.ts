/** The tables for a regional register hold what the crop base holds. `UPDATE=1` writes them anew. */
import { readFileSync, writeFileSync } from "node:fs";
import { expect, test } from "vitest";
import { cropBook } from "../../src/core/kinds/crop-book.ts";
import { kindsTable, relationsTable } from "../postgis/regional-tables.ts";

test.each([
  ["regional-kinds.csv", kindsTable],
  ["regional-relations.csv", relationsTable],
])("docs/%s", (name, make) => {
  const path = new URL(`../../docs/${name}`, import.meta.url);
  const table = make(cropBook());
  if (process.env["UPDATE"] === "1") writeFileSync(path, table);
  expect(readFileSync(path, "utf8")).toBe(table);
});
