/**
 * How much of a planting's seed would be crossed if it lay elsewhere: the upper end, place by
 * place over a stretch of ground. Rougher than the estimate of a planting: its ground is told by
 * five places. Knows no stands: it runs on a thread of its own.
 */
import type { Bounds } from "../geometry/bounds.ts";
import { gapBetween } from "../geometry/gap.ts";
import type { Outline } from "../geometry/outline.ts";
import { ADJOINING_M, adjoiningShares, separateShares, turnipRapeShare } from "./distance-bins.ts";
import type { ShareEstimate } from "./estimate.ts";
import { type Kernel, MAIZE_FIT, MAIZE_PUBLISHED } from "./kernels.ts";
import { pollenAt } from "./pollen-fields.ts";
import { type PollenGround, pollenGround } from "./pollen-ground.ts";

/** Ground that sheds pollen, and how much of it counts against the planting's own. */
interface ShadeSource {
  readonly outline: Outline;
  readonly strength: number;
}

/** All that a shade is made from, as plain data. */
export interface ShadeProblem {
  readonly by: ShareEstimate["by"];
  readonly own: Outline;
  readonly sources: readonly ShadeSource[];
  /** Other ground of the same variety, which dilutes. */
  readonly kin: readonly ShadeSource[];
}

/** A grid grown by the planting's reach may have so many times the cells: else place by place. */
const MOST_WIDER = 5;

/** Upper shares at the middles of cells, row by row from the least y, each row from the least x. */
export interface Shade {
  readonly bounds: Bounds;
  readonly columns: number;
  readonly rows: number;
  readonly shares: Float32Array;
}

/**
 * The shade over a stretch of ground.
 * @param cells along its longer side, 1 or more
 */
export function shadeOver(problem: ShadeProblem, bounds: Bounds, cells: number): Shade {
  const [widthM, heightM] = [bounds.maxX - bounds.minX, bounds.maxY - bounds.minY];
  const cellM = Math.max(widthM, heightM, 1e-6) / cells;
  const columns = Math.max(1, Math.ceil(widthM / cellM));
  const rows = Math.max(1, Math.ceil(heightM / cellM));
  const grid: ShadeGrid = { left: bounds.minX, foot: bounds.minY, cellM, columns, rows };
  const shares = problem.by === "maize" ? maizeShade(problem, grid) : rapeShade(problem, grid);
  return {
    bounds: {
      ...bounds,
      maxX: bounds.minX + columns * cellM,
      maxY: bounds.minY + rows * cellM,
    },
    columns,
    rows,
    shares,
  };
}

interface ShadeGrid {
  readonly left: number;
  readonly foot: number;
  readonly cellM: number;
  readonly columns: number;
  readonly rows: number;
}

/** Places of the planting's ground, about its middle. */
function placesAbout({ x, y, places }: PollenGround): readonly (readonly [number, number])[] {
  const about: [number, number][] = [[0, 0]];
  for (let index = 0; index < places.length; index += 2) {
    about.push([(places[index] as number) - x, (places[index + 1] as number) - y]);
  }
  return about;
}

function maizeShade(problem: ShadeProblem, grid: ShadeGrid): Float32Array {
  const ground = pollenGround(problem.own);
  const about = placesAbout(ground);
  const reachM = Math.max(...about.flat().map(Math.abs));
  const most = new Float32Array(grid.columns * grid.rows);
  for (const kernel of [MAIZE_FIT, MAIZE_PUBLISHED]) {
    const own = about.map(([dx, dy]) => pollenAt(ground.x + dx, ground.y + dy, ground, kernel));
    const theirs = fieldOver(problem.sources, grid, reachM, kernel);
    const kin = fieldOver(problem.kin, grid, reachM, kernel);
    for (let cell = 0; cell < most.length; cell++) {
      const x = grid.left + ((cell % grid.columns) + 0.5) * grid.cellM;
      const y = grid.foot + (Math.floor(cell / grid.columns) + 0.5) * grid.cellM;
      let sum = 0;
      about.forEach(([dx, dy], place) => {
        const foreign = theirs(x + dx, y + dy);
        if (foreign > 0) {
          sum += foreign / (foreign + (own[place] as number) + kin(x + dx, y + dy));
        }
      });
      most[cell] = Math.max(most[cell] as number, sum / about.length);
    }
  }
  return most;
}

