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

export class IdPages<T extends Named> {
  private readonly pages: readonly (readonly T[])[];
  /** The first item of each page: none is empty. */
  private readonly firsts: readonly T[];
  private made: readonly T[] | null = null;

  private constructor(
    pages: readonly (readonly T[])[],
    firsts: readonly T[] = pages.map(([first]) => first as T),
  ) {
    this.pages = pages;
    this.firsts = firsts;
  }

  /** @param items in the order of their ids, no id twice */
  static of<T extends Named>(items: readonly T[]): IdPages<T> {
    return new IdPages(cut(items));
  }

  /** All in one list, made when it is first asked for. */
  get all(): readonly T[] {
    return (this.made ??= ([] as T[]).concat(...this.pages));
  }

  /** How many there are; the one list is not made for it. */
  get size(): number {
    let size = 0;
    for (const { length } of this.pages) size += length;
    return size;
  }

  /** The item of an id; undefined: none. */
  get(id: string): T | undefined {
    const page = this.pages[lastUpTo(this.firsts, id)] ?? [];
    const item = page[lastUpTo(page, id)];
    return item?.id === id ? item : undefined;
  }

  /**
   * The list with a patch applied: what is found takes the place of what has its id. Costs the
   * pages that it touches; the same list when nothing is changed.
   */
  patched({ gone, found }: ListPatch<T>): IdPages<T> {
    if (this.firsts.length + found.length === 0) return this;
    const pages = this.pages.slice();
    const leaving = new Set<string>();
    const coming = new Map<number, T[]>();
    const touch = (id: string): T[] => {
      const number = Math.max(0, lastUpTo(this.firsts, id));
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
    const changed: number[] = [];
    for (const [number, items] of coming) {
      const page = pages[number] ?? [];
      const staying = page.filter(({ id }) => !leaving.has(id));
      if (items.length === 0 && staying.length === page.length) continue;
      changed.push(number);
      pages[number] = merged(staying, items);
    }
    if (changed.length === 0) return this;
    // There may be thousands of pages, so that only those that changed are looked at.
    if (changed.some((number) => isUneven(pages[number] ?? []))) {
      return new IdPages(pages.flatMap(cut));
    }
    const firsts = this.firsts.slice();
    for (const number of changed) firsts[number] = pages[number]?.[0] as T;
    return new IdPages(pages, firsts);
  }
}

const isUneven = ({ length }: readonly unknown[]) => length === 0 || length > 2 * PAGE;

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

function cut<T>(items: readonly T[]): readonly (readonly T[])[] {
  const pages: (readonly T[])[] = [];
  for (let from = 0; from < items.length; from += PAGE) pages.push(items.slice(from, from + PAGE));
  return pages;
}

/** Place of the last item whose id is no later than some id; -1: there is none. */
function lastUpTo(items: readonly Named[], id: string): number {
  let low = 0;
  let high = items.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((items[middle] as Named).id <= id) low = middle + 1;
    else high = middle;
  }
  return low - 1;
}
