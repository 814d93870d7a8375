/** How far a shape reaches along directions other than the sheet's. */
import type { Shape } from "../model/plan.ts";
import { type Bounds, boundsOfCoordinates } from "./bounds.ts";
import { shapeCorners } from "./outline.ts";
import { type Point, turnPoint } from "./point.ts";

const ORIGIN: Point = { x: 0, y: 0 };

/**
 * Bounds of a shape in a frame turned about the sheet's origin: x runs across, y along a
 * rectangle of that turn. Metres.
 * @param turnDeg of the frame, degrees clockwise
 */
export function turnedBounds(shape: Shape, turnDeg: number): Bounds {
  const corners = shapeCorners(shape).map((corner) => turnPoint(corner, ORIGIN, -turnDeg));
  return boundsOfCoordinates(Float64Array.from(corners.flatMap(({ x, y }) => [x, y])));
}

/** A shift given in a turned frame, as a shift on the sheet, metres. */
export function shiftOnSheet(across: number, along: number, turnDeg: number): Point {
  return turnPoint({ x: across, y: along }, ORIGIN, turnDeg);
}
