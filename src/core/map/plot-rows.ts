/** One row of facts per planting, for the plot list. */
import {
  formatMeasured,
  formatDistance,
  formatArea,
  formatLength,
  type LengthUnit,
} from "../model/length.ts";
import { isolationPair } from "../checks/isolation.ts";
import type { IsolationPair } from "../checks/isolation-pair.ts";
import type { Stand } from "../checks/stand.ts";
import type { CropBook } from "../kinds/crop-book.ts";
import { outlineArea } from "../geometry/outline.ts";
import { boundsCentre, boundsGap } from "../geometry/bounds.ts";
import { type DayNumber, civilFromDay, longDate, shortDate } from "../model/day.ts";
import { isStanding } from "../model/layouts.ts";
import type { Plan, Planting } from "../model/plan.ts";
import { type MapGrid, gridReference } from "./map-grid.ts";
import type { CheckedLayout } from "../checks/checked-layout.ts";
import { lotCodesToSow } from "../lots/lot-book.ts";
import { walkingNumbers } from "../fieldwork/walking-order.ts";
import { coverMarks, purposeWords, rowWords as words } from "./map-words.ts";

export interface PlotRow {
  readonly id: string;
  readonly code: string;
  /** Its number on the walk through the garden. */
  readonly walk: string;
  readonly square: string;
  readonly kind: string;
  readonly variety: string;
  /** Codes of the lots it is sown from; empty where none is named. */
  readonly lot: string;
  /** What it is grown for, and its cover if there is one. */
  readonly purpose: readonly string[];
  readonly isEaten: boolean;
  /** `90 in 3 rows`; with neither counted, empty. */
  readonly plants: string;
  readonly plantCount: number | null;
  readonly size: string;
  readonly start: string;
  readonly bloom: string;
  /** Code or name of the nearest that could cross; empty when nothing here could. */
  readonly nearest: string;
  readonly nearestDistance: string;
}

/** In the order of the walk. */
export function plotRows(input: CheckedLayout, grid: MapGrid): readonly PlotRow[] {
  const { plan, layout, result, book } = input;
  const nearest = nearestPairs(result.stands, book);
  const codes = new Map<string, string>([
    ...plan.surroundings.map((item) => [item.id, item.label] as const),
    ...layout.plantings.map((planting) => [planting.id, planting.code] as const),
  ]);
  const varieties = new Map(plan.varieties.map((variety) => [variety.id, variety]));
  const date = dateWriter(plan);
  const walk = walkingNumbers(layout);
  const place = ({ id }: Planting) => walk.get(id) ?? Infinity;
  return byCode(layout.plantings)
    .toSorted((a, b) => place(a) - place(b))
    .map((planting): PlotRow => {
      const variety = varieties.get(planting.variety);
      const stand = result.standById.get(planting.id);
      const pair = nearest.get(planting.id);
      const other = pair && (pair.seedParent === planting.id ? pair.pollenSource : pair.seedParent);
      return {
        id: planting.id,
        code: planting.code,
        walk: String(walk.get(planting.id) ?? ""),
        square: stand ? gridReference(grid, boundsCentre(stand.outline.bounds)) : "",
        kind: book.kind(variety?.kind ?? "")?.name ?? "",
        variety:
          variety?.hybrid === true ? words.hybrid(variety.name) : (variety?.name ?? "").trim(),
        lot: lotCodesToSow(plan, planting, variety),
        isEaten: planting.purpose === "food",
        purpose: [purposeWords[planting.purpose], coverMarks[planting.cover]].filter(
          (part) => part !== "",
        ),
        plants: plantsText(planting),
        plantCount: planting.plants ?? null,
        size: sizeText(planting, stand, plan.units),
        start: groundText(planting, date),
        bloom: bloomText(planting, stand, date),
        nearest: other === undefined ? "" : (codes.get(other) ?? other),
        nearestDistance: pair ? distanceText(pair, planting.id, plan.units) : "",
      };
    });
}

/** `under glass 1 Apr, set out 20 May, clear 5 Sep`: the days that are given and still to come. */
function groundText(planting: Planting, date: (day: DayNumber) => string): string {
  const { start, end } = planting;
  const verb = start?.method === "sown" ? words.sow : words.setOut;
  const begun = [
    ...(start?.sownUnderGlass === undefined ? [] : [words.underGlass(date(start.sownUnderGlass))]),
    ...(start ? [verb(date(start.date))] : []),
  ];
  return [
    ...(isStanding(planting) ? [words.stands] : begun),
    ...(end === undefined ? [] : [words.clear(date(end))]),
  ].join(", ");
}

