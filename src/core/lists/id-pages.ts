/**
 * Lists kept in the order of their ids and in pages, brought up to date without sorting them again
 * and without copying the pages in which nothing changes.
 */

interface Named {
  readonly id: string;
}

/** What is no longer in a list, by id, and what is new in it. */
export interface ListPatch<T extends Named> {
  /** Ids that are not in the list are passed over. */
  readonly gone: Iterable<string>;
  readonly found: readonly T[];
}

/** Items on a page; one of more than twice as many is cut. */
const PAGE = 256;

/** Items that are made when they are read, by their places in the order of their ids. */
export interface LaterItems<T> {
  readonly length: number;
  readonly idAt: (place: number) => string;
  readonly at: (place: number) => T;
}

/** Never empty. */
interface Page<T> {
  /** Id of its first item. */
  readonly first: string;
  readonly length: number;
  readonly items: readonly T[];
}

export class IdPages<T extends Named> {
  private readonly pages: readonly Page<T>[];
  private made: readonly T[] | null = null;

  private constructor(pages: readonly Page<T>[]) {
    this.pages = pages;
  }

  /** @param items in the order of their ids, no id twice */
  static of<T extends Named>(items: readonly T[]): IdPages<T> {
    return new IdPages(cut(items));
  }

  /** The same of items that are made when they are read, a page at once. */
  static later<T extends Named>(items: LaterItems<T>): IdPages<T> {
    const pages: Page<T>[] = [];
    for (let from = 0; from < items.length; from += PAGE) pages.push(new LaterPage(items, from));
    return new IdPages(pages);
  }

  /** All in one list, made when it is first asked for. */
  get all(): readonly T[] {
    return (this.made ??= ([] as T[]).concat(...this.pages.map(({ items }) => items)));
  }

  /** Makes the items that are made when they are read, a page at a step. */
  *making(): Generator<undefined, void> {
    for (const page of this.pages) {
      void page.items;
      yield;
    }
  }

  /** How many there are; the one list is not made for it. */
  get size(): number {
    let size = 0;
    for (const { length } of this.pages) size += length;
    return size;
  }

  /** The item of an id; undefined: none. */
  get(id: string): T | undefined {
    const items = this.pages[lastPage(this.pages, id)]?.items ?? [];
    const item = items[lastUpTo(items, id)];
    return item?.id === id ? item : undefined;
  }

  /**
   * The list with a patch applied: what is found takes the place of what has its id. Costs the
   * pages that it touches; the same list when nothing is changed.
   */
  patched({ gone, found }: ListPatch<T>): IdPages<T> {
    if (this.pages.length + found.length === 0) return this;
    const leaving = new Set<string>();
    const coming = new Map<number, T[]>();
    const touch = (id: string): T[] => {
      const number = Math.max(0, lastPage(this.pages, id));
      const items = coming.get(number) ?? [];
      coming.set(number, items);
      leaving.add(id);
      return items;
    };
    for (const item of new Map(found.map((each) => [each.id, each])).values()) {
      touch(item.id).push(item);
    }
    // Mostly what is gone is found again, a little nearer or farther.
    for (const id of gone) if (!leaving.has(id)) touch(id);
    const changed = new Map<number, readonly T[]>();
    for (const [number, items] of coming) {
      const page = this.pages[number]?.items ?? [];
      const staying = page.filter(({ id }) => !leaving.has(id));
      if (items.length === 0 && staying.length === page.length) continue;
      changed.set(number, merged(staying, items));
    }
    return changed.size === 0 ? this : new IdPages(withPages(this.pages, changed));
  }
}

class LaterPage<T> implements Page<T> {
  readonly first: string;
  readonly length: number;
  private from: LaterItems<T> | null;
  private readonly start: number;
  private made: readonly T[] = [];

  constructor(from: LaterItems<T>, start: number) {
    this.first = from.idAt(start);
    this.length = Math.min(PAGE, from.length - start);
    this.from = from;
    this.start = start;
  }

  get items(): readonly T[] {
    const { from, start } = this;
    if (from === null) return this.made;
    const made: T[] = [];
    for (let at = 0; at < this.length; at += 1) made.push(from.at(start + at));
    this.made = made;
    // What they were made from may be large, and is done with.
    this.from = null;
    return this.made;
  }
}

/** Pages with other items on some. There may be thousands, so that only those are looked at. */
function withPages<T extends Named>(
  pages: readonly Page<T>[],
  changed: ReadonlyMap<number, readonly T[]>,
): readonly Page<T>[] {
  if ([...changed.values()].some(({ length }) => length === 0 || length > 2 * PAGE)) {
    const all = pages.length === 0 ? [...changed.keys()] : pages.keys();
    return [...all].flatMap((number) => {
      const items = changed.get(number);
      return items ? cut(items) : (pages[number] ?? []);
    });
  }
  const other = pages.slice();
  for (const [number, items] of changed) other[number] = pageOf(items);
  return other;
}

function pageOf<T extends Named>(items: readonly T[]): Page<T> {
  return { first: items[0]?.id ?? "", length: items.length, items };
}

/** Both in one list by id. @param items in any order, none with the id of one that stays */
function merged<T extends Named>(staying: readonly T[], items: T[]): readonly T[] {
  if (items.length === 0) return staying;
  items.sort((a, b) => (a.id < b.id ? -1 : 1));
  const made: T[] = [];
  let next = 0;
  for (const item of staying) {
    for (; next < items.length && (items[next] as T).id < item.id; next += 1) {
      made.push(items[next] as T);
    }
    made.push(item);
  }
  for (; next < items.length; next += 1) made.push(items[next] as T);
  return made;
}

function cut<T extends Named>(items: readonly T[]): readonly Page<T>[] {
  const pages: Page<T>[] = [];
  for (let from = 0; from < items.length; from += PAGE) {
    pages.push(pageOf(items.slice(from, from + PAGE)));
  }
  return pages;
}

/** Place of the last item whose id is no later than some id; -1: there is none. */
function lastUpTo(items: readonly Named[], id: string): number {
  return lastWhere(items.length, (place) => (items[place] as Named).id <= id);
}

/** Place of the last page that begins no later than an id; -1: there is none. */
function lastPage(pages: readonly Page<unknown>[], id: string): number {
  return lastWhere(pages.length, (place) => (pages[place] as Page<unknown>).first <= id);
}

/** @param isUpTo true of the first so many */
function lastWhere(count: number, isUpTo: (place: number) => boolean): number {
  let low = 0;
  let high = count;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (isUpTo(middle)) low = middle + 1;
    else high = middle;
  }
  return low - 1;
}
