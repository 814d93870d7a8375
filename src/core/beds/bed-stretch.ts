/** Where along its bed a planting lies, and moving it there: sliding, another length, another bed. */
import { areOnGroundTogether, layoutDuring } from "../calendar/ground-time.ts";
import type { Kind } from "../kinds/crop.ts";
import { moveShape, shapeCentre } from "../geometry/outline.ts";
import { turnPoint } from "../geometry/point.ts";
import type { AreaShape, Bed, Layout, Planting, RectangleShape } from "../model/plan.ts";
import { freeStretches, lengthFor, outlineOnBed, placeInBed, stretchOf } from "./place-planting.ts";
import type { Stretch } from "./stretch.ts";

/** Two turns closer than this count as the same, degrees. */
const SAME_TURN_DEG = 0.01;
/** Lengths closer than this are the same when typed and shown, metres. */
const SAME_LENGTH_M = 1e-6;
/** A planting within this of its bed's width covers it from edge to edge, metres. */
const SAME_WIDTH_M = 0.01;

export interface AlongBed {
  readonly bed: RectangleShape;
  readonly planting: RectangleShape;
  readonly stretch: Stretch;
}

/** The stretch of a rectangle that lies along a rectangular bed; null when it lies otherwise. */
export function alongBedOf(planting: Planting, beds: readonly Bed[]): AlongBed | null {
  const bed = beds.find((entry) => entry.id === planting.bed)?.outline;
  const shape = planting.outline;
  if (bed?.shape !== "rectangle" || shape.shape !== "rectangle") return null;
  const turn = (((shape.turnDeg - bed.turnDeg) % 180) + 180) % 180;
  if (Math.min(turn, 180 - turn) > SAME_TURN_DEG) return null;
  return { bed, planting: shape, stretch: stretchOf(bed, shape) };
}

/** The planting over another stretch of its bed; its width and place across the bed stay. */
export function onStretch({ bed, planting }: AlongBed, stretch: Stretch): RectangleShape {
  const centre = { x: bed.x, y: bed.y };
  const straight = turnPoint({ x: planting.x, y: planting.y }, centre, -bed.turnDeg);
  const along = bed.y - bed.lengthM / 2 + (stretch.fromM + stretch.toM) / 2;
  const middle = turnPoint({ x: straight.x, y: along }, centre, bed.turnDeg);
  return { ...planting, ...middle, lengthM: stretch.toM - stretch.fromM };
}

/** Whether a stretch lies within the bed's length, but for rounding of typed numbers. */
export function isWithinBed({ bed }: AlongBed, { fromM, toM }: Stretch): boolean {
  return fromM >= -SAME_LENGTH_M && toM <= bed.lengthM + SAME_LENGTH_M;
}

/**
 * Where a planting could begin, metres from the bed's near end, without touching what else is
 * planted there: from and to of each free stretch that takes its length.
 */
export function freeStarts(
  layout: Layout,
  bed: Bed,
  planting: Planting,
  lengthM: number,
): readonly Stretch[] {
  return freeStretches(layout, bed, planting.id)
    .filter(({ fromM, toM }) => toM - fromM >= lengthM - SAME_LENGTH_M)
    .map(({ fromM, toM }) => ({ fromM, toM: Math.max(fromM, toM - lengthM) }));
}

/**
 * The plantings directly before and after one in its bed, by where their middles lie; those that
 * are not on the ground when it is left out.
 */
export function bedNeighbours(
  layout: Layout,
  bed: RectangleShape,
  planting: Planting,
): { readonly before: BedNeighbour | null; readonly after: BedNeighbour | null } {
  const middle = ({ fromM, toM }: Stretch) => (fromM + toM) / 2;
  const own = middle(stretchOf(bed, planting.outline));
  const others = layout.plantings
    .filter(({ id, bed: bedId }) => id !== planting.id && bedId === planting.bed)
    .filter((other) => areOnGroundTogether(planting, other))
    .map(({ code, outline }) => ({ code, stretch: stretchOf(bed, outline) }))
    .sort((a, b) => middle(a.stretch) - middle(b.stretch));
  return {
    before: others.findLast(({ stretch }) => middle(stretch) <= own) ?? null,
    after: others.find(({ stretch }) => middle(stretch) > own) ?? null,
  };
}

