/** Where a corner of an outline that is being drawn comes to lie. */
import type { Point } from "../../core/geometry/point.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import type { Guide } from "../snap/guide.ts";
import { onStep, snapStep } from "../snap/snap.ts";
import { snapToDrawn } from "../snap/snap-place.ts";
import { useSketch } from "./sketch-store.ts";
import type { SheetPointer } from "./tool.ts";

/** On what is drawn, else on the grid; with Shift held, level or plumb from the last corner. */
export function cornerAt(pointer: SheetPointer): {
  readonly at: Point;
  readonly guide: Guide | null;
} {
  const last = useSketch.getState().corners.at(-1);
  const { x, y } = pointer.at;
  const isStraight = pointer.isShift && last !== undefined;
  const found = pointer.isFree || isStraight ? null : snapToDrawn(pointer.at);
  if (found) return { at: found.at, guide: { from: found.at, to: found.at, label: found.label } };
  const stepM = snapStep(usePlanStore.getState().plan.units);
  const place = pointer.isFree ? { x, y } : { x: onStep(x, 0, stepM), y: onStep(y, 0, stepM) };
  if (!isStraight) return { at: place, guide: null };
  const isLevel = Math.abs(x - last.x) >= Math.abs(y - last.y);
  return { at: isLevel ? { x: place.x, y: last.y } : { x: last.x, y: place.y }, guide: null };
}
