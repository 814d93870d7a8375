/** The lines of the shelf: what is known of each lot, found, sorted. Cheap for thousands of lots. */
import type { CropBook } from "../../core/kinds/crop-book.ts";
import type { Kind } from "../../core/kinds/crop.ts";
import { standardOf } from "../../core/lots/ageing.ts";
import { type Estimate, estimateOf, shelfPlace } from "../../core/lots/estimate.ts";
import { crossedLots } from "../../core/generations/crossed-lots.ts";
import { varietyIndex } from "../../core/lots/variety-index.ts";
import { inSeeds, seedsPerGram } from "../../core/lots/seed-yield.ts";
import type { SowingRow } from "../../core/lots/sowing.ts";
import { civilFromDay } from "../../core/model/day.ts";
import type { Lot, Plan, StoragePlace, Variety } from "../../core/model/plan.ts";
import { foldedText } from "../form/folded-text.ts";
import type { ShelfSort, StateShown } from "../state/lots-state.ts";
import * as said from "./words.ts";

export const sortWords: Readonly<Record<ShelfSort, string>> = {
  variety: said.sortByVariety,
  code: said.sortByCode,
  age: said.oldestFirst,
  "weakest first": said.weakestFirst,
  "short first": said.shortFirst,
  place: said.sortByPlace,
};

export const statesShownWords: Readonly<Record<StateShown, string>> = {
  "in stock": said.inStockOnly,
  gone: said.goneOnly,
  all: said.allLots,
};

export interface ShelfRow {
  readonly lot: Lot;
  readonly variety: Variety | undefined;
  readonly kind: Kind | undefined;
  readonly place: StoragePlace | null;
  readonly estimate: Estimate | null;
  /** Whether crosses may be in it, by itself or by what it comes from. */
  readonly isCrossed: boolean;
  /** All it is found by, folded. */
  readonly folded: string;
}

interface KnownRow {
  readonly row: ShelfRow;
  readonly places: Plan["storagePlaces"];
}

/** Rows are made once for each lot as it is, so an edit of one lot makes one row. */
const made = new WeakMap<Lot, KnownRow>();

export function shelfRows(plan: Plan, book: CropBook): readonly ShelfRow[] {
  const varieties = varietyIndex(plan.varieties);
  const crossed = crossedLots(plan.lots);
  return plan.lots.map((lot) => {
    const variety = varieties.get(lot.variety);
    const kind = variety && book.kind(variety.kind);
    const known = made.get(lot);
    if (
      known &&
      known.places === plan.storagePlaces &&
      known.row.variety === variety &&
      known.row.isCrossed === crossed.has(lot.id) &&
      known.row.kind === kind
    ) {
      return known.row;
    }
    const isCrossed = crossed.has(lot.id);
    const row = { ...shelfRow(lot, variety, kind, plan.storagePlaces), isCrossed };
    made.set(lot, { row, places: plan.storagePlaces });
    return row;
  });
}

function shelfRow(
  lot: Lot,
  variety: Variety | undefined,
  kind: Kind | undefined,
  places: Plan["storagePlaces"],
): Omit<ShelfRow, "isCrossed"> {
  const place = shelfPlace(lot, places);
  const words = [
    lot.code,
    variety?.name,
    kind?.name,
    kind?.botanicalName,
    place?.name,
    lot.harvestYear,
    lot.from?.who,
    lot.from?.plot,
    lot.note,
  ];
  return {
    lot,
    variety,
    kind,
    place,
    estimate: kind ? estimateOf(lot, kind, places) : null,
    folded: foldedText(words.filter((word) => word !== undefined).join(" ")),
  };
}

/** Rows in which each word of the query stands, of the states shown. */
export function foundRows(
  rows: readonly ShelfRow[],
  query: string,
  states: StateShown,
): readonly ShelfRow[] {
  const words = foldedText(query)
    .split(/\s+/)
    .filter((word) => word !== "");
  return rows.filter(
    ({ lot, folded }) =>
      (states === "all" || (lot.state === "in stock") === (states === "in stock")) &&
      words.every((word) => folded.includes(word)),
  );
}

/** Seeds that the plantings of a layout take of each lot, by the lot's id. */
export function needOfLots(rows: readonly SowingRow[]): ReadonlyMap<string, number> {
  const need = new Map<string, number>();
  for (const { parts } of rows) {
    for (const { lot, seeds } of parts) need.set(lot.id, (need.get(lot.id) ?? 0) + seeds);
  }
  return need;
}

const collator = new Intl.Collator("en", { numeric: true, sensitivity: "base" });

/**
 * The rows in the order asked for; those alike by variety, then code. What is not known comes last.
 * @param need seeds that are to be sown, by the lot's id @param day for germination
 */
export function sortedRows(
  rows: readonly ShelfRow[],
  sort: ShelfSort,
  need: ReadonlyMap<string, number>,
  day: number,
): readonly ShelfRow[] {
  const byName = (a: ShelfRow, b: ShelfRow) =>
    collator.compare(a.variety?.name ?? "", b.variety?.name ?? "") ||
    collator.compare(a.lot.code, b.lot.code);
  const by = (key: (row: ShelfRow) => number) => {
    const keys = new Map(rows.map((row) => [row, key(row)]));
    // Infinity less Infinity is no number: then the names decide.
    const keyOf = (row: ShelfRow) => keys.get(row) ?? Infinity;
    return [...rows].sort((a, b) => {
      const [first, second] = [keyOf(a), keyOf(b)];
      return first === second ? byName(a, b) : first < second ? -1 : 1;
    });
  };
  switch (sort) {
    case "variety":
      return [...rows].sort(byName);
    case "code":
      return [...rows].sort((a, b) => collator.compare(a.lot.code, b.lot.code));
    case "age":
      return by(({ lot }) => lot.harvestYear ?? yearReceived(lot) ?? Infinity);
    case "weakest first":
      return by((row) => margin(row, day));
    case "short first":
      return by((row) => reach(row, need));
    case "place":
      return [...rows].sort((a, b) => {
        if ((a.place === null) !== (b.place === null)) return a.place === null ? 1 : -1;
        return collator.compare(a.place?.name ?? "", b.place?.name ?? "") || byName(a, b);
      });
  }
}

function yearReceived({ from }: Lot): number | undefined {
  return from?.on === undefined ? undefined : civilFromDay(from.on).year;
}

/** How far what is likely to come up lies over the kind's standard; Infinity: not known. */
export function margin({ estimate, kind }: ShelfRow, day: number): number {
  if (!estimate || !kind) return Infinity;
  return estimate.likelyAt(Math.max(day, estimate.startDay)) - standardOf(kind);
}

/** How often the amount covers what is needed of the lot; what nothing needs comes after. */
function reach({ lot, kind }: ShelfRow, need: ReadonlyMap<string, number>): number {
  const needed = need.get(lot.id) ?? 0;
  if (needed === 0) return Infinity;
  const seeds = inSeeds(lot.amount, seedsPerGram(lot, kind));
  return seeds === undefined ? Number.MAX_VALUE : seeds / needed;
}