export interface BedNeighbour {
  readonly code: string;
  readonly stretch: Stretch;
}

/** The ground a planting could grow over where it lies: from its neighbour before to the one after. */
export function roomAround(layout: Layout, along: AlongBed, planting: Planting): Stretch {
  const { before, after } = bedNeighbours(layout, along.bed, planting);
  const { fromM, toM } = along.stretch;
  return {
    fromM: Math.min(fromM, Math.max(0, before?.stretch.toM ?? 0)),
    toM: Math.max(toM, Math.min(along.bed.lengthM, after?.stretch.fromM ?? along.bed.lengthM)),
  };
}

/**
 * A planting made long enough for its plants in the given rows: from where it begins, and moved
 * towards the near end where that is needed; null when the room between its neighbours is too short.
 */
export function lengthened(
  layout: Layout,
  along: AlongBed,
  planting: Planting,
  lengthM: number,
): RectangleShape | null {
  const room = roomAround(layout, along, planting);
  if (room.toM - room.fromM < lengthM - SAME_LENGTH_M) return null;
  const fromM = Math.max(room.fromM, Math.min(along.stretch.fromM, room.toM - lengthM));
  return onStretch(along, { fromM, toM: fromM + lengthM });
}

export type OtherBed =
  | { readonly ok: true; readonly outline: AreaShape }
  /** The longest free stretch and the length needed, metres. */
  | { readonly ok: false; readonly longestM: number; readonly neededM: number };

/**
 * Where a planting lies once it is moved to another bed: the first free stretch that takes it. One
 * that covered its old bed from edge to edge covers the new one, as long as its plants then need;
 * another keeps its size. In a bed that is no rectangle it takes a piece that holds its plants, and
 * lies about the middle where there is none.
 */
export function onOtherBed(
  layout: Layout,
  planting: Planting,
  bed: Bed,
  kind: Kind | undefined,
): OtherBed {
  const shape = planting.outline;
  if (bed.outline.shape !== "rectangle" && kind) {
    const others = {
      ...layout,
      plantings: layout.plantings.filter(({ id }) => id !== planting.id),
    };
    const placed = placeInBed(layoutDuring(others, planting), bed, kind, planting.plants ?? 1);
    if (placed) return { ok: true, outline: placed.outline };
  }
  if (bed.outline.shape !== "rectangle" || shape.shape !== "rectangle") {
    const to = shapeCentre(bed.outline);
    const from = shapeCentre(shape);
    return { ok: true, outline: moveShape(shape, to.x - from.x, to.y - from.y) };
  }
  const old = alongBedOf(planting, layout.beds);
  const isAcross = old === null || Math.abs(shape.widthM - old.bed.widthM) <= SAME_WIDTH_M;
  const isAsWide = Math.abs(shape.widthM - bed.outline.widthM) <= SAME_WIDTH_M;
  const neededM =
    isAcross && !isAsWide && kind && planting.plants !== undefined
      ? lengthFor(kind, bed.outline.widthM, planting.plants)
      : shape.lengthM;
  const [start] = freeStarts(layout, bed, planting, neededM);
  if (!start) {
    const free = freeStretches(layout, bed, planting.id).map(({ fromM, toM }) => toM - fromM);
    return { ok: false, longestM: Math.max(0, ...free), neededM };
  }
  const outline = outlineOnBed(bed.outline, { fromM: start.fromM, toM: start.fromM + neededM });
  const widthM = isAcross ? outline.widthM : Math.min(shape.widthM, outline.widthM);
  return { ok: true, outline: { ...outline, widthM } };
}
