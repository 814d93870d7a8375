/** Many upright boxes side by side in one flat array, for searches that must make nothing. */
import type { Bounds } from "./bounds.ts";

/** minX, minY, maxX, maxY of each box, one after the other, metres. */
export type Boxes = Float64Array;

/** Cells a side of the curve's grid: two such numbers make one of 32 bits. */
const CURVE_CELLS = 65_535;

/** Smallest box around the boxes at these places. */
export function around(boxes: Boxes, places: Uint32Array): Bounds {
  let minX = Infinity;
  let minY = Infinity;
  let maxX = -Infinity;
  let maxY = -Infinity;
  for (const place of places) {
    minX = Math.min(minX, boxes[place * 4] as number);
    minY = Math.min(minY, boxes[place * 4 + 1] as number);
    maxX = Math.max(maxX, boxes[place * 4 + 2] as number);
    maxY = Math.max(maxY, boxes[place * 4 + 3] as number);
  }
  return { minX, minY, maxX, maxY };
}

/**
 * Places sorted along a Z-order curve through the middles of the boxes: neighbours on the ground
 * are mostly neighbours in the list. At most two million boxes.
 */
export function curveOrder(boxes: Boxes): Uint32Array {
  const count = boxes.length / 4;
  const all = Uint32Array.from({ length: count }, (_, place) => place);
  const { minX, minY, maxX, maxY } = around(boxes, all);
  const scale = CURVE_CELLS / Math.max(maxX - minX, maxY - minY, 1e-9);
  const keys = new Float64Array(count);
  for (let place = 0; place < count; place += 1) {
    const x = ((boxes[place * 4] as number) + (boxes[place * 4 + 2] as number)) / 2 - minX;
    const y = ((boxes[place * 4 + 1] as number) + (boxes[place * 4 + 3] as number)) / 2 - minY;
    const onCurve = spread(x * scale) + 2 * spread(y * scale);
    // A key and its place in one number, exact up to 2^53: typed arrays sort fastest.
    keys[place] = onCurve * count + place;
  }
  keys.sort();
  return Uint32Array.from(keys, (key) => key % count);
}

/** The 16 bits of a number with a zero between each two. */
function spread(value: number): number {
  let bits = Math.floor(value) & 0xffff;
  bits = (bits | (bits << 8)) & 0x00ff00ff;
  bits = (bits | (bits << 4)) & 0x0f0f0f0f;
  bits = (bits | (bits << 2)) & 0x33333333;
  return (bits | (bits << 1)) & 0x55555555;
}

/** Shortest distance between the boxes at two places, as `boundsGap` has it. */
export function boxGap(boxes: Boxes, one: number, other: number): number {
  const a = one * 4;
  const b = other * 4;
  const dx = Math.max(
    (boxes[a] as number) - (boxes[b + 2] as number),
    (boxes[b] as number) - (boxes[a + 2] as number),
    0,
  );
  const dy = Math.max(
    (boxes[a + 1] as number) - (boxes[b + 3] as number),
    (boxes[b + 1] as number) - (boxes[a + 3] as number),
    0,
  );
  return Math.sqrt(dx * dx + dy * dy);
}

/** Whether the bounds that start at `at` touch a box, given by its sides: nothing is made for it. */
export function boxTouches(
  boxes: Boxes,
  at: number,
  minX: number,
  minY: number,
  maxX: number,
  maxY: number,
): boolean {
  return (
    (boxes[at] as number) <= maxX &&
    (boxes[at + 1] as number) <= maxY &&
    (boxes[at + 2] as number) >= minX &&
    (boxes[at + 3] as number) >= minY
  );
}
