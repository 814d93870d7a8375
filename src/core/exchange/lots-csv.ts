/** The seed shelf as CSV (RFC 4180), one row for each lot, and back. */
import { decimalCell } from "./decimal-cell.ts";
import type { CropBook } from "../kinds/crop-book.ts";
import { shelfPlace } from "../lots/estimate.ts";
import { crossedForebears } from "../lots/lot-book.ts";
import { varietyIndex } from "../lots/variety-index.ts";
import { latestTest } from "../lots/germination.ts";
import { isoFromDay } from "../model/day.ts";
import type { Lot, Plan } from "../model/plan.ts";
import { csvFile } from "../formats/csv-file.ts";

/** Headings in the order they are written. Of these variety alone is needed when a list is read. */
export const lotColumns = [
  "code",
  "variety",
  "kind",
  "harvest year",
  "from",
  "plot or giver",
  "received",
  "plants",
  "cleaned grams",
  "amount",
  "unit",
  "seeds per gram",
  "kept at",
  "test date",
  "test sown",
  "test sprouted",
  "test hard",
  "test days",
  "test celsius",
  "treated",
  "treated with",
  "may have crossed",
  "state",
  "note",
] as const;

/** Begins what is no saying of the grower but follows from records: it is not read back. */
export const AS_RECORDED = "as recorded";

export type LotColumn = (typeof lotColumns)[number];

export function lotsCsv(plan: Plan, book: CropBook): string {
  const rows = plan.lots.map((lot) => {
    const cells = lotCells(lot, plan, book);
    return lotColumns.map((column) => cells[column]);
  });
  return csvFile(lotColumns, rows);
}

/** A lot as it stands in a row; what is not known is empty. */
export function lotCells(
  lot: Lot,
  plan: Plan,
  book: CropBook,
): Readonly<Record<LotColumn, string>> {
  const variety = varietyIndex(plan.varieties).get(lot.variety);
  const kind = book.kind(variety?.kind ?? "");
  const test = latestTest(lot);
  const { from } = lot;
  return {
    code: lot.code,
    variety: variety?.name ?? "",
    kind: kind && book.find(kind.name)?.id === kind.id ? kind.name : (variety?.kind ?? ""),
    "harvest year": text(lot.harvestYear),
    from: from?.what ?? "",
    "plot or giver": (from?.what === "own" ? from.plot : from?.who) ?? "",
    received: from?.on === undefined ? "" : isoFromDay(from.on),
    plants: text(from?.plants),
    "cleaned grams": text(from?.cleanedGrams),
    amount: text(lot.amount?.value),
    unit: lot.amount?.unit ?? "",
    "seeds per gram": text(lot.seedsPerGram),
    "kept at": shelfPlace(lot, plan.storagePlaces)?.name ?? "",
    "test date": test ? isoFromDay(test.date) : "",
    "test sown": text(test?.sown),
    "test sprouted": text(test?.sprouted),
    "test hard": text(test?.hard),
    "test days": text(test?.days),
    "test celsius": text(test?.temperatureC),
    treated: lot.treated === undefined ? "" : lot.treated ? "yes" : "no",
    "treated with": lot.treatedWith ?? "",
    "may have crossed": crossedCell(lot, plan.lots),
    state: lot.state,
    note: lot.note ?? "",
  };
}

/** Said by hand yes or no; else the codes of those that were not kept apart, itself or forebears. */
function crossedCell(lot: Lot, lots: Plan["lots"]): string {
  if (lot.mayHaveCrossed !== undefined) return lot.mayHaveCrossed ? "yes" : "no";
  const codes = crossedForebears(lots, lot);
  return codes.length === 0 ? "" : `${AS_RECORDED}: ${codes.join(", ")}`;
}

/** As short as it can be read back exactly, never with an exponent. */
function text(value: number | undefined): string {
  return value === undefined ? "" : decimalCell(value);
}
