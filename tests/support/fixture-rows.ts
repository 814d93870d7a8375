/** Rows of the copied reference tables in tests/fixtures/figures. */
import { readFileSync } from "node:fs";

export type FixtureRow = Readonly<Record<string, string>>;

const FOLDER = new URL("../fixtures/figures/", import.meta.url);

/** Rows of a tab-separated table; lines that begin with # say where it is from. */
export function fixtureRows(name: string): readonly FixtureRow[] {
  const [head = "", ...lines] = readFileSync(new URL(name, FOLDER), "utf8")
    .split("\n")
    .filter((line) => line !== "" && !line.startsWith("#"));
  const columns = head.split("\t");
  return lines.map((line) => {
    const cells = line.split("\t");
    return Object.fromEntries(columns.map((column, index) => [column, cells[index] ?? ""]));
  });
}

/** The kinds a row was mapped to by us; none where we carry none. */
export function kindsOf(row: FixtureRow): readonly string[] {
  return (row.kinds ?? "").split(";").filter((id) => id !== "");
}
