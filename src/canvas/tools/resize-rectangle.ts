/** A rectangle pulled by one of its edges or corners; the side opposite stays where it is. */
import type { Point } from "../../core/geometry/point.ts";
import type { RectangleShape } from "../../core/model/plan.ts";
import type { Side } from "../scene/handles.ts";
import type { Guide } from "../snap/guide.ts";
import {
  type Frame,
  type SnapLine,
  type SnapSettings,
  guideAlong,
  intoFrame,
  outOfFrame,
  snapAlong,
} from "../snap/snap.ts";

/** Nothing is drawn smaller than this, metres. */
export const LEAST_SIDE_M = 0.1;

export interface Pull {
  readonly across: Side;
  readonly along: Side;
}

export interface Resized {
  readonly shape: RectangleShape;
  readonly guides: readonly Guide[];
}

export function ownFrame({ x, y, turnDeg }: RectangleShape): Frame {
  return { origin: { x, y }, turnDeg };
}

/**
 * @param place where the handle is pulled to, sheet metres
 * @param snap null suspends snapping
 * @param keepsShape width and length keep their proportion (corners only)
 */
export function resizedRectangle(
  shape: RectangleShape,
  pull: Pull,
  place: Point,
  snap: Pick<SnapSettings, "lines" | "reachM" | "stepM"> | null,
  keepsShape: boolean,
): Resized {
  const frame = ownFrame(shape);
  const to = intoFrame(frame, place);
  const x = pulledSide(shape.widthM / 2, pull.across, to.x, snap?.lines.x ?? [], snap);
  const y = pulledSide(shape.lengthM / 2, pull.along, to.y, snap?.lines.y ?? [], snap);
  let [width, length] = [x.sizeM, y.sizeM];
  const isProportional = keepsShape && pull.across !== 0 && pull.along !== 0;
  if (isProportional) {
    const factor = Math.max(width / shape.widthM, length / shape.lengthM);
    [width, length] = [shape.widthM * factor, shape.lengthM * factor];
  }
  const middle = outOfFrame(frame, {
    x: (pull.across * (width - shape.widthM)) / 2,
    y: (pull.along * (length - shape.lengthM)) / 2,
  });
  const guides: Guide[] = [];
  if (!isProportional) {
    const half = { x: shape.widthM / 2, y: shape.lengthM / 2 };
    if (x.line) guides.push(guideAlong(frame, "x", x.line, [-half.y, half.y]));
    if (y.line) guides.push(guideAlong(frame, "y", y.line, [-half.x, half.x]));
  }
  return { shape: { ...shape, x: middle.x, y: middle.y, widthM: width, lengthM: length }, guides };
}

/** Size along one direction when its side is pulled to a place; the other side lies at -half. */
function pulledSide(
  half: number,
  side: Side,
  to: number,
  lines: readonly SnapLine[],
  snap: Pick<SnapSettings, "reachM" | "stepM"> | null,
): { readonly sizeM: number; readonly line: SnapLine | null } {
  if (side === 0) return { sizeM: half * 2, line: null };
  const fixed = -half * side;
  const pulled = side > 0 ? { last: to } : { first: to };
  const snapped = snap ? snapAlong(pulled, lines, snap, fixed) : { shift: 0, line: null };
  const sizeM = (to + snapped.shift - fixed) * side;
  return sizeM < LEAST_SIDE_M
    ? { sizeM: LEAST_SIDE_M, line: null }
    : { sizeM: Math.round(sizeM * 1e6) / 1e6, line: snapped.line };
}
