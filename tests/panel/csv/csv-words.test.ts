/** What lists from CSV would do, in words: the seed list's and the shelf's alike. */
import { expect, test } from "vitest";
import { readLotsCsv } from "../../../src/core/exchange/read-lots-csv.ts";
import { readVarietiesCsv } from "../../../src/core/exchange/read-varieties-csv.ts";
import { csvSummary, rowsToTake } from "../../../src/panel/csv/csv-words.ts";
import { book, smallPlan } from "../../support/small-plan.ts";

const { plan } = smallPlan();

function varieties(...rows: readonly string[]) {
  const text = ["name,kind,plants wanted", ...rows].join("\n");
  const read = readVarietiesCsv(text, "list.csv", plan, book);
  if (!read.ok) throw new Error("not read");
  return read.value;
}

test.each([
  [["Tarn,beet,5"], "1 new; every row can be used."],
  [["Old Ferry,tomato,20"], "1 as they are; every row can be used."],
  [["Tarn,beet,5", "Old Ferry,tomato,21", "X,?,1"], "1 new, 1 changed; 1 row cannot be used."],
  [["X,?,1", "Y,?,1"], "Nothing to take; 2 rows cannot be used."],
  [[], "No rows."],
])("%j: %s", (rows, words) => {
  expect(csvSummary(varieties(...rows))).toBe(words);
});

test("rows that change the plan are taken, others are not", () => {
  const { accepted } = varieties("Tarn,beet,5", "Old Ferry,tomato,21", "Mossgate Plum,tomato,30");
  expect(rowsToTake(accepted).map(({ row }) => row)).toEqual([2, 3]);
});

test("lots are counted in the same words", () => {
  const read = readLotsCsv("code,variety\nA-1,Old Ferry\nA-2,Nobody\n", "lots.csv", plan, book);
  if (!read.ok) throw new Error("not read");
  expect(csvSummary(read.value)).toBe("1 new; 1 row cannot be used.");
});
