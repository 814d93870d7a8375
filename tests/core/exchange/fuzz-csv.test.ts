/** Tables out and in: nothing a spreadsheet would run, nothing lost on the way, nothing half read. */
import Papa from "papaparse";
import { describe, expect, test } from "vitest";
import { csvFile } from "../../../src/core/formats/csv-file.ts";
import { MAX_CSV_LENGTH } from "../../../src/core/exchange/csv-list.ts";
import { readVarietiesCsv } from "../../../src/core/exchange/read-varieties-csv.ts";
import { varietiesCsv } from "../../../src/core/exchange/varieties-csv.ts";
import { seededRandom } from "../../properties/seeded-random.ts";
import { book, planOf, variety } from "../../support/paper-garden.ts";

const FORMULAS = [
  "=1+1",
  "+cmd|' /C calc'!A0",
  "-2+3",
  "@SUM(A1)",
  "\t=1",
  "\r=1",
  " =1+1",
  "\uFF1D1+1",
  "'=1+1",
  '"=1+1"',
];
const PLAIN = ['He said "early"', "two\nlines", "a;b", "a,b", "'Tis late", "O'Lantern", "3E5"];

function cellsOf(text: string): readonly (readonly string[])[] {
  return Papa.parse(text.trimEnd(), { delimiter: "," }).data;
}

describe("formulas", () => {
  test.each(FORMULAS)("%j is text in the table", (name) => {
    const [, row] = cellsOf(csvFile(["name", "metres"], [[name, -3.5]]));
    expect(row?.[0]).not.toMatch(/^\s*[=+\-@\t\r\uFF1D]/);
    expect(row?.[1]).toBe("-3.5");
  });

  test.each(FORMULAS)("%j is text in a heading", (name) => {
    expect(cellsOf(csvFile([name], []))[0]?.[0]).not.toMatch(/^\s*[=+\-@\t\r\uFF1D]/);
  });

  test.each([...FORMULAS.filter((name) => !/[\t\r]|^ /.test(name)), ...PLAIN])(
    "a variety called %j comes back as it was",
    (name) => {
      const plan = planOf({ varieties: [variety("v", name, "tomato")] }, [], []);
      const read = readVarietiesCsv(varietiesCsv(plan, book), "seeds.csv", plan, book);
      expect(read.ok && read.value.rejected).toEqual([]);
      expect(read.ok && read.value.accepted.map((row) => row.change)).toEqual(["same"]);
    },
  );
});

describe("a table that is not as it should be", () => {
  const plan = planOf({}, [], []);
  const read = (text: string) => readVarietiesCsv(text, "seeds.csv", plan, book);

  test.each([
    ["semicolons", "name;kind\nAmber;tomato\n"],
    ["tabs", "name\tkind\nAmber\ttomato\n"],
    ["a byte order mark", "\uFEFFname,kind\r\nAmber,tomato\r\n"],
    ["a line break in a cell", 'name,kind,note\nAmber,tomato,"two\nlines"\n'],
    ["a row too long", "name,kind\nAmber,tomato,,,\n"],
  ])("%s: is read", (_, text) => {
    const list = read(text);
    expect(list.ok && list.value.accepted.map((row) => row.variety.name)).toEqual(["Amber"]);
  });

  test("a bad row is listed with its number, and the others are read", () => {
    const list = read("name,kind,plants wanted\nAmber,tomato,many\nDusk,tomato,12\n");
    expect(list.ok && list.value.rejected.map((row) => row.row)).toEqual([2]);
    expect(list.ok && list.value.accepted.map((row) => row.variety.name)).toEqual(["Dusk"]);
  });

  test.each([
    ["nothing", ""],
    ["no headings known here", "a,b\n1,2\n"],
    ["more than is read", `name,kind\n${"x".repeat(MAX_CSV_LENGTH)}`],
  ])("%s: is refused", (_, text) => {
    expect(read(text).ok).toBe(false);
  });

  test("two thousand damaged tables are read row by row or refused", () => {
    const whole = varietiesCsv(
      planOf(
        { varieties: [variety("a", "Amber", "tomato"), variety("b", "Dusk", "beet")] },
        [],
        [],
      ),
      book,
    );
    for (let seed = 1; seed <= 2000; seed += 1) {
      const random = seededRandom(seed);
      let text = whole;
      for (let time = 0; time < 3; time += 1) {
        const at = random.whole(0, text.length);
        const put = random.pick(['"', ",", ";", "\n", "\r", "\t", "\u0000", "=", "1e999", "-", ""]);
        text = text.slice(0, at) + put + text.slice(at + random.whole(0, 4));
      }
      const list = read(text);
      if (!list.ok) expect(list.problems.length).toBeGreaterThan(0);
      else for (const { variety: found } of list.value.accepted) expect(found.name).not.toBe("");
    }
  });
});
