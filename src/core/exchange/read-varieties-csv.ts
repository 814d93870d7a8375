/**
 * A seed list from CSV. Nothing is changed here: the answer says row by row what would be taken and
 * what would not, and why.
 */
import { varietyKey } from "../model/variety-key.ts";
import type { CropBook } from "../kinds/crop-book.ts";
import type { Kind } from "../kinds/crop.ts";
import { nextId, patched } from "../edits/edit.ts";
import { lotBook } from "../lots/lot-book.ts";
import { namedLots } from "../lots/named-lots.ts";
import type { DecimalMark } from "../model/decimal-marks.ts";
import type { LengthUnit } from "../model/length.ts";
import type { Lot, Plan, Variety } from "../model/plan.ts";
import { type Read, shown } from "../model/problem.ts";
import { LIMITS } from "../model/limits.ts";
import {
  type CellProblem,
  type CsvRow,
  type ListHeadings,
  type RejectedRow,
  readCsvList,
} from "./csv-list.ts";
import { type CellChanges, type ValueColumn, lotCell, readCell, shortText } from "./csv-values.ts";
import { type CsvColumn, csvColumns, varietyCells } from "./varieties-csv.ts";

export interface AcceptedRow {
  readonly row: number;
  /** `changed`: a variety of that name and kind is in the plan and differs. */
  readonly change: "new" | "changed" | "same";
  readonly variety: Variety;
  /** Columns by which it differs from the variety in the plan. */
  readonly columns: readonly CsvColumn[];
}

export interface VarietyList {
  readonly accepted: readonly AcceptedRow[];
  readonly rejected: readonly RejectedRow[];
  /** Lots under codes that were not on the shelf, named by accepted rows. */
  readonly newLots: readonly Lot[];
  /** Headings that are not known here and were passed over. */
  readonly unknownColumns: readonly string[];
}

/** Reads a list against a plan: rows of a name and kind already there change that variety. */
export function readVarietiesCsv(
  text: string,
  file: string,
  plan: Plan,
  book: CropBook,
): Read<VarietyList> {
  const list = readCsvList(text, file, {
    ...HEADINGS,
    guess: (found) => columnsByContent(found, book),
  });
  if (!list.ok) return list;
  const { columns, rows, hasDecimalComma, unknownColumns } = list.value;
  const reader = listReader(columns, plan, book, hasDecimalComma ? "," : undefined);
  for (const row of rows) reader.take(row);
  return { ok: true, value: { ...reader.list, unknownColumns } };
}

/** Lists that people type have no more columns; what is wider is another kind of file. */
const MOST_TYPED_COLUMNS = 12;

/**
 * Of a list without headings, as people type one: the column most of whose cells name a kind, the
 * first other one of words, and the first of whole numbers, which are the plants wanted.
 */
function columnsByContent(
  rows: readonly (readonly string[])[],
  book: CropBook,
): readonly (CsvColumn | null)[] | null {
  const filled = rows.filter((cells) => cells.some((cell) => cell !== ""));
  const width = filled.reduce((most, { length }) => Math.max(most, length), 0);
  if (width > MOST_TYPED_COLUMNS) return null;
  const all = Array.from({ length: width }, (_, index) =>
    filled.map((cells) => cells[index] ?? "").filter((cell) => cell !== ""),
  );
  const isKind = (cell: string) => book.find(cell) !== undefined || book.sharing(cell).length > 0;
  const kindsIn = all.map((cells) => cells.filter(isKind).length);
  const most = Math.max(0, ...kindsIn);
  if (most * 2 < filled.length || most === 0) return null;
  const kind = kindsIn.indexOf(most);
  const isCounts = (cells: readonly string[]) => cells.every((cell) => /^\d{1,6}$/.test(cell));
  const counts = all.findIndex(
    (cells, index) => index !== kind && cells.length > 0 && isCounts(cells),
  );
  const name = all.findIndex(
    (cells, index) => index !== kind && cells.length > 0 && !isCounts(cells),
  );
  if (name === -1) return null;
  return all.map((_, index) => {
    if (index === kind) return "kind";
    if (index === name) return "name";
    return index === counts ? "plants wanted" : null;
  });
}

const HEADINGS: ListHeadings<CsvColumn> = {
  columns: csvColumns,
  alike: new Map([
    ["variety", "name"],
    ["crop", "kind"],
    ["species", "botanical name"],
    ["form", "flower form"],
    ["f1", "hybrid"],
    ["wanted", "plants wanted"],
    ["plants", "plants wanted"],
    ["isolation", "isolation distance"],
    ["distance", "isolation distance"],
    ["notes", "note"],
  ]),
  isEnough: (has) => has("name") && (has("kind") || has("botanical name")),
};

