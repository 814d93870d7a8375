/** A bed as the helper stands before it: metres from its near end, and across it from the left. */
import { boundsCentre } from "../geometry/bounds.ts";
import { outlineOf, rectangleCorners, shapeCorners } from "../geometry/outline.ts";
import { type Point, directionDeg } from "../geometry/point.ts";
import type { AreaShape, PolygonShape } from "../model/plan.ts";

export interface BedAxes {
  readonly lengthM: number;
  readonly widthM: number;
  /** Direction from the near end to the far, degrees clockwise from the sheet's up. */
  readonly alongDeg: number;
  /** x: metres from the near end; y: metres from the left side, looking towards the far end. */
  readonly of: (place: Point) => Point;
}

/** Of a rectangle its own near end; else the longest edge, from the end nearer the sheet's foot. */
export function bedAxes(shape: AreaShape): BedAxes {
  return shape.shape === "rectangle"
    ? axesOf(rectangleCorners(shape), along(...twoOf(rectangleCorners(shape))))
    : axesOf(shapeCorners(shape), longestEdge(shape));
}

function twoOf([near, far]: readonly Point[]): readonly [Point, Point] {
  return [near as Point, far as Point];
}

function along(from: Point, to: Point): Point {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  return length === 0
    ? { x: 0, y: 1 }
    : { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
}

function longestEdge(shape: PolygonShape): Point {
  const corners = shapeCorners(shape);
  let best = { length: 0, direction: { x: 0, y: 1 } };
  corners.forEach((from, index) => {
    const to = corners[(index + 1) % corners.length] as Point;
    const length = Math.hypot(to.x - from.x, to.y - from.y);
    if (length > best.length + 1e-9) best = { length, direction: along(from, to) };
  });
  const { x, y } = best.direction;
  const isDown = y < -1e-9 || (Math.abs(y) <= 1e-9 && x < 0);
  return isDown ? { x: -x, y: -y } : best.direction;
}

function axesOf(corners: readonly Point[], direction: Point): BedAxes {
  const forward = ({ x, y }: Point) => x * direction.x + y * direction.y;
  // To the right of somebody who looks along the bed.
  const sideways = ({ x, y }: Point) => x * direction.y - y * direction.x;
  const [alongs, acrosses] = [corners.map(forward), corners.map(sideways)];
  const [near, left] = [Math.min(...alongs), Math.min(...acrosses)];
  return {
    lengthM: Math.max(...alongs) - near,
    widthM: Math.max(...acrosses) - left,
    alongDeg: directionDeg({ x: 0, y: 0 }, direction),
    of: (place) => ({ x: forward(place) - near, y: sideways(place) - left }),
  };
}

export interface Reach {
  readonly from: number;
  readonly to: number;
}

/** How far along a bed, and across it, a planting reaches; metres. */
export function reachOn(axes: BedAxes, shape: AreaShape): { along: Reach; across: Reach } {
  const corners = shapeCorners(shape).map(axes.of);
  const span = (values: readonly number[]): Reach => ({
    from: Math.max(0, Math.min(...values)),
    to: Math.max(0, ...values),
  });
  return { along: span(corners.map(({ x }) => x)), across: span(corners.map(({ y }) => y)) };
}

/** Middle of a shape along a bed, for the order of plantings. */
export function placeAlong(axes: BedAxes, shape: AreaShape): number {
  return axes.of(boundsCentre(outlineOf(shape).bounds)).x;
}
