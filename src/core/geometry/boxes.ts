/** Many upright boxes side by side in one flat array, for searches that must make nothing. */
import { counted } from "../lists/counted.ts";
import type { Bounds } from "./bounds.ts";

/** minX, minY, maxX, maxY of each box, one after the other, metres. */
export type Boxes = Float64Array;

/** The bounds of some things, in their order. */
export function boxesOf(things: readonly { readonly bounds: Bounds }[]): Boxes {
  const boxes = new Float64Array(things.length * 4);
  things.forEach(({ bounds }, place) => {
    boxes[place * 4] = bounds.minX;
    boxes[place * 4 + 1] = bounds.minY;
    boxes[place * 4 + 2] = bounds.maxX;
    boxes[place * 4 + 3] = bounds.maxY;
  });
  return boxes;
}

/** The last cell of a grid along the longer side of the ground: sums of two stay within 32 bits. */
export const GRID_CELLS = 2 ** 28 - 1;
/** What a cell is shifted by to have the 16 bits that the curve goes by. */
const CURVE_SHIFT = 12;

/** Boxes on a fine grid of whole numbers. */
export interface Grid {
  /** The boxes in cells: never smaller than they are. */
  readonly cells: Int32Array;
  /** Cells to the metre. */
  readonly scale: number;
}

export function gridOf(boxes: Boxes): Grid {
  let minX = Infinity;
  let minY = Infinity;
  let maxX = -Infinity;
  let maxY = -Infinity;
  for (let at = 0; at < boxes.length; at += 4) {
    minX = Math.min(minX, boxes[at] as number);
    minY = Math.min(minY, boxes[at + 1] as number);
    maxX = Math.max(maxX, boxes[at + 2] as number);
    maxY = Math.max(maxY, boxes[at + 3] as number);
  }
  const scale = GRID_CELLS / Math.max(maxX - minX, maxY - minY, 1e-9);
  const cells = new Int32Array(boxes.length);
  for (let at = 0; at < boxes.length; at += 4) {
    cells[at] = Math.floor(((boxes[at] as number) - minX) * scale);
    cells[at + 1] = Math.floor(((boxes[at + 1] as number) - minY) * scale);
    cells[at + 2] = Math.ceil(((boxes[at + 2] as number) - minX) * scale);
    cells[at + 3] = Math.ceil(((boxes[at + 3] as number) - minY) * scale);
  }
  return { cells, scale };
}

/** Bits of a key that places are sorted by at once, from the last on. */
const DIGIT_BITS = 11;
const DIGITS = 1 << DIGIT_BITS;
/** Fewer are sorted by comparing: all digits are gone through however few there are. */
const COUNTED_LEAST = 256;

/**
 * Places sorted along a Z-order curve through the middles of the boxes: neighbours on the ground
 * are mostly neighbours in the list.
 */
export function curveOrder({ cells }: Grid): Uint32Array {
  const keys = new Uint32Array(cells.length / 4);
  for (let place = 0; place < keys.length; place += 1) {
    const x = (cells[place * 4] as number) + (cells[place * 4 + 2] as number);
    const y = (cells[place * 4 + 1] as number) + (cells[place * 4 + 3] as number);
    keys[place] = spread(x >> (CURVE_SHIFT + 1)) | (spread(y >> (CURVE_SHIFT + 1)) << 1);
  }
  let order = Uint32Array.from(keys.keys());
  if (order.length < COUNTED_LEAST) {
    return order.sort((one, other) => (keys[one] as number) - (keys[other] as number));
  }
  for (let shift = 0; shift < 32; shift += DIGIT_BITS) {
    const digitOf = (place: number) => ((keys[place] as number) >>> shift) % DIGITS;
    order = counted(order, digitOf, DIGITS).order;
  }
  return order;
}

/** The bits of a number of 16 with a zero between each two. */
function spread(value: number): number {
  let bits = (value | (value << 8)) & 0x00ff00ff;
  bits = (bits | (bits << 4)) & 0x0f0f0f0f;
  bits = (bits | (bits << 2)) & 0x33333333;
  return (bits | (bits << 1)) & 0x55555555;
}
