import { describe, expect, test } from "vitest";
import { lotColumns, lotsCsv } from "../../../src/core/exchange/lots-csv.ts";
import { readLotsCsv } from "../../../src/core/exchange/read-lots-csv.ts";
import { cropBook } from "../../../src/core/kinds/crop-book.ts";
import type { Plan } from "../../../src/core/model/plan.ts";
import { readFileSync } from "node:fs";
import { readPlan } from "../../../src/core/model/read-plan.ts";
import { problemText } from "../../../src/core/model/problem.ts";

const book = cropBook();

function shelf(): Plan {
  const url = new URL("../../fixtures/plans/frozen-version-3.json", import.meta.url);
  const read = readPlan(readFileSync(url, "utf8"), "plan", (id) => book.kind(id) !== undefined);
  if (!read.ok) throw new Error(read.problems.map(problemText).join("\n"));
  return read.value;
}
const plan = shelf();

function readList(text: string) {
  const read = readLotsCsv(text, "lots.csv", plan, book);
  if (!read.ok) throw new Error(read.problems.map(problemText).join("\n"));
  return read.value;
}

test("what is written reads back as the same, without a new place", () => {
  const list = readList(lotsCsv(plan, book));
  expect(list.accepted.map(({ change }) => change)).toEqual(["same", "same"]);
  expect(list.accepted.map(({ lot }) => lot)).toEqual(plan.lots);
  expect([list.rejected, list.newPlaces, list.unknownColumns]).toEqual([[], [], []]);
});

test("rows of known codes change that lot, others are added, empty cells leave things", () => {
  const list = readList(
    "code;variety;amount;unit;kept at;test date;test sown;test sprouted\r\n" +
      "pl-24-01;plum lantern;5,25;;Cellar;2026-01-10;50;44\r\n" +
      "OK-26;Old Kiln;300;seeds;cellar;;;\r\n",
  );
  const [changed, added] = list.accepted;
  expect(changed?.change).toBe("changed");
  expect(changed?.lot).toMatchObject({
    code: "PL-24-01",
    amount: { unit: "g", value: 5.25 },
    harvestYear: 2024,
    note: "Tin with the blue lid",
  });
  expect(changed?.lot.tests?.map(({ id, sprouted }) => [id, sprouted])).toEqual([
    ["t1", 84],
    ["t2", 44],
  ]);
  expect(changed?.lot.stored?.at(-1)).toMatchObject({ place: "place-3" });
  expect(added).toMatchObject({
    row: 3,
    change: "new",
    lot: { id: "lot-3", code: "OK-26", variety: "v2", amount: { unit: "seeds", value: 300 } },
  });
  expect(list.newPlaces).toEqual([{ id: "place-3", name: "Cellar" }]);
});

test("that seed may have crossed is written and read as said; what follows from records is written alone", () => {
  const [first, second] = plan.lots;
  if (!first || !second) throw new Error("The plan has no two lots.");
  const crossed = { ...first, mayHaveCrossed: true };
  const child = { ...second, partOf: [first.id] };
  const made = { ...plan, lots: [crossed, child] };
  const text = lotsCsv(made, book);
  expect(text).toContain(`,yes,${first.state}`);
  expect(text).toContain(`,as recorded: ${first.code},${second.state}`);
  const read = readLotsCsv(text, "lots.csv", made, book);
  if (!read.ok) throw new Error(read.problems.map(problemText).join("\n"));
  expect(read.value.accepted.map(({ change, lot }) => [change, lot])).toEqual([
    ["same", crossed],
    ["same", child],
  ]);
  const said = readList(`code,variety,may have crossed\n${first.code},Plum Lantern,no`);
  expect(said.accepted[0]?.lot.mayHaveCrossed).toBe(false);
});

