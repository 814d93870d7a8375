/** Walks over a grid of cells by their laws: what the numbering of beds is held against. */

const walkCorners = ["near left", "near right", "far left", "far right"] as const;

/** One of 16: four corners to start from, two directions to start in, turning back or not. */
export interface Walk {
  /** As seen on the sheet: near is at its foot. */
  readonly from: (typeof walkCorners)[number];
  /** `across`: along a row first; `up`: along a column first. */
  readonly first: "across" | "up";
  /** Back and forth; otherwise every line is begun from the same side. */
  readonly isSerpentine: boolean;
}

export const allWalks: readonly Walk[] = walkCorners.flatMap((from) =>
  (["across", "up"] as const).flatMap((first) =>
    [true, false].map((isSerpentine) => ({ from, first, isSerpentine })),
  ),
);

/**
 * Number, from 1, of the cell in a row and column counted from 0 at the near left.
 * Every walk numbers every cell once; a serpentine one goes only from neighbour to neighbour.
 */
export function walkNumber(
  walk: Walk,
  row: number,
  column: number,
  rows: number,
  columns: number,
): number {
  const fromFoot = walk.from.startsWith("near") ? row : rows - 1 - row;
  const fromSide = walk.from.endsWith("left") ? column : columns - 1 - column;
  const [line, place, length] =
    walk.first === "across" ? [fromFoot, fromSide, columns] : [fromSide, fromFoot, rows];
  const isBack = walk.isSerpentine && line % 2 === 1;
  return line * length + (isBack ? length - 1 - place : place) + 1;
}
