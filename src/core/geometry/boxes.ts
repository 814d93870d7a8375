/** Many upright boxes side by side in one flat array, for searches that must make nothing. */
import type { Bounds } from "./bounds.ts";

/** minX, minY, maxX, maxY of each box, one after the other, metres. */
export type Boxes = Float64Array;

/** The boxes at some places, in the order of these. */
export function boxesAt(boxes: Boxes, places: ArrayLike<number>): Boxes {
  const found = new Float64Array(places.length * 4);
  for (let at = 0; at < found.length; at += 4) {
    const from = (places[at >> 2] as number) * 4;
    found[at] = boxes[from] as number;
    found[at + 1] = boxes[from + 1] as number;
    found[at + 2] = boxes[from + 2] as number;
    found[at + 3] = boxes[from + 3] as number;
  }
  return found;
}

/** Smallest box around all. */
export function extentOf(boxes: Boxes): Bounds {
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
  return { minX, minY, maxX, maxY };
}

/** Cells a side of the curve's grid: two such numbers make one of 32 bits. */
const CURVE_CELLS = 65_535;

/**
 * Places sorted along a Z-order curve through the middles of the boxes: neighbours on the ground
 * are mostly neighbours in the list.
 */
export function curveOrder(boxes: Boxes): Uint32Array {
  const { minX, minY, maxX, maxY } = extentOf(boxes);
  const scale = CURVE_CELLS / Math.max(maxX - minX, maxY - minY, 1e-9);
  const keys = new Uint32Array(boxes.length / 4);
  for (let place = 0; place < keys.length; place += 1) {
    const x = ((boxes[place * 4] as number) + (boxes[place * 4 + 2] as number)) / 2 - minX;
    const y = ((boxes[place * 4 + 1] as number) + (boxes[place * 4 + 3] as number)) / 2 - minY;
    keys[place] = spread(x * scale) | (spread(y * scale) << 1);
  }
  return sortedPlaces(keys);
}

/** Bits of a key that places are sorted by at once, from the last on. */
const DIGIT_BITS = 11;
const DIGITS = 1 << DIGIT_BITS;

/** Places of numbers of 32 bits in ascending order, those of the same number as they were. */
function sortedPlaces(keys: Uint32Array): Uint32Array {
  let order = Uint32Array.from(keys.keys());
  let next = new Uint32Array(keys.length);
  for (let shift = 0; shift < 32; shift += DIGIT_BITS) {
    const ends = new Uint32Array(DIGITS + 1);
    const digitOf = (place: number) => ((keys[place] as number) >>> shift) & (DIGITS - 1);
    for (let place = 0; place < keys.length; place += 1) {
      const after = digitOf(place) + 1;
      ends[after] = (ends[after] as number) + 1;
    }
    for (let digit = 0; digit < DIGITS; digit += 1) {
      ends[digit + 1] = (ends[digit + 1] as number) + (ends[digit] as number);
    }
    for (const place of order) {
      const digit = digitOf(place);
      next[ends[digit] as number] = place;
      ends[digit] = (ends[digit] as number) + 1;
    }
    [order, next] = [next, order];
  }
  return order;
}

/** The 16 bits of a number with a zero between each two. */
function spread(value: number): number {
  let bits = Math.floor(value) & 0xffff;
  bits = (bits | (bits << 8)) & 0x00ff00ff;
  bits = (bits | (bits << 4)) & 0x0f0f0f0f;
  bits = (bits | (bits << 2)) & 0x33333333;
  return (bits | (bits << 1)) & 0x55555555;
}
