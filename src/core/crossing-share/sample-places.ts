/** Places spread evenly over a piece of ground, to take a mean over it. */
import { type Outline, outlineContains } from "../geometry/outline.ts";
import type { Point } from "../geometry/point.ts";

/** Cells along each side of the grid laid over the ground, and how fine it may become. */
const CELLS = 8;
const CELLS_MAX = 64;
/** With fewer places inside, the grid is made finer. No source; our choice. */
const PLACES_MIN = 24;

/** Where along each side the nodes lie, in halves of it: zeros of the third Chebyshev polynomial. */
const NODES = [-Math.sqrt(3) / 2, 0, Math.sqrt(3) / 2] as const;

export interface PlaceGrid {
  readonly places: readonly Point[];
  /**
   * Nine places from which what changes smoothly over the ground can be told for all others; null
   * for a single plant or a line.
   */
  readonly nodes: readonly Point[] | null;
  /** What each node counts at each place, place by place. */
  readonly shares: Float64Array;
}

const grids = new WeakMap<Outline, PlaceGrid>();

/** Made once for every outline. */
export function placeGrid(ground: Outline): PlaceGrid {
  const known = grids.get(ground);
  if (known) return known;
  const grid = gridOf(ground);
  grids.set(ground, grid);
  return grid;
}

/**
 * Middles of the cells of a grid laid along the ground's longest edge, those that lie on it. A
 * point or line gives its own first corner. A rectangle of 8 x 8 cells gives 64 places.
 */
export function samplePlaces(ground: Outline): readonly Point[] {
  return placeGrid(ground).places;
}

function gridOf(ground: Outline): PlaceGrid {
  const [x = 0, y = 0] = ground.rings[0] ?? [];
  const single = { places: [{ x, y }], nodes: null, shares: new Float64Array() };
  if (!ground.hasInside) return single;
  const frame = frameOf(ground.rings[0] ?? new Float64Array());
  for (let cells = CELLS; cells <= CELLS_MAX; cells *= 2) {
    const middles = cellMiddles(cells);
    const found = middles
      .flatMap((v) => middles.map((u) => ({ u, v })))
      .map((at) => ({ ...at, ...placeAt(frame, at.u, at.v) }))
      .filter((place) => outlineContains(ground, place.x, place.y));
    if (found.length >= PLACES_MIN || (cells === CELLS_MAX && found.length > 0)) {
      return {
        places: found.map((place) => ({ x: place.x, y: place.y })),
        nodes: NODES.flatMap((v) => NODES.map((u) => placeAt(frame, u, v))),
        shares: Float64Array.from(
          found.flatMap(({ u, v }) =>
            nodeShares(v).flatMap((across) => nodeShares(u).map((along) => across * along)),
          ),
        ),
      };
    }
  }
  return single;
}

/** Middles of so many cells from -1 to 1. */
function cellMiddles(cells: number): readonly number[] {
  return Array.from({ length: cells }, (_, cell) => (2 * cell + 1) / cells - 1);
}

/** What the three nodes of a side count at a place along it (Lagrange). */
function nodeShares(at: number): readonly number[] {
  return NODES.map((node, index) =>
    NODES.reduce(
      (share, other, place) => (place === index ? share : (share * (at - other)) / (node - other)),
      1,
    ),
  );
}

/** A box laid along the longest edge of a ring: direction, middle and half its sides. */
interface Frame {
  readonly cos: number;
  readonly sin: number;
  readonly middleU: number;
  readonly middleV: number;
  readonly halfU: number;
  readonly halfV: number;
}

function frameOf(ring: Float64Array): Frame {
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
  return {
    cos,
    sin,
    middleU: (minU + maxU) / 2,
    middleV: (minV + maxV) / 2,
    halfU: (maxU - minU) / 2,
    halfV: (maxV - minV) / 2,
  };
}

function placeAt({ cos, sin, ...box }: Frame, u: number, v: number): Point {
  const alongU = box.middleU + u * box.halfU;
  const alongV = box.middleV + v * box.halfV;
  return { x: alongU * cos - alongV * sin, y: alongU * sin + alongV * cos };
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
