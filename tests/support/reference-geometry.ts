/** The same shapes as geometries of JSTS, the reference the geometry tests measure against. */
import Coordinate from "jsts/org/locationtech/jts/geom/Coordinate.js";
import type Geometry from "jsts/org/locationtech/jts/geom/Geometry.js";
import GeometryFactory from "jsts/org/locationtech/jts/geom/GeometryFactory.js";
import DistanceOp from "jsts/org/locationtech/jts/operation/distance/DistanceOp.js";
import OverlayOp from "jsts/org/locationtech/jts/operation/overlay/OverlayOp.js";
import IsValidOp from "jsts/org/locationtech/jts/operation/valid/IsValidOp.js";
import { shapeCorners } from "../../src/core/geometry/outline.ts";
import type { Point } from "../../src/core/geometry/point.ts";
import type { Shape } from "../../src/core/model/plan.ts";

const factory = new GeometryFactory();

export type ReferenceGeometry = Geometry;

export function referenceOf(shape: Shape): ReferenceGeometry {
  const corners = shapeCorners(shape);
  if (shape.shape === "point") return referencePoint(corners[0] as Point);
  const holes = shape.shape === "polygon" ? (shape.holes ?? []) : [];
  return factory.createPolygon(
    ringOf(corners),
    holes.map((hole) => ringOf(hole.map(([x, y]) => ({ x, y })))),
  );
}

export function referencePoint({ x, y }: Point): ReferenceGeometry {
  return factory.createPoint(new Coordinate(x, y));
}

function ringOf(corners: readonly Point[]) {
  const closed = [...corners, corners[0] as Point];
  return factory.createLinearRing(closed.map(({ x, y }) => new Coordinate(x, y)));
}

export function referenceDistance(a: ReferenceGeometry, b: ReferenceGeometry): number {
  return DistanceOp.distance(a, b);
}

/** Whether the reference takes a ring for the outline of a piece of ground. */
export function isReferenceValid(corners: readonly (readonly [number, number])[]): boolean {
  return IsValidOp.isValid(
    referenceOf({ shape: "polygon", corners: corners.map(([x, y]) => [x, y]) }),
  );
}

export function sharedArea(a: ReferenceGeometry, b: ReferenceGeometry): number {
  return OverlayOp.intersection(a, b).getArea();
}

/** The parts of `a` outside `b`. */
export function referenceRest(a: ReferenceGeometry, b: ReferenceGeometry): ReferenceGeometry {
  return OverlayOp.difference(a, b);
}

/** All corners of a geometry, closing corners included. */
export function referenceCorners(geometry: ReferenceGeometry): readonly Point[] {
  return (geometry as Geometry & { getCoordinates(): readonly Point[] }).getCoordinates();
}
