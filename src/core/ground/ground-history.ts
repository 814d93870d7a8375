/** What is known of a piece of ground, year by year. */
import { overlapDepth } from "../geometry/containment.ts";
import { boundsGap } from "../geometry/bounds.ts";
import { type Outline, outlineOf } from "../geometry/outline.ts";
import type { CropBook } from "../kinds/crop-book.ts";
import { civilFromDay } from "../model/day.ts";
import type { EarlierCrop, GroundMark, Layout, Plan, Planting, Shape } from "../model/plan.ts";

/** Lying in each other by less is drawing, not growing there, metres. */
const LEAST_DEPTH_M = 0.02;

export interface GroundRow {
  readonly id: string;
  /** Whether it is a planting of this season. */
  readonly isThisSeason: boolean;
  readonly year: number;
  readonly code: string;
  readonly kindName: string;
  readonly varietyName: string;
  readonly wentToSeed: NonNullable<EarlierCrop["wentToSeed"]> | null;
  readonly knownFrom: EarlierCrop["knownFrom"];
}

/** Calendar years earlier crops are of, the latest first. */
export function yearsKnown({ earlierCrops }: Pick<Plan, "earlierCrops">): readonly number[] {
  return [...new Set(earlierCrops.map(({ year }) => year))].sort((a, b) => b - a);
}

/** What stands and stood on an outline: this season's plantings, then earlier crops, latest first. */
export function groundHistory(
  plan: Plan,
  layout: Layout,
  ground: Shape,
  book: CropBook,
): readonly GroundRow[] {
  const outline = outlineOf(ground);
  const varieties = new Map(plan.varieties.map((variety) => [variety.id, variety]));
  const season = civilFromDay(plan.season.first).year;
  const now = layout.plantings
    .filter((planting) => isOn(outline, planting.outline))
    .toSorted((a, b) => startOf(b) - startOf(a))
    .map(({ id, code, variety }): GroundRow => ({
      id,
      isThisSeason: true,
      year: season,
      code,
      kindName: kindNameOf(varieties.get(variety)?.kind ?? "", book),
      varietyName: varieties.get(variety)?.name ?? "",
      wentToSeed: null,
      knownFrom: undefined,
    }));
  const before = cropsOn(plan, outline).map((crop): GroundRow => ({
    id: crop.id,
    isThisSeason: false,
    year: crop.year,
    code: crop.code ?? "",
    kindName: kindNameOf(crop.kind, book),
    varietyName: crop.varietyName ?? "",
    wentToSeed: crop.wentToSeed ?? "unknown",
    knownFrom: crop.knownFrom,
  }));
  return [...now, ...before];
}

function startOf({ start, end }: Planting): number {
  return start?.date ?? end ?? 0;
}

/** Marks of diseases on an outline. */
export function marksOn({ groundMarks }: Plan, ground: Shape): readonly GroundMark[] {
  const outline = outlineOf(ground);
  return groundMarks.filter((mark) => isOn(outline, mark.outline));
}

function cropsOn({ earlierCrops }: Plan, outline: Outline): readonly EarlierCrop[] {
  return earlierCrops
    .filter((crop) => isOn(outline, crop.outline))
    .sort((a, b) => b.year - a.year || (a.id < b.id ? -1 : 1));
}

function isOn(outline: Outline, shape: Shape): boolean {
  const other = outlineOf(shape);
  return (
    boundsGap(outline.bounds, other.bounds) === 0 &&
    overlapDepth(outline, other).distanceM > LEAST_DEPTH_M
  );
}

function kindNameOf(kind: string, book: CropBook): string {
  return book.kind(kind)?.name ?? kind;
}
