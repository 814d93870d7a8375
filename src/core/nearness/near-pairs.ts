/**
 * Which two of many boxes lie near each other, each two told once. Boxes in an order that keeps
 * neighbours together are cut into blocks, blocks into blocks of blocks and so on, each with the
 * box around it; each block is held against those that follow it. Whole numbers on a fine grid
 * rule out most, four comparisons at once; what they leave is measured.
 */
import type { Bounds } from "../geometry/bounds.ts";
import { type Boxes, extentOf } from "../geometry/boxes.ts";

/** Boxes of a block, and blocks of a larger one, as a power of two. */
const BITS = 3;
const FAN = 1 << BITS;
/** Cells of the grid along the longer side, so that sums of two stay within 32 bits. */
const CELLS = 2 ** 28;

/** Two boxes by their places, the lesser first, and the square of the distance between them. */
type Tell = (one: number, other: number, square: number) => void;

/**
 * @param boxes in any order; along a curve that keeps neighbours together they are found soonest
 * @param squares of the distance nearer than which others count for each box, square metres; two
 *   are told when one of them counts for the other
 */
export function nearPairs(boxes: Boxes, squares: Float64Array, tell: Tell): void {
  const blocks = new Blocks(boxes, squares, tell);
  for (let block = 0; block * FAN < squares.length; block += 1) blocks.tellNear(block);
}

class Blocks {
  private readonly boxes: Boxes;
  private readonly squares: Float64Array;
  private readonly tell: Tell;
  /** Where each level begins: the boxes themselves, their blocks, at last one around all; the end. */
  private readonly starts: readonly number[];
  /** Boxes of all levels, in cells: never smaller than they are. */
  private readonly cells: Int32Array;
  /** The farthest that any in them reaches, in cells. */
  private readonly reaches: Int32Array;

  constructor(boxes: Boxes, squares: Float64Array, tell: Tell) {
    this.boxes = boxes;
    this.squares = squares;
    this.tell = tell;
    const starts = [0];
    let total = squares.length;
    for (let size = total; size > 1 || starts.length === 1; total += size) {
      starts.push(total);
      size = Math.ceil(size / FAN);
    }
    this.starts = [...starts, total];
    this.cells = new Int32Array(total * 4);
    this.reaches = new Int32Array(total);
    this.lay();
    for (let level = 1; level < starts.length; level += 1) this.gather(level);
  }

  /** Lays the boxes on the grid. */
  private lay(): void {
    const { boxes, squares, cells, reaches } = this;
    const { minX, minY, maxX, maxY } = extentOf(boxes);
    const scale = CELLS / Math.max(maxX - minX, maxY - minY, 1e-9);
    for (let at = 0; at < boxes.length; at += 4) {
      cells[at] = Math.floor(((boxes[at] as number) - minX) * scale);
      cells[at + 1] = Math.floor(((boxes[at + 1] as number) - minY) * scale);
      cells[at + 2] = Math.ceil(((boxes[at + 2] as number) - minX) * scale);
      cells[at + 3] = Math.ceil(((boxes[at + 3] as number) - minY) * scale);
    }
    for (let place = 0; place < squares.length; place += 1) {
      const square = squares[place] as number;
      reaches[place] = square < 0 ? -1 : Math.min(Math.sqrt(square) * scale + 2, CELLS);
    }
  }

  /** Puts a box around each of the blocks of a level. */
  private gather(level: number): void {
    const { cells, reaches, starts } = this;
    const start = starts[level] as number;
    const end = starts[level + 1] as number;
    let child = starts[level - 1] as number;
    for (let block = start; block < end; block += 1) {
      let [minX, minY, maxX, maxY, reach] = [CELLS, CELLS, 0, 0, -1];
      for (const last = Math.min(child + FAN, start); child < last; child += 1) {
        minX = Math.min(minX, cells[child * 4] as number);
        minY = Math.min(minY, cells[child * 4 + 1] as number);
        maxX = Math.max(maxX, cells[child * 4 + 2] as number);
        maxY = Math.max(maxY, cells[child * 4 + 3] as number);
        reach = Math.max(reach, reaches[child] as number);
      }
      cells[block * 4] = minX;
      cells[block * 4 + 1] = minY;
      cells[block * 4 + 2] = maxX;
      cells[block * 4 + 3] = maxY;
      reaches[block] = reach;
    }
  }

  tellNear(block: number): void {
    this.lookInto(this.starts.length - 2, 0, block);
  }

  /** Holds a block of boxes against those in a block of some level. */
  private lookInto(level: number, within: number, block: number): void {
    const { cells, reaches, starts } = this;
    const blocks = starts[1] as number;
    const reach = reaches[blocks + block] as number;
    if (level === 1) {
      this.compare(block, within, Math.max(reach, reaches[blocks + within] as number));
      return;
    }
    const start = starts[level - 1] as number;
    const end = Math.min(start + (within + 1) * FAN, starts[level] as number);
    // What lies before the block has been held against it.
    const first = Math.max(within * FAN, block >> (BITS * (level - 2)));
    for (let inner = start + first; inner < end; inner += 1) {
      const far = Math.max(reach, reaches[inner] as number);
      const around = grown(cells, blocks + block, far);
      if (isWithin(cells, inner, around)) this.lookInto(level - 1, inner - start, block);
    }
  }

  private compare(block: number, following: number, far: number): void {
    const { cells, squares } = this;
    const second = (this.starts[1] as number) + following;
    const end = Math.min((block + 1) * FAN, squares.length);
    const first = following * FAN;
    const last = Math.min(first + FAN, squares.length);
    for (let one = block * FAN; one < end; one += 1) {
      const around = grown(cells, one, far);
      if (!isWithin(cells, second, around)) continue;
      for (let other = Math.max(first, one + 1); other < last; other += 1) {
        if (isWithin(cells, other, around)) this.measure(one, other);
      }
    }
  }

  private measure(one: number, other: number): void {
    const { boxes, squares } = this;
    const [a, b] = [one * 4, other * 4];
    const dx = Math.max(
      (boxes[b] as number) - (boxes[a + 2] as number),
      (boxes[a] as number) - (boxes[b + 2] as number),
      0,
    );
    const dy = Math.max(
      (boxes[b + 1] as number) - (boxes[a + 3] as number),
      (boxes[a + 1] as number) - (boxes[b + 3] as number),
      0,
    );
    const apart = dx * dx + dy * dy;
    const isNear = apart < (squares[one] as number) || apart < (squares[other] as number);
    if (isNear) this.tell(one, other, apart);
  }
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
