/** What grew where before: earlier crops with kind and outline looked up, and how long ago. */
import { DISTANCE_TOLERANCE_M } from "../checks/isolation-pair.ts";
import type { Stand } from "../checks/stand.ts";
import { boundsGap } from "../geometry/bounds.ts";
import { gapBetween } from "../geometry/gap.ts";
import { type Outline, outlineOf } from "../geometry/outline.ts";
import type { CropBook } from "../kinds/crop-book.ts";
import type { Kind } from "../kinds/crop.ts";
import { civilFromDay } from "../model/day.ts";
import type { EarlierCrop, Plan } from "../model/plan.ts";
import { rimOf } from "./shed-seed.ts";

/** An earlier crop with its kind and outline looked up. */
export interface EarlierGround {
  readonly crop: EarlierCrop;
  readonly kind: Kind;
  readonly outline: Outline;
  /** How far around its outline its seed counts, metres. */
  readonly rimM: number;
}

const grounds = new WeakMap<
  Plan["earlierCrops"],
  { readonly book: CropBook; readonly list: readonly EarlierGround[] }
>();

/** The earlier crops of a plan resolved; the same list for the same crops. */
export function earlierGrounds(
  crops: Plan["earlierCrops"],
  book: CropBook,
): readonly EarlierGround[] {
  const known = grounds.get(crops);
  if (known?.book === book) return known.list;
  const list = crops.flatMap((crop) => {
    const kind = book.kind(crop.kind);
    return kind ? [groundOf(crop, kind)] : [];
  });
  grounds.set(crops, { book, list });
  return list;
}

/** What bore no seed shed none around it either. */
function groundOf(crop: EarlierCrop, kind: Kind): EarlierGround {
  const rimM = crop.wentToSeed === "no" ? 0 : rimOf(kind);
  return { crop, kind, outline: outlineOf(crop.outline), rimM };
}

/**
 * Whole years from a crop to a season: the calendar year the season begins in, less the year of
 * the crop. Negative for a crop that is still to come.
 */
export function yearsSince(crop: Pick<EarlierCrop, "year">, season: Plan["season"]): number {
  return civilFromDay(season.first).year - crop.year;
}

/** Whether an outline touches ground, overlaps it or lies in it, or no farther off than a rim. */
export function liesOn(outline: Outline, ground: Outline, rimM = 0): boolean {
  const reach = rimM + DISTANCE_TOLERANCE_M;
  return (
    boundsGap(outline.bounds, ground.bounds) <= reach &&
    gapBetween(outline, ground).distanceM <= reach
  );
}

/**
 * What is reckoned for a stand from one list of the plan, kept as long as both are the same
 * objects: a stand is made anew whenever anything in it changes.
 */
export function rememberedByStand<List extends object, T>(
  reckon: (stand: Stand, list: List) => T,
): (stand: Stand, list: List) => T {
  const known = new WeakMap<Stand, { readonly list: List; readonly value: T }>();
  return (stand, list) => {
    const found = known.get(stand);
    if (found?.list === list) return found.value;
    const value = reckon(stand, list);
    known.set(stand, { list, value });
    return value;
  };
}
