/** What a list from CSV would do, in words. */
import { expect, test } from "vitest";
import { readVarietiesCsv } from "../../../src/core/exchange/read-varieties-csv.ts";
import {
  csvSummary,
  rowEffect,
  rowsToTake,
  takeWords,
} from "../../../src/panel/seed-list/csv-words.ts";
import { book, smallPlan } from "../../support/small-plan.ts";

const { plan } = smallPlan();

function list(...rows: readonly string[]) {
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
  expect(csvSummary(list(...rows))).toBe(words);
});

test("each row, and the rows that change the plan", () => {
  const read = list("Tarn,beet,5", "Old Ferry,tomato,21", "Mossgate Plum,tomato,30");
  expect(read.accepted.map(rowEffect)).toEqual(["new", "changes plants wanted", "as it is"]);
  expect(rowsToTake(read).map(({ row }) => row)).toEqual([2, 3]);
  expect([takeWords(1), takeWords(2)]).toEqual(["Take 1 variety", "Take 2 varieties"]);
});