/**
 * The nearest pair each stand is in, either way round; its own as seed parent where equally near.
 * Bounds are looked at first: only what could be nearer than the nearest so far is measured.
 */
function nearestPairs(
  stands: readonly Stand[],
  book: CropBook,
): ReadonlyMap<string, IsolationPair> {
  const nearest = new Map<string, IsolationPair>();
  const distanceOf = (id: string) => nearest.get(id)?.distanceM ?? Infinity;
  const offer = (id: string, pair: IsolationPair) => {
    const held = nearest.get(id);
    const isOwn = pair.seedParent === id && held?.seedParent !== id;
    if (pair.distanceM < distanceOf(id) || (pair.distanceM === distanceOf(id) && isOwn)) {
      nearest.set(id, pair);
    }
  };
  for (const parent of stands) {
    if (!parent.isSeedParent) continue;
    for (const source of stands) {
      if (source.kind.group !== parent.kind.group) continue;
      const least = boundsGap(parent.outline.bounds, source.outline.bounds);
      if (least > distanceOf(parent.id) && least > distanceOf(source.id)) continue;
      const pair = isolationPair(parent, source, book);
      if (!pair) continue;
      offer(parent.id, pair);
      offer(source.id, pair);
    }
  }
  return nearest;
}

function distanceText(pair: IsolationPair, id: string, unit: LengthUnit): string {
  if (pair.seedParent !== id || !pair.requiredM) return formatDistance(pair.distanceM, unit);
  const isShort = pair.standing !== "distance";
  const { measured, required, after } = formatMeasured(
    pair.distanceM,
    pair.requiredM,
    isShort,
    unit,
  );
  return isShort
    ? words.short(measured, `${required}${after}`)
    : words.enough(`${measured}${after}`, required);
}

function plantsText({ plants, rows }: Planting): string {
  const inRows = rows === undefined ? "" : words.rows(rows);
  if (plants === undefined) return inRows;
  return inRows === "" ? String(plants) : words.inRows(plants, inRows);
}

function sizeText({ outline }: Planting, stand: Stand | undefined, unit: LengthUnit): string {
  if (outline.shape === "rectangle") {
    const [width, length] = [outline.widthM, outline.lengthM].map((side) =>
      formatLength(side, unit),
    );
    return unit === "m" ? `${width?.replace(" m", "")} × ${length}` : `${width} × ${length}`;
  }
  return stand ? formatArea(outlineArea(stand.outline), unit) : "";
}

function bloomText(
  planting: Planting,
  stand: Stand | undefined,
  date: (day: number) => string,
): string {
  if (planting.flowering === "cut") return words.cut;
  if (planting.flowering === "first-year" && stand?.shedsPollen !== true) return words.noBloom;
  const window = stand?.bloom?.outer;
  if (!window) return words.notKnown;
  // Until frost or cutting: the season's last day would read as if somebody had reckoned it.
  if (stand.bloom?.isOpenEnded) return words.from(date(window.first));
  return words.span(date(window.first), date(window.last));
}

/** Years are written where the season runs over New Year. */
function dateWriter({ season }: Plan): (day: number) => string {
  return civilFromDay(season.first).year === civilFromDay(season.last).year ? shortDate : longDate;
}

/** Plantings or beds in the order of their codes, `B2-1` before `B10-1`. */
export function byCode<T extends { readonly code: string }>(items: readonly T[]): readonly T[] {
  return [...items].sort((a, b) => compareCodes(a.code, b.code));
}

/** Numbers within codes count as numbers. */
function compareCodes(a: string, b: string): number {
  const [left, right] = [a, b].map((code) => code.split(/(\d+)/));
  for (let index = 0; index < Math.max(left?.length ?? 0, right?.length ?? 0); index += 1) {
    const [one = "", two = ""] = [left?.[index], right?.[index]];
    if (one === two) continue;
    const isNumber = index % 2 === 1;
    if (isNumber && Number(one) !== Number(two)) return Number(one) - Number(two);
    return one < two ? -1 : 1;
  }
  return 0;
}
