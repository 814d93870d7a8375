/**
 * The seed shelf from CSV, as a spreadsheet saves it. Nothing is changed here: the answer says row by
 * row which lots would be taken, and which not, with the column at fault.
 */
import { z } from "zod/mini";
import { nextLotId, nextTestId } from "../edits/lot-edits.ts";
import { nextPlaceId } from "../edits/storage-edits.ts";
import { nextId } from "../edits/edit.ts";
import type { CropBook } from "../kinds/crop-book.ts";
import { USUAL_PATTERN, codeByPattern } from "../lots/code-pattern.ts";
import { lotBook } from "../lots/lot-book.ts";
import { foldedCode } from "../model/lot-code.ts";
import { lotFaults } from "../model/lot-problems.ts";
import { lot as lotSchema } from "../model/lot-schema.ts";
import type { Lot, Plan, StoragePlace } from "../model/plan.ts";
import { type Read, shown } from "../model/problem.ts";
import { expectedText } from "../model/read-plan.ts";
import { AS_RECORDED, type LotColumn, lotCells, lotColumns } from "./lots-csv.ts";
import { kindExpected } from "./read-varieties-csv.ts";
import { type CellProblem, type ListHeadings, type RejectedRow, readCsvList } from "./csv-list.ts";

export interface AcceptedLot {
  /** As a spreadsheet counts, the headings being row 1. */
  readonly row: number;
  readonly change: "new" | "changed" | "same";
  readonly lot: Lot;
}

export interface LotList {
  readonly accepted: readonly AcceptedLot[];
  /** Their `name` is the code. */
  readonly rejected: readonly RejectedRow[];
  /** Places that rows name and the plan has not. */
  readonly newPlaces: readonly StoragePlace[];
  readonly unknownColumns: readonly string[];
}

type Cells = Readonly<Record<LotColumn, string>>;
type Raw = Readonly<Record<string, unknown>>;

export function readLotsCsv(text: string, file: string, plan: Plan, book: CropBook): Read<LotList> {
  const list = readCsvList(text, file, HEADINGS);
  if (!list.ok) return list;
  const { columns, rows, hasDecimalComma, unknownColumns } = list.value;
  const reader = lotReader(plan, book, hasDecimalComma);
  const makeCode = codeMaker(plan);
  for (const { row, cells, problem } of rows) {
    const of = (column: LotColumn) => cells[columns.indexOf(column)] ?? "";
    const read = Object.fromEntries(lotColumns.map((name) => [name, of(name)])) as Cells;
    if (problem) reader.reject({ row, name: of("code"), problems: [problem] });
    else reader.take(columns.includes("code") ? read : { ...read, code: makeCode(read) }, row);
  }
  return { ok: true, value: { ...reader.list, unknownColumns } };
}

const HEADINGS: ListHeadings<LotColumn> = {
  columns: lotColumns,
  isEnough: (has) => has("variety"),
};

/** Codes for the rows of a list that has none, by the plan's pattern, each once. */
function codeMaker({ lots, lotCodePattern = USUAL_PATTERN }: Plan): (cells: Cells) => string {
  const taken = new Set(lotBook(lots).codes);
  return ({ kind, variety, ...cells }) => {
    const year = cells["harvest year"];
    const harvestYear = /^\d{4}$/.test(year) ? Number(year) : undefined;
    const code = codeByPattern(lotCodePattern, { kind, variety, harvestYear }, taken);
    taken.add(foldedCode(code));
    return code;
  };
}

