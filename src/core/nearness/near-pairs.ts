/**
 * Which two of many boxes lie near each other, each two told once. Boxes in an order that keeps
 * neighbours together are cut into blocks, blocks into blocks of blocks and so on, each with the
 * box around it; each block is held against those that follow it. Whole numbers on a grid rule out
 * most, four comparisons at once; what they leave is measured.
 */
import type { Bounds } from "../geometry/bounds.ts";
import { type Boxes, GRID_CELLS, type Grid } from "../geometry/boxes.ts";

/** Boxes of a block, and blocks of a larger one, as a power of two. */
const BITS = 3;
const FAN = 1 << BITS;

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

/** Boxes of all levels: those looked at, their blocks, at last one around all. */
interface Levels {
  /** Where each level begins, and the end. */
  readonly starts: readonly number[];
  readonly cells: Int32Array;
  /** The farthest that any in them reaches, in cells. */
  readonly reaches: Int32Array;
}

/** Two are told when one of them counts for the other. */
export function nearPairs({ boxes, grid, order, squares }: Near, tell: Tell): void {
  const count = order.length;
  const { starts, cells, reaches } = levelsOf(grid, order, squares);
  const blocks = starts[1] as number;
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
    const end = Math.min((block + 1) * FAN, count);
    const first = following * FAN;
    const last = Math.min(first + FAN, count);
    for (let one = block * FAN; one < end; one += 1) {
      const around = grown(cells, one, far);
      if (!isWithin(cells, blocks + following, around)) continue;
      for (let other = Math.max(first, one + 1); other < last; other += 1) {
        if (isWithin(cells, other, around)) measure(one, other);
      }
    }
  };
  /** Holds a block of boxes against those in a block of some level. */
  const lookInto = (level: number, within: number, block: number): void => {
    const reach = reaches[blocks + block] as number;
    if (level === 1) {
      compare(block, within, Math.max(reach, reaches[blocks + within] as number));
      return;
    }
    const start = starts[level - 1] as number;
    const end = Math.min(start + (within + 1) * FAN, starts[level] as number);
    // What lies before the block has been held against it.
    const first = Math.max(within * FAN, block >> (BITS * (level - 2)));
    for (let inner = start + first; inner < end; inner += 1) {
      const around = grown(cells, blocks + block, Math.max(reach, reaches[inner] as number));
      if (isWithin(cells, inner, around)) lookInto(level - 1, inner - start, block);
    }
  };
  for (let block = 0; block * FAN < count; block += 1) lookInto(starts.length - 2, 0, block);
}

function levelsOf(grid: Grid, order: ArrayLike<number>, squares: Float64Array): Levels {
  const starts = [0];
  let total = order.length;
  for (let size = total; size > 1 || starts.length === 1; total += size) {
    starts.push(total);
    size = Math.ceil(size / FAN);
  }
  starts.push(total);
  const cells = new Int32Array(total * 4);
  const reaches = new Int32Array(total);
  for (let at = 0; at < order.length; at += 1) {
    const from = (order[at] as number) * 4;
    for (let side = 0; side < 4; side += 1)
      cells[at * 4 + side] = grid.cells[from + side] as number;
    // One more for what rounding makes of it; less than none where nothing counts.
    const reach = Math.sqrt(squares[at] as number) * grid.scale + 2;
    reaches[at] = reach >= 0 ? Math.min(reach, GRID_CELLS) : -1;
  }
  for (let level = 1; level < starts.length - 1; level += 1) {
    const start = starts[level] as number;
    let child = starts[level - 1] as number;
    for (let block = start; block < (starts[level + 1] as number); block += 1) {
      let [minX, minY, maxX, maxY, reach] = [GRID_CELLS, GRID_CELLS, 0, 0, -1];
      for (const last = Math.min(child + FAN, start); child < last; child += 1) {
        minX = Math.min(minX, cells[child * 4] as number);
        minY = Math.min(minY, cells[child * 4 + 1] as number);
        maxX = Math.max(maxX, cells[child * 4 + 2] as number);
        maxY = Math.max(maxY, cells[child * 4 + 3] as number);
        reach = Math.max(reach, reaches[child] as number);
      }
      cells.set([minX, minY, maxX, maxY], block * 4);
      reaches[block] = reach;
    }
  }
  return { starts, cells, reaches };
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
