/** What a seed list from CSV would do, in words. */
import { expect, test } from "vitest";
import { readVarietiesCsv } from "../../../src/core/exchange/read-varieties-csv.ts";
import { rowEffect, takeWords } from "../../../src/panel/seed-list/csv-words.ts";
import { book, smallPlan } from "../../support/small-plan.ts";

const { plan } = smallPlan();

function list(...rows: readonly string[]) {
  const text = ["name,kind,plants wanted", ...rows].join("\n");
  const read = readVarietiesCsv(text, "list.csv", plan, book);
  if (!read.ok) throw new Error("not read");
  return read.value;
}

test("each row, and how many are taken", () => {
  const read = list("Tarn,beet,5", "Old Ferry,tomato,21", "Mossgate Plum,tomato,30");
  expect(read.accepted.map(rowEffect)).toEqual(["new", "changes plants wanted", "as it is"]);
  expect([takeWords(1), takeWords(2)]).toEqual(["Add 1 variety", "Add 2 varieties"]);
});
