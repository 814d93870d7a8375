/** Boxes dealt to tiles of about the same number, each as near square as they lie. */
import type { Boxes } from "./boxes.ts";

/** Steps that a side of the ground is told in: with a place below 2^21 a number stays exact. */
const STEPS = 0xffff_ffff;

/**
 * The places of the boxes, cut in halves across the longer side until no more than `most` are
 * together; neighbouring tiles follow each other. At most two million boxes.
 */
export function* tiles(boxes: Boxes, most: number): Generator<Uint32Array, void, void> {
  const all = Uint32Array.from({ length: boxes.length / 4 }, (_, place) => place);
  const waiting: Uint32Array[] = [all];
  for (let tile = waiting.pop(); tile; tile = waiting.pop()) {
    if (tile.length <= most) {
      if (tile.length > 0) yield tile;
      continue;
    }
    const sorted = alongLongerSide(boxes, tile);
    // Halves of a whole number of full tiles: none is left nearly empty.
    const half = Math.ceil(Math.ceil(tile.length / most) / 2) * most;
    waiting.push(sorted.subarray(half), sorted.subarray(0, half));
  }
}

/** The places by the middles of their boxes along the side on which these lie farther apart. */
function alongLongerSide(boxes: Boxes, places: Uint32Array): Uint32Array {
  const [x, y] = [spanOf(boxes, places, 0), spanOf(boxes, places, 1)];
  const axis = x.span >= y.span ? 0 : 1;
  const { least, span } = axis === 0 ? x : y;
  const scale = STEPS / Math.max(span, 1e-9);
  const count = places.length;
  const keys = new Float64Array(count);
  for (let index = 0; index < count; index += 1) {
    const along = twiceMiddle(boxes, places[index] as number, axis) - least;
    // A step and an index in one number: typed arrays sort fastest.
    keys[index] = Math.floor(along * scale) * count + index;
  }
  keys.sort();
  return Uint32Array.from(keys, (key) => places[key % count] as number);
}

function spanOf(boxes: Boxes, places: Uint32Array, axis: 0 | 1) {
  let [least, greatest] = [Infinity, -Infinity];
  for (const place of places) {
    const middle = twiceMiddle(boxes, place, axis);
    least = Math.min(least, middle);
    greatest = Math.max(greatest, middle);
  }
  return { least, span: greatest - least };
}

/** Twice the middle of a box along x (0) or y (1). */
function twiceMiddle(boxes: Boxes, place: number, axis: 0 | 1): number {
  return (boxes[place * 4 + axis] as number) + (boxes[place * 4 + 2 + axis] as number);
}
