/** Where along its bed a planting lies, as numbers that can be typed. */
import { type Stretch, stretchOf } from "../core/edits/place-planting.ts";
import { turnPoint } from "../core/geometry/point.ts";
import type { Bed, Planting, RectangleShape } from "../core/model/plan.ts";

/** Two turns closer than this count as the same, degrees. */
const SAME_TURN_DEG = 0.01;

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

/** Why a stretch cannot be used, or null. */
export function stretchProblem({ fromM, toM }: Stretch): string | null {
  return toM - fromM < 0.01 ? "The end must lie beyond the start" : null;
}