/** Takes row after row; knows what is on the shelf and what the rows before have used. */
function lotReader(plan: Plan, book: CropBook, hasDecimalComma: boolean) {
  const accepted: AcceptedLot[] = [];
  const rejected: RejectedRow[] = [];
  const newPlaces: StoragePlace[] = [];
  const rowOf = new Map<string, number>();
  const shelf = lotBook(plan.lots);
  let nextNumber = Number(nextLotId(plan).slice("lot-".length));

  const placeOf = (name: string): StoragePlace => {
    const same = [...plan.storagePlaces, ...newPlaces].find(
      (place) => place.name.trim().toLowerCase() === name.toLowerCase(),
    );
    if (same) return same;
    const id = nextId("place-", [nextPlaceId(plan), ...newPlaces.map((place) => place.id)]);
    return { id: newPlaces.length === 0 ? nextPlaceId(plan) : id, name };
  };

  const take = (cells: Cells, row: number) => {
    const problems: CellProblem[] = [];
    const add = (column: LotColumn, expected: string) =>
      problems.push({ column, got: shown(cells[column]), expected });
    const reject = () => rejected.push({ row, name: cells.code, problems });
    if (cells.code === "") add("code", "the lot's code");
    const earlier = rowOf.get(foldedCode(cells.code));
    if (earlier !== undefined) add("code", `each code once (row ${earlier} has it already)`);
    const variety = varietyOf(cells, plan, book, add);
    if (problems.length > 0 || variety === null) return void reject();
    const before = shelf.ofCode(cells.code);
    const place = cells["kept at"] === "" ? null : placeOf(cells["kept at"]);
    const id = before?.id ?? `lot-${nextNumber}`;
    const raw = rawLot(cells, { id, variety, before, place, hasDecimalComma });
    const read = z.safeDecode(lotSchema, raw as z.input<typeof lotSchema>);
    if (!read.success) {
      for (const issue of read.error.issues) add(columnAt(issue.path), expectedText(issue));
      return void reject();
    }
    const lot: Lot = read.data;
    for (const { field, expected } of lotFaults(lot)) add(columnAt(field.split(/[.[]/)), expected);
    if (problems.length > 0) return void reject();
    rowOf.set(foldedCode(cells.code), row);
    if (place && ![...plan.storagePlaces, ...newPlaces].includes(place)) newPlaces.push(place);
    if (!before) nextNumber += 1;
    accepted.push({ row, change: changeOf(before, lot, plan, book, newPlaces), lot });
  };
  const reject = (row: RejectedRow) => rejected.push(row);
  return { take, reject, list: { accepted, rejected, newPlaces } };
}

function changeOf(
  before: Lot | undefined,
  lot: Lot,
  plan: Plan,
  book: CropBook,
  newPlaces: readonly StoragePlace[],
): AcceptedLot["change"] {
  if (!before) return "new";
  const shelf = { ...plan, storagePlaces: [...plan.storagePlaces, ...newPlaces] };
  const same = (one: Lot) => JSON.stringify(lotCells(one, shelf, book));
  return same(before) === same(lot) ? "same" : "changed";
}

function varietyOf(
  { variety: name, kind }: Cells,
  plan: Plan,
  book: CropBook,
  add: (column: LotColumn, expected: string) => void,
): string | null {
  const folded = (words: string) => words.normalize("NFC").trim().toLowerCase();
  const named = plan.varieties.filter((each) => folded(each.name) === folded(name));
  const kindId = kind === "" ? undefined : book.find(kind)?.id;
  if (kind !== "" && kindId === undefined) {
    add("kind", kindExpected(kind, book));
    return null;
  }
  const found = named.filter((each) => kindId === undefined || each.kind === kindId);
  const [first] = found;
  if (name === "" || !first) add("variety", "a variety of the seed list, of that kind");
  else if (found.length > 1) add("kind", "its kind: more than one variety has that name");
  return found.length === 1 && name !== "" ? (first?.id ?? null) : null;
}

interface RowSetting {
  readonly id: string;
  readonly variety: string;
  readonly before: Lot | undefined;
  readonly place: StoragePlace | null;
  readonly hasDecimalComma: boolean;
}

/** The lot as a plan file would have it, not yet checked; empty cells leave what is there. */
function rawLot(cells: Cells, { id, variety, before, place, hasDecimalComma }: RowSetting): Raw {
  const old: Raw = before ? (z.encode(lotSchema, before as z.output<typeof lotSchema>) as Raw) : {};
  const number = (column: LotColumn): unknown => {
    const cell = hasDecimalComma ? cells[column].replace(",", ".") : cells[column];
    return /^-?\d+(?:\.\d+)?$/.test(cell) ? Number(cell) : cell;
  };
  const given = (column: LotColumn, key: string, value: unknown): Raw =>
    cells[column] === "" ? {} : { [key]: value };
  const yesNo = (cell: string) =>
    ["yes", "true", "1"].includes(cell) ? true : ["no", "false", "0"].includes(cell) ? false : cell;
  const from = {
    ...given("from", "what", cells.from.toLowerCase()),
    ...given(
      "plot or giver",
      cells.from.toLowerCase() === "own" ? "plot" : "who",
      cells["plot or giver"],
    ),
    ...given("received", "on", cells.received),
    ...given("plants", "plants", number("plants")),
    ...given("cleaned grams", "cleanedGrams", number("cleaned grams")),
  };
  const unit = cells.unit === "" ? (before?.amount?.unit ?? "g") : cells.unit.toLowerCase();
  return {
    ...old,
    id,
    variety,
    code: before?.code ?? cells.code,
    ...given("harvest year", "harvestYear", number("harvest year")),
    ...(Object.keys(from).length === 0
      ? {}
      : { from: { ...(old["from"] as Raw | undefined), ...from } }),
    ...given("amount", "amount", { unit, value: number("amount") }),
    ...given("seeds per gram", "seedsPerGram", number("seeds per gram")),
    ...(place ? { stored: storedAt(before, old, place) } : {}),
    ...given("test date", "tests", testsWith(cells, before, old, number)),
    ...given("treated", "treated", yesNo(cells.treated.toLowerCase())),
    ...given("treated with", "treatedWith", cells["treated with"]),
    ...(cells["may have crossed"].startsWith(AS_RECORDED)
      ? {}
      : given(
          "may have crossed",
          "mayHaveCrossed",
          yesNo(cells["may have crossed"].toLowerCase()),
        )),
    ...given("state", "state", cells.state.toLowerCase()),
    ...given("note", "note", cells.note),
  };
}

/** No day is known of a move, so the last place is only put right. */
function storedAt(before: Lot | undefined, old: Raw, { id }: StoragePlace): unknown {
  const stays = (old["stored"] as readonly Raw[] | undefined) ?? [];
  const last = stays.at(-1);
  if (!last || before === undefined) return [{ place: id }];
  return last["place"] === id ? stays : [...stays.slice(0, -1), { ...last, place: id }];
}

/** A test of the same day is replaced, another is added. */
function testsWith(
  cells: Cells,
  before: Lot | undefined,
  old: Raw,
  number: (column: LotColumn) => unknown,
): unknown {
  const tests = (old["tests"] as readonly Raw[] | undefined) ?? [];
  const same = tests.find((test) => test["date"] === cells["test date"]);
  const given = (column: LotColumn, key: string): Raw =>
    cells[column] === "" ? {} : { [key]: number(column) };
  const test = {
    ...same,
    id: same?.["id"] ?? nextTestId(before ?? {}),
    date: cells["test date"],
    ...given("test sown", "sown"),
    ...given("test sprouted", "sprouted"),
    ...given("test hard", "hard"),
    ...given("test days", "days"),
    ...given("test celsius", "temperatureC"),
  };
  return [...tests.filter((each) => each !== same), test];
}

const COLUMN_OF: ReadonlyMap<string, LotColumn> = new Map([
  ["harvestYear", "harvest year"],
  ["seedsPerGram", "seeds per gram"],
  ["treated", "treated"],
  ["treatedWith", "treated with"],
  ["mayHaveCrossed", "may have crossed"],
  ["state", "state"],
  ["note", "note"],
  ["code", "code"],
  ["stored", "kept at"],
  ["what", "from"],
  ["plot", "plot or giver"],
  ["who", "plot or giver"],
  ["on", "received"],
  ["plants", "plants"],
  ["cleanedGrams", "cleaned grams"],
  ["unit", "unit"],
  ["value", "amount"],
  ["date", "test date"],
  ["sown", "test sown"],
  ["sprouted", "test sprouted"],
  ["hard", "test hard"],
  ["days", "test days"],
  ["temperatureC", "test celsius"],
]);

/** The column a fault's field came from. */
function columnAt(path: readonly PropertyKey[]): LotColumn {
  const names = path.map(String).reverse();
  return names.map((name) => COLUMN_OF.get(name)).find((column) => column !== undefined) ?? "code";
}