/**
 * What some ground sends to places of a grid and as far around it as said: told between the
 * middles of cells, or place by place where the planting is much larger than what is looked at.
 */
function fieldOver(
  sources: readonly ShadeSource[],
  grid: ShadeGrid,
  reachM: number,
  kernel: Kernel,
): (x: number, y: number) => number {
  const grounds = sources
    .filter(({ strength }) => strength > 0)
    .map(({ outline, strength }) => ({ ground: pollenGround(outline), strength }));
  const sumAt = (x: number, y: number) =>
    grounds.reduce(
      (sum, { ground, strength }) => sum + strength * pollenAt(x, y, ground, kernel),
      0,
    );
  if (grounds.length === 0) return () => 0;
  // One cell more than is reached, so that every place lies between four middles.
  const border = Math.ceil(reachM / grid.cellM) + 1;
  const columns = grid.columns + 2 * border;
  const rows = grid.rows + 2 * border;
  if (columns * rows > MOST_WIDER * grid.columns * grid.rows) return sumAt;
  const [left, foot] = [
    grid.left + (0.5 - border) * grid.cellM,
    grid.foot + (0.5 - border) * grid.cellM,
  ];
  const field = Float64Array.from({ length: columns * rows }, (_, cell) =>
    sumAt(left + (cell % columns) * grid.cellM, foot + Math.floor(cell / columns) * grid.cellM),
  );
  return (x, y) => between(field, columns, (x - left) / grid.cellM, (y - foot) / grid.cellM);
}

/** The field between the middles of four cells; `u` and `v` count cells from the first middle. */
function between(field: Float64Array, columns: number, u: number, v: number): number {
  const [column, row] = [Math.floor(u), Math.floor(v)];
  const [along, up] = [u - column, v - row];
  const at = row * columns + column;
  const low = (field[at] as number) * (1 - along) + (field[at + 1] as number) * along;
  const high =
    (field[at + columns] as number) * (1 - along) + (field[at + columns + 1] as number) * along;
  return low * (1 - up) + high * up;
}

/** By distance from the outline as it would lie; where plots adjoin, by its nearest plants. */
function rapeShade({ by, own, sources }: ShadeProblem, grid: ShadeGrid): Float32Array {
  const { x, y } = pollenGround(own);
  const shares = new Float32Array(grid.columns * grid.rows);
  for (let row = 0; row < grid.rows; row++) {
    const dy = grid.foot + (row + 0.5) * grid.cellM - y;
    for (let column = 0; column < grid.columns; column++) {
      const there = moved(own, grid.left + (column + 0.5) * grid.cellM - x, dy);
      let sum = 0;
      for (const { outline } of sources) {
        const { distanceM } = gapBetween(there, outline);
        const [, plots] =
          distanceM < ADJOINING_M ? adjoiningShares(distanceM) : separateShares(distanceM);
        sum += by === "turnip" ? Math.max(plots, turnipRapeShare(distanceM)) : plots;
      }
      shares[row * grid.columns + column] = Math.min(1, sum);
    }
  }
  return shares;
}

function moved(outline: Outline, dx: number, dy: number): Outline {
  const { minX, minY, maxX, maxY } = outline.bounds;
  return {
    hasInside: outline.hasInside,
    rings: outline.rings.map((ring) =>
      ring.map((value, index) => value + (index % 2 === 0 ? dx : dy)),
    ),
    bounds: { minX: minX + dx, minY: minY + dy, maxX: maxX + dx, maxY: maxY + dy },
  };
}
