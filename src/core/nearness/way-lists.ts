/** What is told of the ways of pairs, made when it is read, and once. */
import { Pages } from "../lists/pages.ts";
import { type OrderedWays, type PairColumns, orderedWays } from "./pair-columns.ts";

export class WayLists<P> {
  readonly columns: PairColumns;
  private readonly count: number;
  private readonly make: (way: number) => P;
  /** By way. With its room from the start: filled in any order it would be kept as a table. */
  private made: (P | undefined)[] | null = null;
  private readonly lists: (readonly P[])[] = [];
  private order: OrderedWays | null = null;
  private list: readonly P[] | null = null;

  /**
   * @param count how many things the list holds
   * @param make what is told of a way: twice its pair's place in the columns, plus 1 for the way back
   */
  constructor(columns: PairColumns, count: number, make: (way: number) => P) {
    this.columns = columns;
    this.count = count;
    this.make = make;
  }

  /** Of one way. */
  of(way: number): P {
    const made = (this.made ??= Array.from({ length: this.columns.length * 2 }));
    return (made[way] ??= this.make(way));
  }

  /** Of all ways from the thing at a place, in the order of where they end. */
  from(place: number): readonly P[] {
    const before = this.lists[place];
    if (before) return before;
    const { ways, starts } = this.ordered;
    const own: P[] = [];
    for (const way of ways.subarray(starts[place], starts[place + 1])) own.push(this.of(way));
    this.lists[place] = own;
    return own;
  }

  /** By place, where ways start from the thing there; else undefined. */
  pages(startsFrom: (place: number) => boolean): Pages<readonly P[] | undefined> {
    return Pages.later(this.count, (place) => (startsFrom(place) ? this.from(place) : undefined));
  }

  /** Of all ways, by where they start, then by where they end. */
  get all(): readonly P[] {
    return (this.list ??= this.those(() => true));
  }

  /** Of the ways that stand so, in the same order. */
  those(stands: (code: number) => boolean): readonly P[] {
    const { ways: codes } = this.columns;
    const found: P[] = [];
    if (!this.columns.hold(stands)) return found;
    for (const way of this.ordered.ways) {
      if (stands(codes[way] as number)) found.push(this.of(way));
    }
    return found;
  }

  /** One or both ways of each two, where one of them stands so; in no order. */
  both(stands: (code: number) => boolean): readonly (readonly P[])[] {
    const { ways: codes, length } = this.columns;
    const found: (readonly P[])[] = [];
    if (!this.columns.hold(stands)) return found;
    for (let way = 0; way < length * 2; way += 2) {
      const [there, back] = [codes[way] as number, codes[way + 1] as number];
      if (!stands(there) && !stands(back)) continue;
      const ways: P[] = [];
      if (there !== 0) ways.push(this.of(way));
      if (back !== 0) ways.push(this.of(way + 1));
      found.push(ways);
    }
    return found;
  }

  private get ordered(): OrderedWays {
    return (this.order ??= orderedWays(this.columns, this.count));
  }
}
