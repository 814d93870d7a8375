/**
 * Twelve mean daily minima and maxima out of a pasted table: months as rows or as columns, with
 * or without headings, month names and a yearly mean; tabs, spaces, commas or semicolons between.
 */
import type { Climate } from "../model/plan.ts";
import { monthName } from "../model/day.ts";
import { type Problem, type Read, refuse, shown } from "../model/problem.ts";
import { fromJanuary, monthsNamed } from "./month-names.ts";
import { type TemperatureUnit, readTemperature } from "./temperature-text.ts";
import { counted } from "../words/plurals.ts";

export type Normals = NonNullable<Climate["normals"]>;

/** What a problem with a pasted table is said to be in. */
const PASTED = "pasted table";
const SHAPES = "12 rows of lowest and highest, or 2 rows of 12 months";

interface Cell {
  readonly text: string;
  /** 1 for the first line and the first entry on it. */
  readonly row: number;
  readonly column: number;
}

interface NumberRow {
  readonly heading: string;
  readonly cells: readonly Cell[];
}

/** Monthly normals from pasted text; temperatures without a unit are read in the one given. */
export function readNormals(text: string, unit: TemperatureUnit): Read<Normals> {
  const lines = cellsOf(text);
  const head = lines.find((line) => line.every((cell) => !/\d/.test(cell.text)));
  const rows = lines.filter((line) => line !== head).map(numberRow);
  const columns = bothColumns(rows, head);
  if (columns === null) return refuse(misshapen(rows));
  const order = monthOrder(columns[0], rows, head);
  if (!order.ok) return order;
  const problems: Problem[] = [];
  const values = columns.map((column) =>
    column.map((cell) => {
      const celsius = readTemperature(cell.text, unit);
      if (celsius === null) problems.push(notATemperature(cell));
      return celsius ?? 0;
    }),
  );
  if (problems.length > 0) return { ok: false, problems };
  const [first = [], second = []] = values.map((column) => fromJanuary(column, order.value));
  const isFirstLower = total(first) <= total(second);
  const [minC, maxC] = isFirstLower ? [first, second] : [second, first];
  const minCells = fromJanuary(columns[isFirstLower ? 0 : 1], order.value);
  const crossed = minC.flatMap((low, month) => {
    const cell = minCells[month];
    return low > (maxC[month] ?? low) && cell ? [crossedMonth(cell, month)] : [];
  });
  return crossed.length > 0
    ? { ok: false, problems: crossed }
    : { ok: true, value: { minC, maxC } };
}

/** Non-empty lines cut into entries. */
function cellsOf(text: string): readonly (readonly Cell[])[] {
  const cut = separator(text);
  return text.split(/\r\n|\r|\n/).flatMap((line, index) => {
    const entries = line.trim() === "" ? [] : withUnits(line.trim().split(cut));
    const cells = entries
      .map((entry, position) => ({ text: plain(entry), row: index + 1, column: position + 1 }))
      .filter((cell) => cell.text !== "");
    return cells.length > 0 ? [cells] : [];
  });
}

/** A unit that stands by itself belongs to the number before it. */
function withUnits(entries: readonly string[]): readonly string[] {
  const joined: string[] = [];
  for (const entry of entries) {
    const before = joined.at(-1);
    if (before !== undefined && /\d$/.test(before) && /^\u00B0?[CF]$/i.test(entry)) {
      joined[joined.length - 1] = before + entry;
    } else joined.push(entry);
  }
  return joined;
}

function plain(entry: string): string {
  return entry.replaceAll('"', "").trim();
}

/** A comma is a decimal one beside tabs, semicolons or spaces unless points are used for that. */
function separator(text: string): RegExp {
  if (text.includes("\t")) return /\t/;
  if (text.includes(";")) return /;/;
  const hasDecimalComma = !/\d\.\d/.test(text) && /\d,\d+\s+[-+\u2212]?\d/.test(text);
  return hasDecimalComma ? /\s+/ : /\s+(?:,\s*)?|,\s*/;
}

/** Words before the first number are the row's heading. */
function numberRow(cells: readonly Cell[]): NumberRow {
  const from = cells.findIndex((cell) => /^[-+\u2212.,]*\d/.test(cell.text));
  const at = from < 0 ? cells.length : from;
  const heading = cells.slice(0, at).map((cell) => cell.text);
  return { heading: heading.join(" ").toLowerCase(), cells: cells.slice(at) };
}

