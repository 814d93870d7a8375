/**
 * A record of daily minimum and maximum temperatures: comma, semicolon or tab separated lines of
 * date, minimum, maximum, in any order of days. A heading line may name the columns.
 */
import { type DayNumber, dayFromIso } from "../model/day.ts";
import { LIMITS } from "../model/limits.ts";
import type { Climate } from "../model/plan.ts";
import { type Problem, type Read, refuse, shown } from "../model/problem.ts";
import { type TemperatureUnit, readTemperature } from "./temperature-text.ts";

export type DailyTemperatures = NonNullable<Climate["days"]>;

const MAX_PROBLEMS = 50;
/** How stations write that nothing was measured. */
const MISSING = /^(|-|m|na|n\/a|nan|null|-?999(\.9)?|-?9999(\.9)?)$/i;

interface Columns {
  readonly date: number;
  readonly min: number;
  readonly max: number;
}

interface Reading {
  readonly minC: number | null;
  readonly maxC: number | null;
}

/**
 * @param file name used in messages
 * @param unit of temperatures that name none
 */
export function readDailyTemperatures(
  text: string,
  file: string,
  unit: TemperatureUnit,
): Read<DailyTemperatures> {
  const lines = text.replace(/^\uFEFF/, "").split(/\r\n|\r|\n/);
  const cut = separator(lines.find((line) => line.trim() !== "") ?? "");
  const rows = lines
    .map((line, index) => ({ number: index + 1, cells: line.split(cut).map(plain) }))
    .filter((row) => row.cells.some((cell) => cell !== ""));
  const columns = columnsOf(rows[0]?.cells ?? []);
  if (columns === null) {
    const got = shown((rows[0]?.cells ?? []).join(", "));
    return refuse({
      file,
      object: "row 1",
      field: "",
      got,
      expected: "the columns date, min, max",
    });
  }
  const dataRows = isHeading(rows[0]?.cells ?? [], columns) ? rows.slice(1) : rows;
  const readings = new Map<DayNumber, Reading>();
  const problems: Problem[] = [];
  for (const row of dataRows) {
    const report = (field: string, got: string, expected: string) =>
      problems.push({ file, object: `row ${row.number}`, field, got, expected });
    const day = readDate(row.cells[columns.date] ?? "");
    const reading = readRow(row.cells, columns, unit, report);
    if (day === null) {
      report(
        `column ${columns.date + 1}`,
        shown(row.cells[columns.date] ?? ""),
        "a date as YYYY-MM-DD",
      );
    } else if (readings.has(day)) {
      report(`column ${columns.date + 1}`, "a date that stands above already", "each date once");
    } else if (reading) readings.set(day, reading);
    if (problems.length >= MAX_PROBLEMS) break;
  }
  return problems.length > 0 ? { ok: false, problems } : inOrder(readings, file);
}

function separator(line: string): string {
  return ["\t", ";"].find((char) => line.includes(char)) ?? ",";
}

function plain(cell: string): string {
  return cell
    .trim()
    .replace(/^"(.*)"$/, "$1")
    .trim();
}

/** By the heading's words, else the first three columns; null when a heading names too little. */
function columnsOf(first: readonly string[]): Columns | null {
  const words = first.map((cell) => cell.toLowerCase());
  const found = {
    date: words.findIndex((word) => /date|day/.test(word)),
    min: words.findIndex((word) => /min|low/.test(word)),
    max: words.findIndex((word) => /max|high/.test(word)),
  };
  if (found.date >= 0 && found.min >= 0 && found.max >= 0) return found;
  const hasHeading = found.date >= 0 || found.min >= 0 || found.max >= 0;
  return hasHeading || first.length < 3 ? null : { date: 0, min: 1, max: 2 };
}

function isHeading(first: readonly string[], { date }: Columns): boolean {
  return !/\d/.test(first[date] ?? "");
}

/** `2027-05-20` or `20270520`. */
function readDate(text: string): DayNumber | null {
  return dayFromIso(text.replace(/^(\d{4})(\d{2})(\d{2})$/, "$1-$2-$3"));
}

function readRow(
  cells: readonly string[],
  columns: Columns,
  unit: TemperatureUnit,
  report: (field: string, got: string, expected: string) => void,
): Reading | null {
  const read = (column: number) => {
    const text = cells[column] ?? "";
    if (MISSING.test(text)) return null;
    const celsius = readTemperature(text, unit);
    if (celsius === null) report(`column ${column + 1}`, shown(text), "a temperature, or nothing");
    return celsius;
  };
  const minC = read(columns.min);
  const maxC = read(columns.max);
  if (minC !== null && maxC !== null && minC > maxC) {
    report(
      `column ${columns.min + 1}`,
      "a minimum above the maximum",
      "the minimum to be the lower",
    );
    return null;
  }
  return { minC, maxC };
}

function inOrder(readings: ReadonlyMap<DayNumber, Reading>, file: string): Read<DailyTemperatures> {
  const days = [...readings.keys()].sort((a, b) => a - b);
  const [first] = days;
  const last = days.at(-1);
  if (first === undefined || last === undefined) {
    return refuse({ file, object: "", field: "", got: "no day", expected: "a line for each day" });
  }
  const span = last - first + 1;
  if (span > LIMITS.recordedDays) {
    const expected = `at most ${LIMITS.recordedDays}, forty years: leave out earlier years`;
    return refuse({
      file,
      object: "",
      field: "",
      got: `${span} days from first to last`,
      expected,
    });
  }
  const each = Array.from({ length: span }, (_, index) => readings.get(first + index));
  return {
    ok: true,
    value: {
      first,
      minC: each.map((reading) => reading?.minC ?? null),
      maxC: each.map((reading) => reading?.maxC ?? null),
    },
  };
}
