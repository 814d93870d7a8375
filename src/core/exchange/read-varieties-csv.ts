/**
 * A seed list from CSV, as a spreadsheet saves it: commas, semicolons or tabs between cells,
 * decimal commas, with or without a byte order mark. Nothing is changed here: the answer says row
 * by row what would be taken and what would not, and why.
 */
import { varietyKey } from "../model/variety-key.ts";
import Papa from "papaparse";
import type { CropBook } from "../kinds/crop-book.ts";
import type { Kind } from "../kinds/crop.ts";
import { nextId, patched } from "../edits/edit.ts";
import { lotBook } from "../lots/lot-book.ts";
import { namedLots } from "../lots/named-lots.ts";
import type { DecimalMark } from "../model/decimal-marks.ts";
import type { LengthUnit } from "../model/length.ts";
import type { Lot, Plan, Variety } from "../model/plan.ts";
import { type Problem, type Read, refuse, shown } from "../model/problem.ts";
import { LIMITS } from "../model/limits.ts";
import { plainCell } from "../formats/csv-file.ts";
import { type CellChanges, type ValueColumn, lotCell, readCell, shortText } from "./csv-values.ts";
import { type CsvColumn, csvColumns, varietyCells } from "./varieties-csv.ts";

/** Longest list that is read, characters. */
export const MAX_CSV_LENGTH = 4_000_000;

export interface CellProblem {
  /** Heading of the column; empty for the row as a whole. */
  readonly column: string;
  readonly got: string;
  readonly expected: string;
}

export interface RejectedRow {
  /** As a spreadsheet counts, the headings being row 1. */
  readonly row: number;
  readonly name: string;
  readonly problems: readonly CellProblem[];
}

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
  const fail = (got: string, expected: string) =>
    refuse({ file, object: "", field: "", got, expected });
  if (text.length > MAX_CSV_LENGTH) {
    return fail(`${text.length} characters`, `at most ${MAX_CSV_LENGTH} characters`);
  }
  // Some spreadsheets name the delimiter in a line of its own before the headings.
  const [lead = ""] = /^\uFEFF?(?:sep=.\r?\n)?/.exec(text) ?? [];
  const body = text.slice(lead.length);
  if (body.trim() === "") return fail("an empty file", "a list with headings in its first row");
  const delimiter = delimiterOf(body);
  const { data, errors } = Papa.parse(body, { delimiter });
  const [headings = [], ...records] = data;
  const columns = headings.map(columnOf);
  const headingFault = headingProblem(columns, headings, file);
  if (headingFault) return refuse(headingFault);
  if (records.length > LIMITS.items) {
    return fail(`${records.length} rows`, `at most ${LIMITS.items} rows`);
  }
  const broken = new Map(errors.map(({ row, code }) => [row ?? -1, code]));
  const rowOfHeadings = lead.includes("sep=") ? 2 : 1;
  // Spreadsheets put semicolons between cells where the comma is the decimal mark.
  const reader = listReader(columns, plan, book, delimiter === ";" ? "," : undefined);
  records.forEach((cells, index) =>
    reader.take(cells, rowOfHeadings + index + 1, broken.get(index + 1)),
  );
  const unknownColumns = headings
    .map((heading) => plainCell(heading).trim())
    .filter((heading, index) => heading !== "" && columns[index] === null);
  return { ok: true, value: { ...reader.list, unknownColumns } };
}

/** Other headings people write. */
const ALIKE: ReadonlyMap<string, CsvColumn> = new Map([
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
]);

function columnOf(heading: string): CsvColumn | null {
  const plain = plainCell(heading)
    .normalize("NFKC")
    .trim()
    .toLowerCase()
    .replace(/[\s_-]+/g, " ");
  return csvColumns.find((column) => column === plain) ?? ALIKE.get(plain) ?? null;
}

/** The delimiter that makes most known headings of the first row. */
function delimiterOf(body: string): string {
  const known = (delimiter: string) =>
    (Papa.parse(body, { delimiter, preview: 1 }).data[0] ?? []).filter(columnOf).length;
  return [",", ";", "\t"]
    .map((delimiter) => ({ delimiter, count: known(delimiter) }))
    .reduce((best, entry) => (entry.count > best.count ? entry : best)).delimiter;
}

function headingProblem(
  columns: readonly (CsvColumn | null)[],
  headings: readonly string[],
  file: string,
): Problem | null {
  const problem = (got: string, expected: string): Problem => ({
    file,
    object: "row 1",
    field: "",
    got,
    expected,
  });
  const twice = columns.find((column, index) => column && columns.indexOf(column) < index);
  if (twice) return problem(`the heading "${twice}" more than once`, "each heading once");
  const isThere = (column: CsvColumn) => columns.includes(column);
  if (isThere("name") && (isThere("kind") || isThere("botanical name"))) return null;
  const got = headings.map((heading) => heading.trim()).filter((heading) => heading !== "");
  return problem(
    got.length === 0 ? "no headings" : shown(got.join(", ")),
    `headings in the first row, "name" and "kind" among them; others are ${csvColumns.slice(2).join(", ")}`,
  );
}

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

  const take = (record: readonly string[], row: number, fault: string | undefined) => {
    const cells = record.map((cell) => plainCell(cell).trim());
    if (cells.every((cell) => cell === "")) return;
    const cellOf = (column: CsvColumn) => cells[columns.indexOf(column)] ?? "";
    const name = cellOf("name");
    const reject = (...problems: readonly CellProblem[]) => rejected.push({ row, name, problems });
    const rowProblem = recordProblem(cells, columns.length, fault);
    if (rowProblem) return void reject(rowProblem);
    const kind = kindOf(cellOf("kind"), cellOf("botanical name"), book);
    const { changes, problems } = readRecord(columns, cells, kind, plan.units, decimalMark);
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

function recordProblem(
  cells: readonly string[],
  width: number,
  fault: string | undefined,
): CellProblem | null {
  if (fault !== undefined) {
    const expected =
      fault === "MissingQuotes"
        ? "a closing double quote; nothing after it could be read"
        : "double quotes around a whole cell, doubled within it";
    return { column: "", got: "a stray double quote", expected };
  }
  const more = cells.slice(width).find((cell) => cell !== "");
  if (more === undefined) return null;
  return {
    column: "",
    got: `${cells.length} cells, ${shown(more)} beyond the last heading`,
    expected: `at most ${width} cells; a cell with the delimiter in it needs double quotes`,
  };
}

function kindOf(kindCell: string, botanicalCell: string, book: CropBook): Kind | undefined {
  const text = kindCell === "" ? botanicalCell : kindCell;
  return text === "" ? undefined : book.find(text);
}

/** What the cells of a row set, and what is wrong with them. Empty cells set nothing. */
function readRecord(
  columns: readonly (CsvColumn | null)[],
  cells: readonly string[],
  kind: Kind | undefined,
  unit: LengthUnit,
  decimalMark: DecimalMark | undefined,
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
      if (!kind) add("the common name, botanical name or id of a kind known here");
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
