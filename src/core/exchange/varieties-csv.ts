/**
 * The seed list as CSV (RFC 4180): one row for each variety, lengths in metres, days as "55 to 65",
 * which no spreadsheet takes for a date.
 */
import { decimalCell } from "./decimal-cell.ts";
import type { CropBook } from "../kinds/crop-book.ts";
import type { Kind, Range } from "../kinds/crop.ts";
import { lotBook } from "../lots/lot-book.ts";
import { codesText } from "../lots/named-lots.ts";
import type { Lot, Plan, Variety } from "../model/plan.ts";
import { csvFile } from "../formats/csv-file.ts";

/** Headings in the order they are written. Only the first two are needed when a list is read. */
export const csvColumns = [
  "name",
  "kind",
  "botanical name",
  "flower form",
  "hybrid",
  "plants wanted",
  "isolation distance",
  "figure",
  "days sown to flower",
  "days set out to flower",
  "days in flower",
  "heat to flower",
  "lot",
  "note",
] as const;

export type CsvColumn = (typeof csvColumns)[number];

/** The plan's varieties as the text of a CSV file. */
export function varietiesCsv(plan: Plan, book: CropBook): string {
  const lots = lotBook(plan.lots);
  const records = plan.varieties.map((variety) => {
    const cells = varietyCells(variety, book, (id) => lots.lot(id));
    return csvColumns.map((column) => cells[column]);
  });
  return csvFile(csvColumns, records);
}

/** A variety as it stands in a row, cell by cell; what is not known is empty. */
export function varietyCells(
  variety: Variety,
  book: CropBook,
  lotOf: (id: string) => Lot | undefined,
): Readonly<Record<CsvColumn, string>> {
  const kind = book.kind(variety.kind);
  return {
    name: variety.name,
    kind: kindName(variety.kind, kind, book),
    "botanical name": kind?.botanicalName ?? "",
    // What the kind does not have could not be read back and means nothing.
    "flower form": kind?.forms?.find(({ id }) => id === variety.form)?.id ?? "",
    hybrid: variety.hybrid === true ? "yes" : "no",
    "plants wanted": variety.wantedPlants === undefined ? "" : String(variety.wantedPlants),
    "isolation distance":
      variety.isolationM === undefined ? "" : `${decimalCell(variety.isolationM)} m`,
    figure: kind?.isolation.find(({ id }) => id === variety.figure)?.id ?? "",
    "days sown to flower": rangeCell(variety.sownToFlower),
    "days set out to flower": rangeCell(variety.transplantedToFlower),
    "days in flower": rangeCell(variety.bloomDays),
    "heat to flower": heatCell(variety.heatToFlower),
    lot: codesText((variety.lots ?? []).flatMap((id) => lotOf(id) ?? [])),
    note: variety.note ?? "",
  };
}

/** The common name where it leads back to the kind, else its id. */
function kindName(id: string, kind: Kind | undefined, book: CropBook): string {
  return kind && book.find(kind.name)?.id === id ? kind.name : id;
}

function rangeCell(range: Range | undefined): string {
  return range === undefined ? "" : `${range[0]} to ${range[1]}`;
}

/** E.g. "699 to 777 C-days; modified average; base 10 C; cap 30 C". */
function heatCell(heat: Variety["heatToFlower"]): string {
  if (!heat) return "";
  const [least, most] = heat.cDays;
  const cap = heat.capC === null ? "no cap" : `cap ${decimalCell(heat.capC)} C`;
  return `${decimalCell(least)} to ${decimalCell(most)} C-days; ${heat.method}; base ${decimalCell(heat.baseC)} C; ${cap}`;
}
