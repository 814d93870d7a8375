/** Corners of an outline changed one at a time, by typing instead of dragging. */
import type { PolygonShape } from "../../core/model/plan.ts";
import { ringProblem } from "../../core/model/ring.ts";
import * as words from "./dialog-words.ts";

export type CornerEdit =
  | { readonly ok: true; readonly outline: PolygonShape }
  | { readonly ok: false; readonly reason: string };

type Corners = PolygonShape["corners"];

/** The outline with one corner elsewhere, unless it would then cross or touch itself. */
export function moveCorner(outline: PolygonShape, index: number, x: number, y: number): CornerEdit {
  return checked(
    outline,
    outline.corners.map((corner, position) => (position === index ? [x, y] : corner)),
  );
}

/** The outline with a new corner halfway to the next one. */
export function addCornerAfter(outline: PolygonShape, index: number): PolygonShape {
  const { corners } = outline;
  const from = corners[index];
  const to = corners[(index + 1) % corners.length];
  if (!from || !to) return outline;
  const middle = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2] as const;
  return {
    ...outline,
    corners: [...corners.slice(0, index + 1), middle, ...corners.slice(index + 1)],
  };
}

export function removeCorner(outline: PolygonShape, index: number): CornerEdit {
  if (outline.corners.length <= 3) return { ok: false, reason: words.threeCornersStay };
  return checked(
    outline,
    outline.corners.filter((_corner, position) => position !== index),
  );
}

function checked(outline: PolygonShape, corners: Corners): CornerEdit {
  const problem = ringProblem(corners);
  return problem === null
    ? { ok: true, outline: { ...outline, corners } }
    : { ok: false, reason: words.wouldGive(problem) };
}
