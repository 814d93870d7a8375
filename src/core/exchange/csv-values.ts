/** Cells of a seed list to values. Each reader answers with the value or with what it expected. */
import type { Kind, Range } from "../kinds/crop.ts";
import type { NamedLots } from "../lots/named-lots.ts";
import type { DecimalMark } from "../model/decimal-marks.ts";
import { type LengthUnit, parseLength } from "../model/length.ts";
import { type Variety, heatMethods } from "../model/plan.ts";
import { LIMITS, MAX_COORDINATE_M } from "../model/limits.ts";
import { shown } from "../model/problem.ts";
import type { CsvColumn } from "./varieties-csv.ts";

export type CellRead<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly expected: string };

/** Fields of a variety that a cell sets; undefined takes a field away. */
export type CellChanges = {
  readonly [Key in keyof Omit<Variety, "id">]?: Variety[Key] | undefined;
};

/** Columns whose cells set a field by themselves; names, kinds and lots are looked up. */
export type ValueColumn = Exclude<CsvColumn, "name" | "kind" | "botanical name" | "lot">;

const MAX_COUNT = 10_000_000;
const MAX_DAYS = 1000;
const YES = new Set(["yes", "y", "true", "1", "x", "f1", "hybrid"]);
const NO = new Set(["no", "n", "false", "0", "open-pollinated", "op"]);

/**
 * What a cell that is not empty sets. A bare length is in the plan's unit.
 * @param decimalMark of the list; left out: not known
 */
export function readCell(
  column: ValueColumn,
  cell: string,
  kind: Kind,
  unit: LengthUnit,
  decimalMark?: DecimalMark,
): CellRead<CellChanges> {
  switch (column) {
    case "flower form":
      return as("form", formId(cell, kind));
    case "hybrid":
      return as("hybrid", yesOrNo(cell));
    case "plants wanted":
      return as("wantedPlants", wholeNumber(cell));
    case "isolation distance":
      return as("isolationM", metres(cell, unit, decimalMark));
    case "figure":
      return as("figure", figureId(cell, kind));
    case "days sown to flower":
      return as("sownToFlower", days(cell, 0));
    case "days set out to flower":
      return as("transplantedToFlower", days(cell, 0));
    case "days in flower":
      return as("bloomDays", days(cell, 1));
    case "heat to flower":
      return as("heatToFlower", heat(cell));
    case "note":
      return as("note", shortText(cell, LIMITS.note));
  }
}

function as<Key extends keyof CellChanges>(
  key: Key,
  read: CellRead<Variety[Key] | undefined>,
): CellRead<CellChanges> {
  return read.ok ? { ok: true, value: { [key]: read.value } } : read;
}

function found<T>(value: T): CellRead<T> {
  return { ok: true, value };
}

function wants(expected: string): { readonly ok: false; readonly expected: string } {
  return { ok: false, expected };
}

/** Text of at most so many characters. */
export function shortText(cell: string, most: number): CellRead<string> {
  return cell.length <= most ? found(cell) : wants(`at most ${most} characters`);
}

/** Codes with semicolons between; a code of another variety's lot is refused. */
export function lotCell(cell: string, varietyId: string, lots: NamedLots): CellRead<CellChanges> {
  if (cell === "") return { ok: true, value: {} };
  const read = shortText(cell, LIMITS.name);
  if (!read.ok) return read;
  const [stranger] = lots.strangers(cell, varietyId);
  if (stranger) {
    return { ok: false, expected: `no lot of another variety, as ${shown(stranger.code)} is` };
  }
  return { ok: true, value: { lots: lots.named(cell, varietyId).map(({ id }) => id) } };
}

function formId(cell: string, kind: Kind): CellRead<string> {
  const forms = kind.forms ?? [];
  if (forms.length === 0) return wants(`nothing: ${kind.name} has no flower forms here`);
  const wanted = cell.toLowerCase();
  const form = forms.find(({ id, name }) => id === wanted || name.toLowerCase() === wanted);
  return form ? found(form.id) : wants(`one of ${forms.map(({ id }) => id).join(", ")}`);
}

function figureId(cell: string, kind: Kind): CellRead<string> {
  if (kind.isolation.some(({ id }) => id === cell)) return found(cell);
  const ids = kind.isolation.map(({ id }) => id);
  return wants(
    ids.length === 0 ? `nothing: ${kind.name} has no figures here` : `one of ${ids.join(", ")}`,
  );
}

/** A variety is no hybrid unless it says so: "no" takes the field away. */
function yesOrNo(cell: string): CellRead<true | undefined> {
  const word = cell.toLowerCase();
  if (YES.has(word)) return found(true);
  return NO.has(word) ? found(undefined) : wants("yes or no");
}

/** Spreadsheets write 24 as 24.0 or 24,0 at times. */
function wholeNumber(cell: string): CellRead<number> {
  const value = /^\d+(?:[.,]0+)?$/.test(cell) ? Number.parseInt(cell, 10) : Number.NaN;
  return value <= MAX_COUNT ? found(value) : wants("a whole number, for example 24");
}

function metres(
  cell: string,
  unit: LengthUnit,
  decimalMark: DecimalMark | undefined,
): CellRead<number> {
  const read = parseLength(cell, unit, false, decimalMark);
  if (read.ok && read.metres <= MAX_COORDINATE_M) return found(read.metres);
  const [, choice] = read.ok ? [] : read.reason.split("two ways: write ");
  return wants(choice ?? "a length, for example 7.6 m or 25 ft");
}

function days(cell: string, least: number): CellRead<Range> {
  const match = /^(\d{1,4})(?:\s*(?:-|\u2013|to)\s*(\d{1,4}))?(?:\s*days?)?$/i.exec(cell);
  const from = Number(match?.[1] ?? Number.NaN);
  const to = match?.[2] === undefined ? from : Number(match[2]);
  return least <= from && from <= to && to <= MAX_DAYS
    ? found([from, to])
    : wants("days, for example 60 or 55 to 65");
}

const HEAT =
  /^(-?\d+(?:\.\d+)?) to (-?\d+(?:\.\d+)?) C-days; ([a-z ]+); base (-?\d+(?:\.\d+)?) C; (?:cap (-?\d+(?:\.\d+)?) C|no cap)$/i;

function heat(cell: string): CellRead<Variety["heatToFlower"]> {
  const match = HEAT.exec(cell.replace(/,(?=\d)/g, "."));
  const method = heatMethods.find((name) => name === match?.[3]?.toLowerCase());
  const [least, most, baseC] = [match?.[1], match?.[2], match?.[4]].map(Number);
  const capC = match?.[5] === undefined ? null : Number(match[5]);
  const isSound =
    method !== undefined &&
    least !== undefined &&
    most !== undefined &&
    0 < least &&
    least <= most &&
    most <= 10_000 &&
    [baseC, capC ?? 0].every((value) => value !== undefined && -90 <= value && value <= 70);
  return isSound && baseC !== undefined
    ? found({ method, baseC, capC, cDays: [least, most] })
    : wants('heat as in "699 to 777 C-days; modified average; base 10 C; cap 30 C" or "no cap"');
}
