/**
 * Many outlines in flat arrays, measured against each other as `gapInto` does, to the last bit:
 * following no references from one to the next takes half as long.
 */
import type { Boxes } from "./boxes.ts";
import {
  isMeasuredAfter,
  limitSquare,
  lookFrom,
  putFound,
  sharedInto,
  squareToRing,
} from "./gap.ts";
import type { Outline } from "./outline.ts";

export class OutlineColumns {
  /** Bounds of the outlines. */
  readonly boxes: Boxes;
  private readonly outlines: readonly Outline[];
  /** x0, y0, x1, y1, ... of all rings, one after the other, metres. */
  private readonly corners: Float64Array;
  /** Where the coordinates of each ring begin; one more at the end. */
  private readonly starts: Uint32Array;
  /** The first ring of each outline; one more at the end. */
  private readonly rings: Uint32Array;

  constructor(outlines: readonly Outline[]) {
    this.outlines = outlines;
    let ring = 0;
    let length = 0;
    for (const { rings } of outlines) {
      for (const own of rings) length += own.length;
      ring += rings.length;
    }
    const boxes = new Float64Array(outlines.length * 4);
    const corners = new Float64Array(length);
    const starts = new Uint32Array(ring + 1);
    const firsts = new Uint32Array(outlines.length + 1);
    ring = length = 0;
    for (let place = 0; place < outlines.length; place += 1) {
      const { bounds, rings } = outlines[place] as Outline;
      boxes[place * 4] = bounds.minX;
      boxes[place * 4 + 1] = bounds.minY;
      boxes[place * 4 + 2] = bounds.maxX;
      boxes[place * 4 + 3] = bounds.maxY;
      for (const own of rings) {
        for (let at = 0; at < own.length; at += 1) corners[length + at] = own[at] as number;
        length += own.length;
        ring += 1;
        starts[ring] = length;
      }
      firsts[place + 1] = ring;
    }
    this.boxes = boxes;
    this.corners = corners;
    this.starts = starts;
    this.rings = firsts;
  }

  /** `gapInto` of the outlines at two places. */
  gapInto(one: number, other: number, limitM: number, into: Float64Array, at: number): boolean {
    const { boxes, outlines } = this;
    const [a, b] = [one * 4, other * 4];
    const by =
      (boxes[a] as number) - (boxes[b] as number) ||
      (boxes[a + 1] as number) - (boxes[b + 1] as number);
    const isTurned =
      by > 0 || (by === 0 && isMeasuredAfter(outlines[one] as Outline, outlines[other] as Outline));
    const isApart =
      (boxes[a] as number) > (boxes[b + 2] as number) ||
      (boxes[b] as number) > (boxes[a + 2] as number) ||
      (boxes[a + 1] as number) > (boxes[b + 3] as number) ||
      (boxes[b + 1] as number) > (boxes[a + 3] as number);
    const [first, second] = isTurned ? [other, one] : [one, other];
    if (!isApart && sharedInto(outlines[first] as Outline, outlines[second] as Outline, into, at)) {
      return true;
    }
    const [ofFirst, ofSecond] = isTurned ? [3, 1] : [1, 3];
    const limit = limitSquare(limitM);
    const square = this.nearest(first, second, limit);
    if (square < limit) putFound(into, at, ofFirst, ofSecond);
    if (this.nearest(second, first, square) < square) putFound(into, at, ofSecond, ofFirst);
    else if (square >= limit) return false;
    return true;
  }

  /**
   * The square of the distance from the nearest corner of one to an edge of the other, if less than
   * `limit`, with where it is measured left behind; else `limit`.
   */
  private nearest(one: number, other: number, limit: number): number {
    const { boxes, corners, starts, rings } = this;
    const minX = boxes[other * 4] as number;
    const minY = boxes[other * 4 + 1] as number;
    const maxX = boxes[other * 4 + 2] as number;
    const maxY = boxes[other * 4 + 3] as number;
    const first = rings[other] as number;
    const last = rings[other + 1] as number;
    const end = starts[rings[one + 1] as number] as number;
    let best = limit;
    for (let at = starts[rings[one] as number] as number; at < end; at += 2) {
      const x = corners[at] as number;
      const y = corners[at + 1] as number;
      const outX = x < minX ? minX - x : x > maxX ? x - maxX : 0;
      const outY = y < minY ? minY - y : y > maxY ? y - maxY : 0;
      if (outX * outX + outY * outY >= best) continue;
      lookFrom(x, y);
      for (let ring = first; ring < last; ring += 1) {
        best = squareToRing(corners, starts[ring] as number, starts[ring + 1] as number, best);
      }
    }
    return best;
  }
}