/** Takes row after row; knows what is in the plan and what the rows before have used. */
function listReader(
  columns: readonly (CsvColumn | null)[],
  plan: Plan,
  book: CropBook,
  decimalMark: DecimalMark | undefined,
) {
  const accepted: AcceptedRow[] = [];
  const rejected: RejectedRow[] = [];
  const present = new Map(plan.varieties.map((variety) => [rowKey(variety), variety]));
  const rowOf = new Map<string, number>();
  const lots = namedLots(plan.lots);
  const lotOf = (id: string) =>
    lotBook(plan.lots).lot(id) ?? lots.made.find((lot) => lot.id === id);
  const firstId = nextId(
    "variety-",
    plan.varieties.map(({ id }) => id),
  );
  let nextNumber = Number(firstId.replace("variety-", ""));
  let total = plan.varieties.length;

  const take = ({ row, cells, problem }: CsvRow) => {
    const cellOf = (column: CsvColumn) => cells[columns.indexOf(column)] ?? "";
    const name = cellOf("name");
    const reject = (...problems: readonly CellProblem[]) => rejected.push({ row, name, problems });
    if (problem) return void reject(problem);
    const kind = kindOf(cellOf("kind"), cellOf("botanical name"), book);
    const { changes, problems } = readRecord(columns, cells, kind, {
      unit: plan.units,
      decimalMark,
      book,
    });
    if (!kind || problems.length > 0) return void reject(...problems);
    const key = rowKey({ name, kind: kind.id });
    const earlier = rowOf.get(key);
    if (earlier !== undefined) {
      const expected = `each variety once (row ${earlier} has it already)`;
      return void reject({ column: "name", got: shown(name), expected });
    }
    const before = present.get(key);
    if (!before && total >= LIMITS.items) {
      const expected = `at most ${LIMITS.items} varieties in a plan`;
      return void reject({ column: "", got: "one more", expected });
    }
    const blank: Variety = before ?? { id: `variety-${nextNumber}`, name, kind: kind.id };
    const sown = lotCell(cellOf("lot"), blank.id, lots);
    if (!sown.ok)
      return void reject({ column: "lot", got: shown(cellOf("lot")), expected: sown.expected });
    const all = { ...changes, ...sown.value };
    rowOf.set(key, row);
    if (before) accepted.push(changedRow(row, before, all, book, lotOf));
    else {
      accepted.push({ row, change: "new", variety: patched(blank, all), columns: [] });
      nextNumber += 1;
      total += 1;
    }
  };
  return { take, list: { accepted, rejected, newLots: lots.made } };
}

/** A name that species share is told apart by the botanical name beside it. */
function kindOf(kindCell: string, botanicalCell: string, book: CropBook): Kind | undefined {
  const botanical = botanicalCell === "" ? undefined : book.find(botanicalCell);
  if (kindCell === "") return botanical;
  const shared = book.sharing(kindCell);
  return (
    book.find(kindCell) ??
    shared.find(({ id }) => id === botanical?.id) ??
    shared.find(({ species }) => species === botanical?.species)
  );
}

interface RecordSetting {
  readonly unit: LengthUnit;
  readonly decimalMark: DecimalMark | undefined;
  readonly book: CropBook;
}

/** What the cells of a row set, and what is wrong with them. Empty cells set nothing. */
function readRecord(
  columns: readonly (CsvColumn | null)[],
  cells: readonly string[],
  kind: Kind | undefined,
  { unit, decimalMark, book }: RecordSetting,
): { readonly changes: CellChanges; readonly problems: readonly CellProblem[] } {
  const problems: CellProblem[] = [];
  let changes: CellChanges = {};
  columns.forEach((column, index) => {
    const cell = cells[index] ?? "";
    const add = (expected: string) =>
      problems.push({ column: column ?? "", got: shown(cell), expected });
    if (column === null || column === "botanical name" || column === "lot") return;
    if (column === "name") {
      const read = shortText(cell, LIMITS.name);
      if (cell === "") add("the variety's name");
      else if (!read.ok) add(read.expected);
      else changes = { ...changes, name: cell };
    } else if (column === "kind") {
      if (!kind) add(kindExpected(cell, book));
    } else if (cell !== "" && kind) {
      const read = readCell(column satisfies ValueColumn, cell, kind, unit, decimalMark);
      if (read.ok) changes = { ...changes, ...read.value };
      else add(read.expected);
    }
  });
  if (!kind && !columns.includes("kind")) {
    const got = shown(cells[columns.indexOf("botanical name")] ?? "");
    problems.push({
      column: "botanical name",
      got,
      expected: "the botanical name of a kind known here",
    });
  }
  return { changes, problems };
}

/** Where a text is a name of several kinds, or part of the names of some, those are named. */
export function kindExpected(cell: string, book: CropBook): string {
  const known = "the common name, botanical name or id of a kind known here";
  const word = cell.trim().toLowerCase().replace(/s$/, "");
  const shared = book.sharing(cell);
  if (word.length < 4 && shared.length === 0) return known;
  const inName = ({ name, otherNames }: Kind) =>
    [name, ...otherNames].some((each) => each.toLowerCase().includes(word));
  const near = shared.length > 0 ? shared : book.kinds.filter(inName);
  const named = near
    .slice(0, MOST_NAMED)
    .map(({ name, botanicalName }) => `${name} (${botanicalName})`);
  return near.length === 0 ? known : `which of them: ${named.join(", ")}`;
}

/** Kinds named for a text that may mean several. */
const MOST_NAMED = 6;

function changedRow(
  row: number,
  before: Variety,
  changes: CellChanges,
  book: CropBook,
  lotOf: (id: string) => Lot | undefined,
): AcceptedRow {
  const variety = patched(before, changes);
  const old = varietyCells(before, book, lotOf);
  const now = varietyCells(variety, book, lotOf);
  const columns = csvColumns.filter((column) => old[column] !== now[column]);
  return columns.length === 0
    ? { row, change: "same", variety: before, columns }
    : { row, change: "changed", variety, columns };
}

/** Rows are told apart by kind and name: whether it is a hybrid is a value of the row. */
function rowKey({ kind, name }: Pick<Variety, "kind" | "name">): string {
  return varietyKey({ kind, name }) ?? `${kind}|`;
}
