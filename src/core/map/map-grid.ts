/**
 * The grid of a plot map: small letters from the left, numbers from the top, at a round spacing on
 * the ground. Capitals are those of beds and plots.
 */
import type { Bounds } from "../geometry/bounds.ts";
import type { Point } from "../geometry/point.ts";
import type { LengthUnit } from "../model/length.ts";
import { type RoundLength, longestRound } from "../page/drawing-ratio.ts";

/** Grid lines lie at most so far apart on paper, mm. */
const WIDEST_MM = 50;
/** Without i, l and o, which read as 1 and 0. */
const LETTERS = "abcdefghjkmnpqrstuvwxyz";

export interface MapGrid {
  readonly spacing: RoundLength;
  /** Left edge of column a and upper edge of row 1, sheet metres. */
  readonly left: number;
  readonly top: number;
}

/** A grid for the ground that all sheets show together. Lines lie on whole multiples of the spacing. */
export function mapGrid(whole: Bounds, ratio: number, unit: LengthUnit): MapGrid {
  const spacing = longestRound(WIDEST_MM, ratio, unit);
  return {
    spacing,
    left: Math.floor(whole.minX / spacing.metres + 1e-9) * spacing.metres,
    top: Math.ceil(whole.maxY / spacing.metres - 1e-9) * spacing.metres,
  };
}

/** a, b ... z, aa, ab ... */
export function columnLetters(index: number): string {
  const last = LETTERS[index % LETTERS.length] as string;
  return index < LETTERS.length
    ? last
    : columnLetters(Math.floor(index / LETTERS.length) - 1) + last;
}

/** The square a place lies in, e.g. `c4`. */
export function gridReference(grid: MapGrid, place: Point): string {
  const column = Math.floor((place.x - grid.left) / grid.spacing.metres);
  const row = Math.floor((grid.top - place.y) / grid.spacing.metres);
  return `${columnLetters(Math.max(0, column))}${Math.max(0, row) + 1}`;
}