describe("a row is refused with its column, and takes nothing with it:", () => {
  const HEAD =
    "code,variety,kind,harvest year,amount,unit,test date,test sown,test sprouted,treated,state";
  test.each<[string, string, string, string]>([
    ["no code", ",Old Kiln,,,,,,,,,", "code", "the lot's code"],
    ["no such variety", "A,Nobody,,,,,,,,,", "variety", "a variety of the seed list, of that kind"],
    [
      "a variety of another kind",
      "A,Old Kiln,pea,,,,,,,,",
      "variety",
      "a variety of the seed list, of that kind",
    ],
    [
      "a kind nobody knows",
      "A,Old Kiln,snark,,,,,,,,",
      "kind",
      "the common name, botanical name or id of a kind known here",
    ],
    ["a negative amount", "A,Old Kiln,,,-2,g,,,,,", "amount", "at least 0"],
    ["words for an amount", "A,Old Kiln,,,some,g,,,,,", "amount", "a finite number"],
    ["another unit", "A,Old Kiln,,,2,lb,,,,,", "unit", 'one of "g", "seeds"'],
    ["half a seed", "A,Old Kiln,,,2.5,seeds,,,,,", "amount", "a whole number of seeds"],
    [
      "more sprouted than sown",
      "A,Old Kiln,,,,,2026-01-01,10,11,,",
      "test sprouted",
      "at most the 10 seeds sown",
    ],
    [
      "a test before the harvest",
      "A,Old Kiln,,2026,,,2025-12-31,10,9,,",
      "test date",
      "a day in its harvest year 2026 or later",
    ],
    ["no real date", "A,Old Kiln,,,,,2026-02-30,10,9,,", "test date", "a real date as YYYY-MM-DD"],
    ["a test without its seeds", "A,Old Kiln,,,,,2026-02-20,,9,,", "test sown", "a finite number"],
    ["neither yes nor no", "A,Old Kiln,,,,,,,,maybe,", "treated", "true or false"],
    [
      "a state nobody knows",
      "A,Old Kiln,,,,,,,,,eaten",
      "state",
      'one of "in stock", "used up", "discarded"',
    ],
  ])("%s", (_, row, column, expected) => {
    const list = readList(`${HEAD}\n${row}\nGOOD,Old Kiln,,,,,,,,,\n`);
    expect(list.rejected.map(({ row: at, problems }) => [at, problems[0]?.column])).toEqual([
      [2, column],
    ]);
    expect(list.rejected[0]?.problems[0]?.expected).toContain(expected);
    expect(list.accepted.map(({ lot }) => lot.code)).toEqual(["GOOD"]);
  });

  test("a code used twice in the file", () => {
    const list = readList(`${HEAD}\nA,Old Kiln,,,,,,,,,\na ,Old Kiln,,,,,,,,,\n`);
    expect(list.rejected).toMatchObject([
      { row: 3, problems: [{ column: "code", expected: "each code once (row 2 has it already)" }] },
    ]);
  });
});

describe("a row that spreadsheets and people have broken is told, as in the seed list:", () => {
  const HEAD = "code,variety,amount,note";

  test.each([
    ["a quote that is never closed", 'A,Old Kiln,2,"tin', "a closing double quote"],
    ["a quote within a cell", 'A,Old Kiln,2,"1"2', "double quote"],
    ["more cells than headings", "A,Old Kiln,2,tin,5", "at most 4 cells"],
  ])("%s", (_, row, expected) => {
    const list = readList(`${HEAD}\nGOOD,Old Kiln,1,\n${row}\nLATER,Old Kiln,1,\n`);
    expect(list.accepted[0]?.lot.code).toBe("GOOD");
    expect(list.rejected[0]).toMatchObject({ row: 3, name: "A" });
    expect(list.rejected[0]?.problems[0]?.expected).toContain(expected);
  });

  test("rows are counted as the spreadsheet does where it names its delimiter first", () => {
    const list = readList("sep=;\r\ncode;variety\r\nA;Nobody\r\n");
    expect(list.rejected.map(({ row }) => row)).toEqual([3]);
  });
});

test("files without the heading needed, with one twice, or with nothing are refused whole", () => {
  for (const text of ["", "code,amount\nA,2\n", "code,variety,code\nA,B,C\n"]) {
    expect(readLotsCsv(text, "lots.csv", plan, book).ok).toBe(false);
  }
  expect(lotColumns.slice(0, 2)).toEqual(["code", "variety"]);
});

test("a list without codes gives each row one of its own, by the pattern, that no lot has", () => {
  const name = plan.varieties[0]?.name ?? "";
  const text = `variety,harvest year\n${name},2024\n${name},2024\n`;
  const list = readLotsCsv(text, "lots.csv", plan, book);
  if (!list.ok) throw new Error("The list can be read.");
  const codes = list.value.accepted.map(({ lot }) => lot.code);
  expect(list.value.accepted.map(({ change }) => change)).toEqual(["new", "new"]);
  expect(codes.every((code) => code.includes("-24-"))).toBe(true);
  expect(new Set([...codes, ...plan.lots.map(({ code }) => code)]).size).toBe(2 + plan.lots.length);
});
