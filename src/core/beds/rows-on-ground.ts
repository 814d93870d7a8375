/** Rows of plants on ground of any outline: along it, as many as fit beside each other. */
import { turnedBounds } from "../geometry/turned-bounds.ts";
import { shapeCorners } from "../geometry/outline.ts";
import { type Point, turnPoint } from "../geometry/point.ts";
import type { Ring } from "../geometry/strip.ts";
import type { AreaShape } from "../model/plan.ts";

/** Rounding of typed lengths must not cost a plant. */
const EPSILON = 1e-6;
const ORIGIN: Point = { x: 0, y: 0 };

/**
 * The direction in which rows run on a piece of ground, degrees clockwise as for a rectangle: along
 * a rectangle; else along the longer side of the smallest box around it.
 */
export function rowsDirection(shape: AreaShape): number {
  if (shape.shape === "rectangle") return shape.turnDeg;
  const known = directions.get(shape);
  if (known !== undefined) return known;
  const found = alongSmallestBox(shape);
  directions.set(shape, found);
  return found;
}

/** Asked again for the same bed with every plot that is laid in it. */
const directions = new WeakMap<AreaShape, number>();

function alongSmallestBox(shape: AreaShape): number {
  const corners = shapeCorners(shape);
  let best = { area: Number.POSITIVE_INFINITY, turnDeg: 0 };
  let before = corners.at(-1);
  for (const corner of corners) {
    if (before) {
      const along = (Math.atan2(corner.x - before.x, corner.y - before.y) * 180) / Math.PI;
      const { minX, maxX, minY, maxY } = turnedBounds(shape, along);
      const [across, length] = [maxX - minX, maxY - minY];
      // Of boxes equally small the first is taken, whatever rounding says.
      if (across * length < best.area * (1 - EPSILON)) {
        best = { area: across * length, turnDeg: length >= across ? along : along + 90 };
      }
    }
    before = corner;
  }
  return ((best.turnDeg % 180) + 180) % 180;
}

/** The outer ring and those of holes in a frame turned about the sheet's origin: rows run along y. */
export function turnedRings(shape: AreaShape, turnDeg: number): readonly Ring[] {
  const holes = shape.shape === "polygon" ? (shape.holes ?? []) : [];
  const rings = [shapeCorners(shape), ...holes.map((hole) => hole.map(([x, y]) => ({ x, y })))];
  return rings.map((ring) => ring.map((corner) => turnPoint(corner, ORIGIN, -turnDeg)));
}

export interface PlantsInRows {
  readonly plants: number;
  /** Rows with a plant in them. */
  readonly rows: number;
}

/**
 * Plants that stand on a piece of ground, in rows along y. Rows keep their distance from
 * each other and half of it from the sides; each holds as many plants as its stretches on the
 * ground take.
 * @param rings the outer ring and those of holes, metres
 */
export function plantsInRows(
  rings: readonly Ring[],
  inRowM: number,
  betweenRowsM: number,
): PlantsInRows {
  const xs = (rings[0] ?? []).map(({ x }) => x);
  const [minX, maxX] = [Math.min(...xs), Math.max(...xs)];
  const fitting = Math.max(1, Math.floor((maxX - minX) / betweenRowsM + EPSILON));
  const edgeM = (maxX - minX - (fitting - 1) * betweenRowsM) / 2;
  let plants = 0;
  let rows = 0;
  for (let row = 0; row < fitting; row += 1) {
    const inRow = stretchesAt(rings, minX + edgeM + row * betweenRowsM).reduce(
      (sum, lengthM) => sum + Math.floor(lengthM / inRowM + EPSILON),
      0,
    );
    plants += inRow;
    if (inRow > 0) rows += 1;
  }
  return { plants, rows };
}

/** Lengths of the ground along y at a place across, metres. */
function stretchesAt(rings: readonly Ring[], x: number): readonly number[] {
  const ys = rings.flatMap((ring) => crossingsAt(ring, x)).sort((a, b) => a - b);
  const lengths: number[] = [];
  for (let at = 0; at + 1 < ys.length; at += 2) {
    lengths.push((ys[at + 1] as number) - (ys[at] as number));
  }
  return lengths;
}

function crossingsAt(ring: Ring, x: number): readonly number[] {
  const ys: number[] = [];
  let before = ring.at(-1);
  for (const corner of ring) {
    if (before && before.x > x !== corner.x > x) {
      ys.push(before.y + ((corner.y - before.y) * (x - before.x)) / (corner.x - before.x));
    }
    before = corner;
  }
  return ys;
}
