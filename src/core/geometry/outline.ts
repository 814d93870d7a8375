/**
 * A shape made ready for measuring: flat coordinate rings with bounds. Points are rings of one
 * corner.
 */
import type { PolygonShape, RectangleShape, Shape } from "../model/plan.ts";
import { type Bounds, boundsOfCoordinates } from "./bounds.ts";
import { type Point, turnPoint } from "./point.ts";

export interface Outline {
  /** False for points and lines, which nothing can lie inside. */
  readonly hasInside: boolean;
  /** Outer ring first, then holes; each x0, y0, x1, y1, ... without repeating the first corner. */
  readonly rings: readonly Float64Array[];
  readonly bounds: Bounds;
}

/** Corners of a rectangle, clockwise on the sheet from its near left corner. */
export function rectangleCorners(shape: RectangleShape): readonly Point[] {
  const halfWidth = shape.widthM / 2;
  const halfLength = shape.lengthM / 2;
  const angle = (shape.turnDeg * Math.PI) / 180;
  const sin = Math.sin(angle);
  const cos = Math.cos(angle);
  const corner = (dx: number, dy: number): Point => ({
    x: shape.x + dx * cos + dy * sin,
    y: shape.y - dx * sin + dy * cos,
  });
  return [
    corner(-halfWidth, -halfLength),
    corner(-halfWidth, halfLength),
    corner(halfWidth, halfLength),
    corner(halfWidth, -halfLength),
  ];
}

/** Outer corners of any shape. */
export function shapeCorners(shape: Shape): readonly Point[] {
  switch (shape.shape) {
    case "rectangle":
      return rectangleCorners(shape);
    case "polygon":
      return shape.corners.map(([x, y]) => ({ x, y }));
    case "point":
      return [{ x: shape.x, y: shape.y }];
  }
}

function flat(corners: readonly Point[]): Float64Array {
  const coordinates = new Float64Array(corners.length * 2);
  corners.forEach((corner, index) => {
    coordinates[index * 2] = corner.x;
    coordinates[index * 2 + 1] = corner.y;
  });
  return coordinates;
}

/** A single place as an outline without an inside, for measuring from it. */
export function pointOutline({ x, y }: Point): Outline {
  return {
    hasInside: false,
    rings: [Float64Array.of(x, y)],
    bounds: { minX: x, minY: y, maxX: x, maxY: y },
  };
}

const known = new WeakMap<Shape, Outline>();

/** The outline of a shape, made once for each shape object: shapes never change in place. */
export function outlineOf(shape: Shape): Outline {
  const before = known.get(shape);
  if (before) return before;
  const outline = madeOutline(shape);
  known.set(shape, outline);
  return outline;
}

function madeOutline(shape: Shape): Outline {
  const outer = flat(shapeCorners(shape));
  const holes =
    shape.shape === "polygon"
      ? (shape.holes ?? []).map((hole) => flat(hole.map(([x, y]) => ({ x, y }))))
      : [];
  return {
    hasInside: shape.shape !== "point",
    rings: [outer, ...holes],
    bounds: boundsOfCoordinates(outer),
  };
}

/** Ground enclosed, square metres; holes do not count. */
export function outlineArea(outline: Outline): number {
  return outline.rings.reduce(
    (area, ring, index) => area + (index === 0 ? 1 : -1) * Math.abs(ringArea(ring)),
    0,
  );
}

function ringArea(ring: Float64Array): number {
  let twice = 0;
  const last = ring.length - 2;
  for (let index = 0; index < ring.length; index += 2) {
    const next = index === last ? 0 : index + 2;
    twice +=
      (ring[index] as number) * (ring[next + 1] as number) -
      (ring[next] as number) * (ring[index + 1] as number);
  }
  return twice / 2;
}

/** Whether a place lies on the ground inside the outline (even-odd over all rings). */
export function outlineContains(outline: Outline, x: number, y: number): boolean {
  const { bounds } = outline;
  if (x < bounds.minX || x > bounds.maxX || y < bounds.minY || y > bounds.maxY) return false;
  let isInside = false;
  for (const ring of outline.rings) {
    let fromX = ring[ring.length - 2] as number;
    let fromY = ring[ring.length - 1] as number;
    for (let index = 0; index < ring.length; index += 2) {
      const toX = ring[index] as number;
      const toY = ring[index + 1] as number;
      if (toY > y !== fromY > y && x < ((fromX - toX) * (y - toY)) / (fromY - toY) + toX) {
        isInside = !isInside;
      }
      fromX = toX;
      fromY = toY;
    }
  }
  return isInside;
}

/** The shape moved by dx, dy metres. */
export function moveShape<S extends Shape>(shape: S, dx: number, dy: number): S {
  const moved: Shape = shape;
  if (moved.shape === "polygon") {
    const shift = (ring: PolygonShape["corners"]) =>
      ring.map(([x, y]): [number, number] => [x + dx, y + dy]);
    return {
      ...shape,
      corners: shift(moved.corners),
      ...(moved.holes ? { holes: moved.holes.map(shift) } : {}),
    };
  }
  return { ...shape, x: moved.x + dx, y: moved.y + dy };
}

/** Middle of the outer corners' bounds; for a rectangle its centre. */
export function shapeCentre(shape: Shape): Point {
  if (shape.shape !== "polygon") return { x: shape.x, y: shape.y };
  const { bounds } = outlineOf(shape);
  return { x: (bounds.minX + bounds.maxX) / 2, y: (bounds.minY + bounds.maxY) / 2 };
}

/** The shape turned about a centre, degrees clockwise. */
export function turnShape<S extends Shape>(shape: S, centre: Point, turnDeg: number): S {
  const turned: Shape = shape;
  if (turned.shape === "polygon") {
    const turnRing = (ring: PolygonShape["corners"]) =>
      ring.map(([x, y]): [number, number] => {
        const corner = turnPoint({ x, y }, centre, turnDeg);
        return [corner.x, corner.y];
      });
    return {
      ...shape,
      corners: turnRing(turned.corners),
      ...(turned.holes ? { holes: turned.holes.map(turnRing) } : {}),
    };
  }
  const middle = turnPoint({ x: turned.x, y: turned.y }, centre, turnDeg);
  const moved = { ...shape, x: middle.x, y: middle.y };
  return turned.shape === "rectangle"
    ? { ...moved, turnDeg: normalTurn(turned.turnDeg + turnDeg) }
    : moved;
}

/** The same turn from -180 (exclusive) to 180 degrees. */
export function normalTurn(turnDeg: number): number {
  const turn = ((turnDeg % 360) + 360) % 360;
  return turn > 180 ? turn - 360 : turn;
}
