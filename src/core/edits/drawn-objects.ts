/** Beds, plantings and surroundings alike, as things that lie on the ground. */
import type { Layout, Plan, Shape } from "../model/plan.ts";
import type { Point } from "../geometry/point.ts";
import type { Edit } from "./edit.ts";
import { heldBack } from "../beds/held-back.ts";
import { moveObjects } from "./move-objects.ts";

export interface DrawnObject {
  readonly id: string;
  /** Its code or label. */
  readonly name: string;
  readonly outline: Shape;
  /** It is locked, or holds something that is. */
  readonly isLocked: boolean;
}

/**
 * The objects with these ids, in the order of the ids. A planting whose bed is among them is left
 * out: it goes where its bed goes.
 */
export function drawnObjects(
  plan: Plan,
  layout: Layout,
  ids: readonly string[],
): readonly DrawnObject[] {
  const asked = new Set(ids);
  const { ids: held } = heldBack(plan, layout.id, ids, true);
  const found = new Map<string, DrawnObject>();
  for (const { id, code, outline } of layout.beds) {
    if (asked.has(id)) found.set(id, { id, name: code, outline, isLocked: held.has(id) });
  }
  for (const { id, code, outline, bed } of layout.plantings) {
    if (!asked.has(id) || (bed !== undefined && found.has(bed))) continue;
    found.set(id, { id, name: code, outline, isLocked: held.has(id) });
  }
  for (const { id, label, outline } of plan.surroundings) {
    if (asked.has(id)) found.set(id, { id, name: label, outline, isLocked: held.has(id) });
  }
  return ids.flatMap((id) => found.get(id) ?? []);
}

/** The plan with objects moved, each by a shift of its own, metres; beds take their plantings along. */
export function shiftedEach(
  plan: Plan,
  layoutId: string,
  shifts: ReadonlyMap<string, Point>,
  title: string,
): Plan {
  let next = plan;
  for (const [id, { x, y }] of shifts) {
    if (Math.abs(x) < LEAST_SHIFT_M && Math.abs(y) < LEAST_SHIFT_M) continue;
    const move: Edit = moveObjects(layoutId, [id], x, y, title);
    next = move.apply(next);
  }
  return next;
}

/** Below this a shift is rounding, metres. */
const LEAST_SHIFT_M = 1e-9;
