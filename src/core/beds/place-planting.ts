/** Where a variety lands in a bed: a stretch across the bed's width, as long as its plants need. */
import { areOnGroundTogether } from "../calendar/ground-time.ts";
import type { Kind } from "../kinds/crop.ts";
import { shapeCorners } from "../geometry/outline.ts";
import { type Point, turnPoint } from "../geometry/point.ts";
import type { AreaShape, Bed, Layout, RectangleShape, Shape } from "../model/plan.ts";
import { placeInOutline } from "./place-in-outline.ts";
import { FALLBACK_SPACING_M, LEAST_STRETCH_M, type Stretch } from "./stretch.ts";

export interface Placed {
  /** A rectangle in a rectangular bed, else a piece of the bed. */
  readonly outline: AreaShape;
  readonly plants: number;
  readonly rows: number;
}

/** Plants that fit a rectangle: rows along its length at the kind's spacing, half a gap at edges. */
export function plantsThatFit(
  kind: Kind,
  widthM: number,
  lengthM: number,
): { readonly plants: number; readonly rows: number } {
  const inRow = kind.spacing?.inRowM.value ?? FALLBACK_SPACING_M.inRow;
  const between = kind.spacing?.betweenRowsM.value ?? FALLBACK_SPACING_M.betweenRows;
  const rows = Math.max(1, Math.floor(widthM / between + 1e-9));
  return { rows, plants: rows * Math.max(1, Math.floor(lengthM / inRow + 1e-9)) };
}

/**
 * Stretches of a rectangular bed no planting covers, from its near end to its far end.
 * @param except id of a planting that leaves its own ground free, and that of all that is cleared
 *   before it starts or starts once it is cleared
 */
export function freeStretches(layout: Layout, bed: Bed, except?: string): readonly Stretch[] {
  if (bed.outline.shape !== "rectangle") return [];
  const shape = bed.outline;
  const own = except === undefined ? undefined : layout.plantings.find(({ id }) => id === except);
  const taken = layout.plantings
    .filter((planting) => planting.bed === bed.id && planting.id !== except)
    .filter((planting) => own === undefined || areOnGroundTogether(own, planting))
    .map((planting) => stretchOf(shape, planting.outline))
    .sort((a, b) => a.fromM - b.fromM);
  const free: Stretch[] = [];
  let from = 0;
  for (const stretch of taken) {
    if (stretch.fromM - from >= LEAST_STRETCH_M) free.push({ fromM: from, toM: stretch.fromM });
    from = Math.max(from, stretch.toM);
  }
  if (shape.lengthM - from >= LEAST_STRETCH_M) free.push({ fromM: from, toM: shape.lengthM });
  return free;
}

/** What part of a rectangular bed's length a shape covers, metres from the bed's near end. */
export function stretchOf(bed: RectangleShape, shape: Shape): Stretch {
  const along = shapeCorners(shape).map((corner) => alongBed(bed, corner));
  return { fromM: Math.min(...along), toM: Math.max(...along) };
}

/** How far along the bed's length a place lies, metres from its near end. */
export function alongBed(bed: RectangleShape, place: Point): number {
  const straight = turnPoint(place, { x: bed.x, y: bed.y }, -bed.turnDeg);
  return straight.y - bed.y + bed.lengthM / 2;
}

/** The rectangle across the whole bed over a stretch of its length. */
export function outlineOnBed(bed: RectangleShape, { fromM, toM }: Stretch): RectangleShape {
  const middle = turnPoint(
    { x: bed.x, y: bed.y - bed.lengthM / 2 + (fromM + toM) / 2 },
    { x: bed.x, y: bed.y },
    bed.turnDeg,
  );
  return { ...bed, x: middle.x, y: middle.y, lengthM: toM - fromM };
}

/**
 * A place for some plants of a kind in a bed, or null when it has no free stretch. With `at`, the
 * stretch is centred there as far as the free ground allows; on taken ground it goes to the nearest
 * stretch that takes all plants. Without, the first such stretch is used. Else the longest.
 */
export function placeInBed(
  layout: Layout,
  bed: Bed,
  kind: Kind,
  wantedPlants: number,
  at?: Point,
): Placed | null {
  if (bed.outline.shape !== "rectangle") return placeInOutline(layout, bed, kind, wantedPlants, at);
  const shape = bed.outline;
  const needed = lengthFor(kind, shape.widthM, wantedPlants);
  const free = freeStretches(layout, bed);
  const along = at ? alongBed(shape, at) : null;
  const stretch =
    free.find(({ fromM, toM }) => along !== null && fromM <= along && along <= toM) ??
    nearestOf(
      free.filter(({ fromM, toM }) => toM - fromM >= needed),
      along,
    ) ??
    [...free].sort((a, b) => b.toM - b.fromM - (a.toM - a.fromM))[0];
  if (!stretch) return null;
  const length = Math.min(needed, stretch.toM - stretch.fromM);
  const wantedFrom = along === null ? stretch.fromM : along - length / 2;
  const fromM = Math.min(Math.max(wantedFrom, stretch.fromM), stretch.toM - length);
  const fit = plantsThatFit(kind, shape.widthM, length);
  return {
    outline: outlineOnBed(shape, { fromM, toM: fromM + length }),
    rows: fit.rows,
    plants: Math.min(wantedPlants, fit.plants),
  };
}

/** The stretch nearest to a place along the bed, or the first; undefined when there is none. */
function nearestOf(stretches: readonly Stretch[], along: number | null): Stretch | undefined {
  if (along === null) return stretches[0];
  const away = ({ fromM, toM }: Stretch) => Math.max(fromM - along, along - toM);
  return [...stretches].sort((a, b) => away(a) - away(b))[0];
}

/** The length that plants of a kind take in rows across a width, metres. */
export function lengthFor(kind: Kind, widthM: number, plants: number): number {
  const inRow = kind.spacing?.inRowM.value ?? FALLBACK_SPACING_M.inRow;
  const { rows } = plantsThatFit(kind, widthM, inRow);
  return Math.max(inRow, Math.ceil(plants / rows) * inRow);
}
