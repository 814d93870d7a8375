/** Round ground: a regular polygon of many corners, told apart from one drawn by hand. */
import type { PolygonShape, Shape } from "../model/plan.ts";

/** Corners of a round bed or a tree's canopy: its edge is then 0.12 % inside the circle at most. */
const ROUND_CORNERS = 64;
/** A regular polygon of fewer corners is a shape of its own, such as an octagon. */
const LEAST_ROUND_CORNERS = 24;
/** Corners may lie so far off the circle, as a share of its radius, and still be round. */
const ROUND_SHARE = 1e-4;

export interface Circle {
  readonly x: number;
  readonly y: number;
  readonly diameterM: number;
}

/** A circle as an outline: 64 corners on it, the first to the right of the middle, anticlockwise. */
export function roundShape({ x, y, diameterM }: Circle): PolygonShape {
  const corners = Array.from({ length: ROUND_CORNERS }, (_, index): [number, number] => {
    const angle = (index * 2 * Math.PI) / ROUND_CORNERS;
    return [
      micrometres(x + (diameterM / 2) * Math.cos(angle)),
      micrometres(y + (diameterM / 2) * Math.sin(angle)),
    ];
  });
  return { shape: "polygon", corners };
}

/** The circle whose corners an outline has: regular, many, without holes; else null. */
export function circleOf(shape: Shape): Circle | null {
  if (shape.shape !== "polygon" || (shape.holes?.length ?? 0) > 0) return null;
  const { corners } = shape;
  const count = corners.length;
  if (count < LEAST_ROUND_CORNERS) return null;
  const x = corners.reduce((sum, corner) => sum + corner[0], 0) / count;
  const y = corners.reduce((sum, corner) => sum + corner[1], 0) / count;
  const radius = corners.reduce((sum, [cx, cy]) => sum + Math.hypot(cx - x, cy - y), 0) / count;
  const side = 2 * radius * Math.sin(Math.PI / count);
  const off = Math.max(radius * ROUND_SHARE, 1e-5);
  const isRegular = corners.every(([cx, cy], index) => {
    const [nextX, nextY] = corners[(index + 1) % count] ?? [cx, cy];
    return (
      Math.abs(Math.hypot(cx - x, cy - y) - radius) <= off &&
      Math.abs(Math.hypot(nextX - cx, nextY - cy) - side) <= off
    );
  });
  return isRegular ? { x, y, diameterM: radius * 2 } : null;
}

/** No rounding noise in the plan file. */
function micrometres(metres: number): number {
  return Math.round(metres * 1e6) / 1e6;
}
