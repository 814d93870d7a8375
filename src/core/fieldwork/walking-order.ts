/**
 * The order in which a helper walks the plots: row by row, and back and forth like an ox at the
 * plough (serpentine), so that each plot lies beside the one before.
 */
import { boundsCentre } from "../geometry/bounds.ts";
import { outlineOf } from "../geometry/outline.ts";
import type { Layout } from "../model/plan.ts";

export const walkCorners = ["near left", "near right", "far left", "far right"] as const;

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

interface Place {
  readonly id: string;
  readonly x: number;
  readonly y: number;
}

/**
 * Walking number of each planting from the near left corner: along columns of beds that overlap
 * sideways, up the first, down the next; in a bed by its plantings' places.
 */
export function walkingNumbers(layout: Layout): ReadonlyMap<string, number> {
  const columns: { readonly maxX: number; readonly places: Place[] }[] = [];
  const beds = [
    ...layout.beds,
    ...layout.plantings.filter((planting) => !isOnBed(planting, layout)),
  ]
    .map((item) => ({ id: item.id, bounds: outlineOf(item.outline).bounds }))
    .sort((a, b) => boundsCentre(a.bounds).x - boundsCentre(b.bounds).x);
  for (const { id, bounds } of beds) {
    const { x, y } = boundsCentre(bounds);
    const column = columns.at(-1);
    if (column && x <= column.maxX) column.places.push({ id, x, y });
    else columns.push({ maxX: bounds.maxX, places: [{ id, x, y }] });
  }
  const numbers = new Map<string, number>();
  columns.forEach(({ places }, index) => {
    const sign = index % 2 === 0 ? 1 : -1;
    for (const { id } of places.sort((a, b) => sign * (a.y - b.y))) {
      for (const planting of plantingsOn(id, layout, sign)) numbers.set(planting, numbers.size + 1);
    }
  });
  return numbers;
}

function isOnBed({ bed }: Layout["plantings"][number], layout: Layout): boolean {
  return layout.beds.some(({ id }) => id === bed);
}

/** Ids of a bed's plantings in the direction of the walk, or the planting itself. */
function plantingsOn(id: string, layout: Layout, sign: number): readonly string[] {
  if (layout.plantings.some((planting) => planting.id === id)) return [id];
  const places = layout.plantings
    .filter(({ bed }) => bed === id)
    .map(({ id: planting, outline }) => ({
      id: planting,
      ...boundsCentre(outlineOf(outline).bounds),
    }));
  const xs = places.map(({ x }) => x);
  const ys = places.map(({ y }) => y);
  const isLying = Math.max(...xs) - Math.min(...xs) > Math.max(...ys) - Math.min(...ys);
  return places.sort((a, b) => (isLying ? a.x - b.x : sign * (a.y - b.y))).map((place) => place.id);
}
