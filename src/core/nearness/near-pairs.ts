/**
 * Which two of many boxes lie near each other, each two told once. Boxes in an order that keeps
 * neighbours together are cut into blocks; a tree over the blocks finds which of them lie near each
 * other. Whole numbers on a grid rule out most of the rest, four comparisons at once; what they
 * leave is measured.
 */
import Flatbush from "flatbush";
import type { Bounds } from "../geometry/bounds.ts";
import { type Boxes, GRID_CELLS, type Grid } from "../geometry/boxes.ts";

/** Boxes of a block. */
const BLOCK = 8;

/** Boxes that are looked at, and how far others count for each. */
interface Near {
  readonly boxes: Boxes;
  /** All of them on a grid. */
  readonly grid: Grid;
  /** Places of those that are looked at; along a curve they are found soonest. */
  readonly order: ArrayLike<number>;
  /** In that order: the square of the distance nearer than which others count, square metres. */
  readonly squares: Float64Array;
}

/** Two boxes by where they stand in the order, the lesser first, and the square of their distance. */
type Tell = (one: number, other: number, square: number) => void;

/** Two are told when one of them counts for the other. */
export function nearPairs({ boxes, grid, order, squares }: Near, tell: Tell): void {
  const { length } = order;
  if (length === 0) return;
  const { cells, reaches, tree } = blocksOf(grid, order, squares);
  const measure = (one: number, other: number): void => {
    const [a, b] = [(order[one] as number) * 4, (order[other] as number) * 4];
    const right = (boxes[b] as number) - (boxes[a + 2] as number);
    const above = (boxes[b + 1] as number) - (boxes[a + 3] as number);
    const dx = Math.max(right, (boxes[a] as number) - (boxes[b + 2] as number), 0);
    const dy = Math.max(above, (boxes[a + 1] as number) - (boxes[b + 3] as number), 0);
    const apart = dx * dx + dy * dy;
    const isNear = apart < (squares[one] as number) || apart < (squares[other] as number);
    if (isNear) tell(one, other, apart);
  };
  const compare = (block: number, following: number, far: number): void => {
    const end = Math.min((block + 1) * BLOCK, length);
    const first = following * BLOCK;
    const last = Math.min(first + BLOCK, length);
    for (let one = block * BLOCK; one < end; one += 1) {
      const around = grown(cells, one, far);
      if (!isWithin(cells, length + following, around)) continue;
      for (let other = Math.max(first, one + 1); other < last; other += 1) {
        if (isWithin(cells, other, around)) measure(one, other);
      }
    }
  };
  const farthest = reaches.reduce((most, reach) => Math.max(most, reach), 0);
  for (let block = 0; block < reaches.length; block += 1) {
    const { minX, minY, maxX, maxY } = grown(cells, length + block, farthest);
    for (const following of tree.search(minX, minY, maxX, maxY)) {
      if (following < block) continue;
      const far = Math.max(reaches[block] as number, reaches[following] as number);
      const isNear = isWithin(cells, length + following, grown(cells, length + block, far));
      if (isNear) compare(block, following, far);
    }
  }
}

/** The boxes that are looked at in cells, after them those of the blocks. */
function blocksOf({ cells: all, scale }: Grid, order: ArrayLike<number>, squares: Float64Array) {
  const { length } = order;
  const count = Math.ceil(length / BLOCK);
  const cells = new Int32Array((length + count) * 4);
  /** The farthest that any of a block reaches, in cells. */
  const reaches = new Int32Array(count).fill(-1);
  const tree = new Flatbush(count);
  for (let block = 0; block < count; block += 1) {
    let [minX, minY, maxX, maxY, reach] = [GRID_CELLS, GRID_CELLS, 0, 0, -1];
    const end = Math.min((block + 1) * BLOCK, length);
    for (let at = block * BLOCK; at < end; at += 1) {
      const from = (order[at] as number) * 4;
      minX = Math.min(minX, (cells[at * 4] = all[from] as number));
      minY = Math.min(minY, (cells[at * 4 + 1] = all[from + 1] as number));
      maxX = Math.max(maxX, (cells[at * 4 + 2] = all[from + 2] as number));
      maxY = Math.max(maxY, (cells[at * 4 + 3] = all[from + 3] as number));
      // One more for what rounding makes of it; none where nothing counts.
      const square = squares[at] as number;
      if (square >= 0) reach = Math.max(reach, Math.min(Math.sqrt(square) * scale + 2, GRID_CELLS));
    }
    cells.set([minX, minY, maxX, maxY], (length + block) * 4);
    reaches[block] = reach;
    tree.add(minX, minY, maxX, maxY);
  }
  tree.finish();
  return { cells, reaches, tree };
}

function grown(cells: Int32Array, box: number, far: number): Bounds {
  return {
    minX: (cells[box * 4] as number) - far,
    minY: (cells[box * 4 + 1] as number) - far,
    maxX: (cells[box * 4 + 2] as number) + far,
    maxY: (cells[box * 4 + 3] as number) + far,
  };
}

/** Whether no side of a box lies beyond another: one negative difference makes all of them negative. */
function isWithin(cells: Int32Array, box: number, { minX, minY, maxX, maxY }: Bounds): boolean {
  const right = (cells[box * 4 + 2] as number) - minX;
  const above = (cells[box * 4 + 3] as number) - minY;
  const left = maxX - (cells[box * 4] as number);
  const below = maxY - (cells[box * 4 + 1] as number);
  return (right | above | left | below) >= 0;
}
