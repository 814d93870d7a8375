/**
 * Pairs of things in a list, in columns of numbers: each two once, with the gap between them and
 * how each way of them stands. Nothing is made for a pair before somebody reads it.
 */
import { GAP_NUMBERS } from "../geometry/gap.ts";
import { counted } from "../lists/counted.ts";

/** What says how a way stands is less than this. */
const CODES = 16;
/** Room for at least so many pairs to begin with. */
const LEAST_ROOM = 256;

export class PairColumns {
  length = 0;
  /** Places in the list of the two. */
  one: Uint32Array;
  other: Uint32Array;
  /** The gap from `one` to `other`, as `gapInto` puts it. */
  gaps: Float64Array;
  /**
   * How the way from `one` to `other` stands, then the way back: whoever fills them says what the
   * numbers mean, which are less than 16; 0: there is no such way.
   */
  ways: Uint8Array;
  /** How many ways stand so. */
  private readonly counts = new Uint32Array(CODES);

  /** @param expected how many pairs there may be: room that is not written to takes no memory */
  constructor(expected = 0) {
    const room = Math.max(LEAST_ROOM, expected);
    this.one = new Uint32Array(room);
    this.other = new Uint32Array(room);
    this.gaps = new Float64Array(room * GAP_NUMBERS);
    this.ways = new Uint8Array(room * 2);
  }

  /** Where in `gaps` that of the next pair goes: there is room for it. */
  nextGap(): number {
    if (this.length === this.one.length) this.grow();
    return this.length * GAP_NUMBERS;
  }

  /** A pair whose gap has been put where `nextGap` said. */
  add(one: number, other: number, there: number, back: number): void {
    const { length } = this;
    this.one[length] = one;
    this.other[length] = other;
    this.ways[length * 2] = there;
    this.ways[length * 2 + 1] = back;
    this.length = length + 1;
    this.counts[there] = (this.counts[there] as number) + 1;
    this.counts[back] = (this.counts[back] as number) + 1;
  }

  /** Whether a way stands so. */
  hold(stands: (code: number) => boolean): boolean {
    return this.counts.some((count, code) => count > 0 && stands(code));
  }

  private grow(): void {
    const room = this.one.length * 2;
    this.one = longer(this.one, new Uint32Array(room));
    this.other = longer(this.other, new Uint32Array(room));
    this.gaps = longer(this.gaps, new Float64Array(room * GAP_NUMBERS));
    this.ways = longer(this.ways, new Uint8Array(room * 2));
  }
}

function longer<T extends Uint32Array | Float64Array | Uint8Array>(from: T, to: T): T {
  to.set(from);
  return to;
}

/** The ways of all pairs, each as twice its pair's place in the columns, plus 1 for the way back. */
export interface OrderedWays {
  /** By where they start, then by where they end. */
  readonly ways: Uint32Array;
  /** Where the ways from each place of the list begin; one more at the end. */
  readonly starts: Uint32Array;
}

/** @param length how many things the list holds */
export function orderedWays(columns: PairColumns, length: number): OrderedWays {
  const { one, other, ways } = columns;
  const all = new Uint32Array(columns.length * 2);
  let count = 0;
  for (let way = 0; way < all.length; way += 1) {
    if (ways[way] === 0) continue;
    all[count] = way;
    count += 1;
  }
  const startOf = (way: number) => ((way & 1) === 0 ? one : other)[way >> 1] as number;
  const endOf = (way: number) => ((way & 1) === 0 ? other : one)[way >> 1] as number;
  const byEnd = counted(all.subarray(0, count), endOf, length).order;
  const { order, starts } = counted(byEnd, startOf, length);
  return { ways: order, starts };
}
