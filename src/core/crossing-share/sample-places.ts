/** Places spread evenly over a piece of ground, to take a mean over it. */
import { type Outline, outlineContains } from "../geometry/outline.ts";
import type { Point } from "../geometry/point.ts";

/** Cells along each side of the grid laid over the ground, and how fine it may become. */
const CELLS = 8;
const CELLS_MAX = 64;
/** With fewer places inside, the grid is made finer. No source; our choice. */
const PLACES_MIN = 24;

/**
 * Middles of the cells of a grid laid along the ground's longest edge, those that lie on it. A
 * point or line gives its own first corner. A rectangle of 8 x 8 cells gives 64 places.
 */
export function samplePlaces(ground: Outline): readonly Point[] {
  const [x = 0, y = 0] = ground.rings[0] ?? [];
  if (!ground.hasInside) return [{ x, y }];
  for (let cells = CELLS; cells <= CELLS_MAX; cells *= 2) {
    const places = gridPlaces(ground, cells);
    if (places.length >= PLACES_MIN || (cells === CELLS_MAX && places.length > 0)) return places;
  }
  return [{ x, y }];
}

function gridPlaces(ground: Outline, cells: number): readonly Point[] {
  const ring = ground.rings[0] ?? new Float64Array();
  const [cos, sin] = longestEdge(ring);
  let [minU, maxU, minV, maxV] = [Infinity, -Infinity, Infinity, -Infinity];
  for (let index = 0; index < ring.length; index += 2) {
    const x = ring[index] as number;
    const y = ring[index + 1] as number;
    minU = Math.min(minU, x * cos + y * sin);
    maxU = Math.max(maxU, x * cos + y * sin);
    minV = Math.min(minV, y * cos - x * sin);
    maxV = Math.max(maxV, y * cos - x * sin);
  }
  const places: Point[] = [];
  for (let row = 0; row < cells; row++) {
    const v = minV + ((row + 0.5) / cells) * (maxV - minV);
    for (let column = 0; column < cells; column++) {
      const u = minU + ((column + 0.5) / cells) * (maxU - minU);
      const place = { x: u * cos - v * sin, y: u * sin + v * cos };
      if (outlineContains(ground, place.x, place.y)) places.push(place);
    }
  }
  return places;
}

/** Direction of the longest edge as cosine and sine. */
function longestEdge(ring: Float64Array): readonly [number, number] {
  let best: readonly [number, number] = [1, 0];
  let bestM = 0;
  for (let index = 0; index < ring.length; index += 2) {
    const next = (index + 2) % ring.length;
    const dx = (ring[next] as number) - (ring[index] as number);
    const dy = (ring[next + 1] as number) - (ring[index + 1] as number);
    const length = Math.hypot(dx, dy);
    if (length > bestM) [best, bestM] = [[dx / length, dy / length], length];
  }
  return best;
}
