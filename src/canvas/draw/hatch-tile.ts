/**
 * A hatch as a square tile that repeats without seams. Lines and lattices are nudged by less than
 * half a period per tile so that a whole number of them fits; at this size nobody sees it.
 */
import type { Point } from "../../core/geometry/point.ts";
import type { Hatch, HatchLines, HatchMarks } from "../../core/page/hatch.ts";

/** Side of a tile, CSS pixels. */
export const TILE_PX = 192;

export interface TileStroke {
  readonly from: Point;
  readonly to: Point;
}

export interface TileMark {
  readonly mark: HatchMarks["mark"];
  readonly at: Point;
  readonly radius: number;
}

export interface HatchTile {
  readonly strokes: readonly TileStroke[];
  readonly marks: readonly TileMark[];
}

/** What to draw on the tile, reaching over its edges; y runs down. */
export function hatchTile(hatch: Hatch): HatchTile {
  return {
    strokes: hatch.lines.flatMap(tileLines),
    marks: hatch.marks ? tileMarks(hatch.marks) : [],
  };
}

function tileLines({ angleDeg, spacing, dash }: HatchLines): readonly TileStroke[] {
  const angle = (angleDeg * Math.PI) / 180;
  // Whole periods across and along the lines that fit the tile, as steps along x and y.
  const across = wholeSteps(Math.sin(angle) / spacing, Math.cos(angle) / spacing);
  const along = { x: across.y, y: -across.x };
  const length = Math.hypot(along.x, along.y);
  const direction = { x: along.x / length, y: along.y / length };
  if (!dash) {
    return places(across).map((index) => {
      const foot = {
        x: (across.x * index * TILE_PX) / length ** 2,
        y: (across.y * index * TILE_PX) / length ** 2,
      };
      return {
        from: shifted(foot, direction, -TILE_PX * 2),
        to: shifted(foot, direction, TILE_PX * 2),
      };
    });
  }
  const period = dash[0] + dash[1];
  const steps = wholeSteps(Math.cos(angle) / period, -Math.sin(angle) / period);
  const determinant = across.x * steps.y - across.y * steps.x;
  return places(across).flatMap((line) =>
    places(steps).map((step) => {
      const from = {
        x: ((line * steps.y - step * across.y) * TILE_PX) / determinant,
        y: ((step * across.x - line * steps.x) * TILE_PX) / determinant,
      };
      return { from, to: shifted(from, direction, dash[0]) };
    }),
  );
}

/** A frequency in periods per pixel as whole periods per tile, never none at all. */
function wholeSteps(x: number, y: number): Point {
  const steps = { x: Math.round(x * TILE_PX), y: Math.round(y * TILE_PX) };
  return steps.x === 0 && steps.y === 0 ? { x: 1, y: 0 } : steps;
}

/** Numbers of the lines that cross the tile or lie just outside. */
function places({ x, y }: Point): readonly number[] {
  const ends = [0, x, y, x + y];
  const first = Math.min(...ends) - 2;
  return Array.from({ length: Math.max(...ends) + 3 - first }, (_, index) => first + index);
}

function shifted(place: Point, direction: Point, by: number): Point {
  return { x: place.x + direction.x * by, y: place.y + direction.y * by };
}

/** A staggered lattice, one column and row more than the tile holds on every side. */
function tileMarks({ mark, spacing, radius }: HatchMarks): readonly TileMark[] {
  const columns = Math.max(1, Math.round(TILE_PX / spacing));
  const rows = 2 * Math.max(1, Math.round(TILE_PX / (spacing * Math.sqrt(0.75)) / 2));
  const marks: TileMark[] = [];
  for (let row = -1; row <= rows; row += 1) {
    for (let column = -1; column <= columns; column += 1) {
      const at = {
        x: ((column + Math.abs(row % 2) / 2) * TILE_PX) / columns,
        y: (row * TILE_PX) / rows,
      };
      marks.push({ mark, at, radius });
    }
  }
  return marks;
}
