/**
 * The order in which a helper walks the plots: row by row, and back and forth like an ox at the
 * plough (serpentine), so that each plot lies beside the one before.
 */
import { boundsCentre } from "../geometry/bounds.ts";
import { outlineOf } from "../geometry/outline.ts";
import type { Layout } from "../model/plan.ts";

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