/** Two lists of twelve cells, or null when the table has no such shape. */
function bothColumns(
  rows: readonly NumberRow[],
  head: readonly Cell[] | undefined,
): readonly [readonly Cell[], readonly Cell[]] | null {
  const asRows = rows.filter((row) => row.cells.length === 12 || row.cells.length === 13);
  if (asRows.length === rows.length && rows.length >= 2) {
    const named = namedPair(rows.map((row) => row.heading));
    const [low, high] = named ?? (rows.length === 2 ? [0, 1] : [-1, -1]);
    const [first, second] = [rows[low], rows[high]];
    return first && second ? [first.cells.slice(0, 12), second.cells.slice(0, 12)] : null;
  }
  const months = rows.filter((row) => !/^(year|annual|ann|mean)\b/.test(row.heading)).slice(0, 12);
  const width = months[0]?.cells.length ?? 0;
  if (months.length !== 12 || rows.length > 13) return null;
  if (width < 2 || months.some((row) => row.cells.length !== width)) return null;
  const headings = (head ?? []).map((cell) => cell.text.toLowerCase()).slice(-width);
  const named = headings.length === width ? namedPair(headings) : null;
  const [low, high] = named ?? (width === 2 ? [0, 1] : [-1, -1]);
  if (low < 0 || high < 0) return null;
  const column = (index: number) => months.map((row) => row.cells[index] as Cell);
  return [column(low), column(high)];
}

/** The month of each value in the order they stand: as named beside them, else January first. */
function monthOrder(
  cells: readonly Cell[],
  rows: readonly NumberRow[],
  head: readonly Cell[] | undefined,
): Read<readonly number[]> {
  const isOverColumns = new Set(cells.map(({ row }) => row)).size === 1;
  const beside = cells.map(({ row }) => rows.find((each) => each.cells[0]?.row === row));
  const names = isOverColumns
    ? (head ?? []).map(({ text }) => text)
    : beside.map((row) => row?.heading ?? "");
  const numbers = isOverColumns ? null : numberedMonths(beside, head);
  return monthsNamed(numbers ?? names, PASTED, isOverColumns);
}

/** Months by number in a column called so, as text; null where there is none. */
function numberedMonths(
  rows: readonly (NumberRow | undefined)[],
  head: readonly Cell[] | undefined,
): readonly string[] | null {
  const isNumbered = /^(month|mon|m)\b/i.test(head?.[0]?.text ?? "");
  const isBare = rows.every((row) => row?.heading === "" && row.cells.length === head?.length);
  return isNumbered && isBare ? rows.map((row) => row?.cells[0]?.text ?? "") : null;
}

/** Where `min` and `max`, or words for them, stand among headings. */
function namedPair(headings: readonly string[]): readonly [number, number] | null {
  const low = headings.findIndex((text) => /min|low/.test(text));
  const high = headings.findIndex((text) => /max|high/.test(text));
  return low >= 0 && high >= 0 ? [low, high] : null;
}

function total(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0);
}

function misshapen(rows: readonly NumberRow[]): Problem {
  const widths = [...new Set(rows.map((row) => row.cells.length))];
  const columns =
    widths.length > 1 ? `${Math.min(...widths)} to ${Math.max(...widths)}` : `${widths[0]}`;
  const got =
    rows.length === 0
      ? "nothing"
      : `${counted(rows.length, { one: "row", other: "rows" })} of ${columns} numbers`;
  return { file: PASTED, object: "", field: "", got, expected: SHAPES };
}

function notATemperature(cell: Cell): Problem {
  return {
    file: PASTED,
    object: `row ${cell.row}`,
    field: `column ${cell.column}`,
    got: shown(cell.text),
    expected: "a temperature",
  };
}

function crossedMonth(cell: Cell, month: number): Problem {
  return {
    file: PASTED,
    object: `row ${cell.row}`,
    field: `column ${cell.column}`,
    got: `a lowest above the highest in ${monthName(month + 1)}`,
    expected: "the daily lowest below the daily highest",
  };
}
