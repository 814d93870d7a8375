/** Copies in rows and columns, and a single copy beside the original. */
import { joinBounds } from "../geometry/bounds.ts";
import type { Point } from "../geometry/point.ts";
import { shiftOnSheet, turnedBounds } from "../geometry/turned-bounds.ts";
import type { Layout, Plan, Shape } from "../model/plan.ts";
import { type ObjectGroup, groupOf, groupSize, withCopies } from "./copies.ts";
import type { Edit } from "./edit.ts";
import { freeStretches, stretchOf } from "../beds/place-planting.ts";

/** Objects that one command may add. */
export const ARRAY_MOST = 2000;

/** Gap left beside a single copy, metres: a path. No source; our choice. */
const COPY_GAP_M = 0.6;

export interface ArrayShape {
  /** Copies beside each other, the original counted. */
  readonly columns: number;
  /** Rows of them, one beyond the other, the original's counted. */
  readonly rows: number;
  /** Gaps from edge to edge, metres. */
  readonly gapAcrossM: number;
  readonly gapAlongM: number;
  /** Whether columns go to the left and rows towards the near end. */
  readonly isLeftward?: boolean;
  readonly isNearward?: boolean;
}

/** Turn of the directions a group is copied in: its first rectangle's, degrees clockwise. */
function groupTurnDeg(shapes: readonly Shape[]): number {
  const [first] = shapes;
  return first?.shape === "rectangle" ? first.turnDeg : 0;
}

function shapesOf({ beds, plantings, surroundings }: ObjectGroup): readonly Shape[] {
  return [...beds, ...plantings, ...surroundings].map(({ outline }) => outline);
}

/** Size of a group in its own directions, metres, with the turn of those. */
function groupExtent(group: ObjectGroup) {
  const shapes = shapesOf(group);
  const turnDeg = groupTurnDeg(shapes);
  const bounds = joinBounds(shapes.map((shape) => turnedBounds(shape, turnDeg)));
  return {
    turnDeg,
    acrossM: bounds ? bounds.maxX - bounds.minX : 0,
    alongM: bounds ? bounds.maxY - bounds.minY : 0,
  };
}

/** Where the copies lie from the original, metres; the original itself is not among them. */
function arrayShifts(group: ObjectGroup, shape: ArrayShape): readonly Point[] {
  const { turnDeg, acrossM, alongM } = groupExtent(group);
  const stepAcross = (acrossM + shape.gapAcrossM) * (shape.isLeftward === true ? -1 : 1);
  const stepAlong = (alongM + shape.gapAlongM) * (shape.isNearward === true ? -1 : 1);
  const shifts: Point[] = [];
  for (let row = 0; row < shape.rows; row += 1) {
    for (let column = 0; column < shape.columns; column += 1) {
      if (row === 0 && column === 0) continue;
      shifts.push(shiftOnSheet(column * stepAcross, row * stepAlong, turnDeg));
    }
  }
  return shifts;
}

/** How many objects an array adds. */
export function arrayCount(
  plan: Plan,
  layout: Layout,
  ids: readonly string[],
  shape: ArrayShape,
): number {
  return groupSize(groupOf(plan, layout, ids)) * (shape.rows * shape.columns - 1);
}

/** Copies objects in rows and columns, in the directions of the first of them. */
export function arrayObjects(
  layoutId: string,
  ids: readonly string[],
  shape: ArrayShape,
  title: string,
): Edit {
  return {
    title,
    apply: (plan) => {
      const layout = plan.layouts.find(({ id }) => id === layoutId);
      if (!layout || arrayCount(plan, layout, ids, shape) > ARRAY_MOST) return plan;
      const group = groupOf(plan, layout, ids);
      return withCopies(plan, layoutId, group, arrayShifts(group, shape));
    },
  };
}

/**
 * One copy of objects: of a planting on the nearest free stretch of its bed that takes it, of
 * anything else one path further to the right.
 */
export function duplicateObjects(layoutId: string, ids: readonly string[], title: string): Edit {
  return {
    title,
    apply: (plan) => {
      const layout = plan.layouts.find(({ id }) => id === layoutId);
      if (!layout) return plan;
      const group = groupOf(plan, layout, ids);
      const { turnDeg, acrossM } = groupExtent(group);
      const aside = shiftOnSheet(acrossM + COPY_GAP_M, 0, turnDeg);
      return withCopies(plan, layoutId, group, [shiftInBed(layout, group) ?? aside]);
    },
  };
}

/** Along its bed to the nearest free stretch that takes a planting; null when there is none. */
function shiftInBed(layout: Layout, group: ObjectGroup): Point | null {
  const [planting] = group.plantings;
  if (!planting || groupSize(group) !== 1) return null;
  const bed = layout.beds.find(({ id }) => id === planting.bed);
  if (bed?.outline.shape !== "rectangle") return null;
  const own = stretchOf(bed.outline, planting.outline);
  const length = own.toM - own.fromM;
  const starts = freeStretches(layout, bed)
    .filter(({ fromM, toM }) => toM - fromM >= length - 1e-9)
    .map(({ fromM, toM }) => (fromM >= own.toM - 1e-9 ? fromM : toM - length))
    .sort((a, b) => Math.abs(a - own.fromM) - Math.abs(b - own.fromM));
  const [start] = starts;
  return start === undefined ? null : shiftOnSheet(0, start - own.fromM, bed.outline.turnDeg);
}
