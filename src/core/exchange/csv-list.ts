/**
 * A list from CSV, as a spreadsheet saves it, cut into rows under known headings: commas, semicolons
 * or tabs between cells, with or without a byte order mark. What the cells mean is for the reader of
 * varieties or of lots to say; nothing is passed over in silence but empty rows.
 */
import Papa from "papaparse";
import { plainCell } from "../formats/csv-file.ts";
import { LIMITS } from "../model/limits.ts";
import { type Problem, type Read, refuse, shown } from "../model/problem.ts";

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
  /** What the row is told by: a variety's name, a lot's code. */
  readonly name: string;
  readonly problems: readonly CellProblem[];
}

/** Headings a list may have. */
export interface ListHeadings<Column extends string> {
  readonly columns: readonly Column[];
  /** Other headings people write. */
  readonly alike?: ReadonlyMap<string, Column>;
  /** The first two columns, which a list needs, and whether it has what stands for them. */
  readonly isEnough: (has: (column: Column) => boolean) => boolean;
  /** What stands in the columns of a list without headings; null: it cannot be told. */
  readonly guess?: (rows: readonly (readonly string[])[]) => readonly (Column | null)[] | null;
}

export interface CsvList<Column extends string> {
  /** Column of each cell of a row; null for a heading that is not known. */
  readonly columns: readonly (Column | null)[];
  readonly rows: readonly CsvRow[];
  /** Spreadsheets put semicolons between cells where the comma is the decimal mark. */
  readonly hasDecimalComma: boolean;
  readonly unknownColumns: readonly string[];
}

export interface CsvRow {
  readonly row: number;
  readonly cells: readonly string[];
  /** Why the row cannot be relied on as a whole. */
  readonly problem: CellProblem | null;
}

export function readCsvList<Column extends string>(
  text: string,
  file: string,
  headings: ListHeadings<Column>,
): Read<CsvList<Column>> {
  const fail = (got: string, expected: string) =>
    refuse({ file, object: "", field: "", got, expected });
  if (text.length > MAX_CSV_LENGTH) {
    return fail(`${text.length} characters`, `at most ${MAX_CSV_LENGTH} characters`);
  }
  // Some spreadsheets name the delimiter in a line of its own before the headings.
  const [lead = ""] = /^\uFEFF?(?:sep=.\r?\n)?/.exec(text) ?? [];
  const body = text.slice(lead.length);
  if (body.trim() === "") return fail("an empty file", "a list with headings in its first row");
  const delimiter = delimiterOf(body, headings);
  const { data, errors } = Papa.parse(body, { delimiter });
  const [first = []] = data;
  const named = first.map((heading) => columnOf(heading, headings));
  const guessed = named.every((column) => column === null) ? guessedFrom(data, headings) : null;
  const columns = guessed ?? named;
  const fault = headingFault(columns, first, headings);
  if (fault) return refuse({ file, object: "row 1", field: "", ...fault });
  const headingRows = guessed ? 0 : 1;
  const records = data.slice(headingRows);
  if (records.length > LIMITS.items) {
    return fail(`${records.length} rows`, `at most ${LIMITS.items} rows`);
  }
  const broken = new Map(errors.map(({ row, code }) => [row ?? -1, code]));
  const rowsBefore = headingRows + (lead.includes("sep=") ? 1 : 0);
  const rows = records.flatMap((record, index): readonly CsvRow[] => {
    const cells = record.map((cell) => plainCell(cell).trim());
    if (cells.every((cell) => cell === "")) return [];
    const problem = rowProblem(cells, columns.length, broken.get(headingRows + index));
    return [{ row: rowsBefore + index + 1, cells, problem }];
  });
  const unknownColumns = (guessed ? [] : first)
    .map((heading) => plainCell(heading).trim())
    .filter((heading, index) => heading !== "" && columns[index] === null);
  return { ok: true, value: { columns, rows, hasDecimalComma: delimiter === ";", unknownColumns } };
}

function columnOf<Column extends string>(
  heading: string,
  { columns, alike }: ListHeadings<Column>,
): Column | null {
  const plain = plainCell(heading)
    .normalize("NFKC")
    .trim()
    .toLowerCase()
    .replace(/[\s_-]+/g, " ");
  return columns.find((column) => column === plain) ?? alike?.get(plain) ?? null;
}

function guessedFrom<Column extends string>(
  data: readonly (readonly string[])[],
  { guess }: ListHeadings<Column>,
): readonly (Column | null)[] | null {
  return guess?.(data.map((record) => record.map((cell) => plainCell(cell).trim()))) ?? null;
}

/** The delimiter that makes most known headings of the first row, else most cells. */
function delimiterOf(body: string, headings: ListHeadings<string>): string {
  return [",", ";", "\t"]
    .map((delimiter) => {
      const cells = Papa.parse(body, { delimiter, preview: 1 }).data[0] ?? [];
      const known = cells.filter((heading) => columnOf(heading, headings)).length;
      return { delimiter, known, cells: cells.length };
    })
    .reduce((best, entry) =>
      entry.known > best.known || (entry.known === best.known && entry.cells > best.cells)
        ? entry
        : best,
    ).delimiter;
}

function headingFault<Column extends string>(
  found: readonly (Column | null)[],
  headings: readonly string[],
  { columns, isEnough }: ListHeadings<Column>,
): Pick<Problem, "got" | "expected"> | null {
  const twice = found.find((column, index) => column && found.indexOf(column) < index);
  if (twice) return { got: `the heading "${twice}" more than once`, expected: "each heading once" };
  if (isEnough((column) => found.includes(column))) return null;
  const got = headings.map((heading) => heading.trim()).filter((heading) => heading !== "");
  const [one, two, ...others] = columns;
  return {
    got: got.length === 0 ? "no headings" : shown(got.join(", ")),
    expected: `headings in the first row, "${one}" and "${two}" among them; others are ${others.join(", ")}`,
  };
}

function rowProblem(
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
