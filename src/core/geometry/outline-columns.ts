/**
 * Many outlines in flat arrays, measured against each other as `gapInto` does, to the last bit:
 * following no references from one to the next takes half as long.
 */
import type { Boxes } from "./boxes.ts";
import { gapInto, limitSquare, lookFrom, putFound, squareToRing } from "./gap.ts";
import type { Outline } from "./outline.ts";

/** `gapInto` of outlines by their places. */
type GapOfPlaces = (
  one: number,
  other: number,
  limitM: number,
  into: Float64Array,
  at: number,
) => boolean;

/** @param boxes bounds of the outlines */
export function gapInColumns(outlines: readonly Outline[], boxes: Boxes): GapOfPlaces {
  /** Where the corners of each begin; one more at the end. One with holes has none. */
  const starts = new Uint32Array(outlines.length + 1);
  outlines.forEach(({ rings: [ring, hole] }, place) => {
    starts[place + 1] = (starts[place] as number) + (hole ? 0 : (ring as Float64Array).length);
  });
  /** x0, y0, x1, y1, ... of all, one after the other, metres. */
  const corners = new Float64Array(starts[outlines.length] as number);
  outlines.forEach(({ rings: [ring] }, place) => {
    const start = starts[place] as number;
    const end = starts[place + 1] as number;
    for (let at = start; at < end; at += 1) corners[at] = ring?.[at - start] as number;
  });

  /** As that of two outlines has it. */
  const nearest = (one: number, other: number, limit: number): number => {
    const minX = boxes[other * 4] as number;
    const minY = boxes[other * 4 + 1] as number;
    const maxX = boxes[other * 4 + 2] as number;
    const maxY = boxes[other * 4 + 3] as number;
    const from = starts[other] as number;
    const to = starts[other + 1] as number;
    const end = starts[one + 1] as number;
    let best = limit;
    for (let at = starts[one] as number; at < end; at += 2) {
      const x = corners[at] as number;
      const y = corners[at + 1] as number;
      const outX = x < minX ? minX - x : x > maxX ? x - maxX : 0;
      const outY = y < minY ? minY - y : y > maxY ? y - maxY : 0;
      if (outX * outX + outY * outY < best) {
        lookFrom(x, y);
        best = squareToRing(corners, from, to, best);
      }
    }
    return best;
  };

  return (one, other, limitM, into, at) => {
    const [a, b] = [one * 4, other * 4];
    const by = (boxes[a] as number) - (boxes[b] as number);
    const isApart =
      (boxes[a] as number) > (boxes[b + 2] as number) ||
      (boxes[b] as number) > (boxes[a + 2] as number) ||
      (boxes[a + 1] as number) > (boxes[b + 3] as number) ||
      (boxes[b + 1] as number) > (boxes[a + 3] as number);
    const isPlain =
      by !== 0 && starts[one] !== starts[one + 1] && starts[other] !== starts[other + 1];
    // Most are plain and lie apart. The rest may share ground, or have holes.
    if (!isApart || !isPlain) {
      return gapInto(outlines[one] as Outline, outlines[other] as Outline, limitM, into, at);
    }
    const limit = limitSquare(limitM);
    const [first, second, ofFirst, ofSecond] = by > 0 ? [other, one, 3, 1] : [one, other, 1, 3];
    const square = nearest(first, second, limit);
    if (square < limit) putFound(into, at, ofFirst, ofSecond);
    const less = nearest(second, first, square);
    if (less < square) putFound(into, at, ofSecond, ofFirst);
    return less < limit;
  };
}
