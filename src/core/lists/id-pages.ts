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

/** A page is cut above twice as many. */
const PAGE = 256;

export class IdPages<T extends Named> {
  readonly length: number;
  private readonly pages: readonly (readonly T[])[];
  private made: readonly T[] | null = null;

  private constructor(pages: readonly (readonly T[])[]) {
    this.pages = pages;
    this.length = pages.reduce((count, page) => count + page.length, 0);
  }

  /** @param items in the order of their ids, no id twice */
  static of<T extends Named>(items: readonly T[]): IdPages<T> {
    const made = new IdPages(cut(items));
    made.made = items;
    return made;
  }

  /** All in one list, made when it is first asked for. */
  get all(): readonly T[] {
    return (this.made ??= ([] as T[]).concat(...this.pages));
  }

  /** The item of an id; undefined: none. */
  get(id: string): T | undefined {
    const page = this.pages[this.pageOf(id, 0)] ?? [];
    const item = page[placeIn(page, id, 0)];
    return item?.id === id ? item : undefined;
  }

  /**
   * The list with a patch applied: what is found takes the place of what has its id. Costs the
   * pages that it touches; the same list when nothing is changed.
   */
  patched({ gone, found }: ListPatch<T>): IdPages<T> {
    if (this.length === 0 && found.length === 0) return this;
    const changes = new Map<string, T | null>();
    for (const id of gone) changes.set(id, null);
    for (const item of found) changes.set(item.id, item);
    if (changes.size === 0) return this;
    const ordered = [...changes].sort(([a], [b]) => (a < b ? -1 : 1));
    const pages: (readonly T[])[] = [];
    let isChanged = false;
    let next = 0;
    for (let from = 0; from < ordered.length;) {
      const [id] = ordered[from] as readonly [string, T | null];
      const number = this.pageOf(id, next);
      while (next < number) pages.push(this.pages[next++] as readonly T[]);
      const page = this.pages[number] ?? [];
      const after = this.pages[number + 1]?.[0]?.id;
      let to = from + 1;
      while (to < ordered.length && isBefore(ordered[to]?.[0], after)) to += 1;
      const changed = patchedPage(page, ordered, from, to);
      if (changed !== page) isChanged = true;
      pages.push(
        ...(changed.length > 2 * PAGE ? cut(changed) : changed.length > 0 ? [changed] : []),
      );
      from = to;
      next = number + 1;
    }
    if (!isChanged) return this;
    while (next < this.pages.length) pages.push(this.pages[next++] as readonly T[]);
    return new IdPages(pages);
  }

  /** The page that holds an id, or would hold it. @param from the first that may */
  private pageOf(id: string, from: number): number {
    let low = from;
    let high = this.pages.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((this.pages[middle]?.[0]?.id ?? "") <= id) low = middle + 1;
      else high = middle;
    }
    return Math.max(from, low - 1);
  }
}

function isBefore(id: string | undefined, end: string | undefined): boolean {
  return end === undefined || (id !== undefined && id < end);
}

/** A page with some of the changes, which are in the order of ids; the same page when none counts. */
function patchedPage<T extends Named>(
  page: readonly T[],
  changes: readonly (readonly [string, T | null])[],
  from: number,
  to: number,
): readonly T[] {
  const changed: T[] = [];
  let isChanged = false;
  let next = 0;
  for (let place = from; place < to; place += 1) {
    const [id, item] = changes[place] as readonly [string, T | null];
    const at = placeIn(page, id, next);
    while (next < at) changed.push(page[next++] as T);
    const isThere = page[at]?.id === id;
    if (isThere) next = at + 1;
    if (item !== null) changed.push(item);
    if (isThere || item !== null) isChanged = true;
  }
  if (!isChanged) return page;
  while (next < page.length) changed.push(page[next++] as T);
  return changed;
}

function cut<T>(items: readonly T[]): readonly (readonly T[])[] {
  const pages: (readonly T[])[] = [];
  for (let from = 0; from < items.length; from += PAGE) pages.push(items.slice(from, from + PAGE));
  return pages;
}

/** Where an id stands on a page, or would stand. @param from where to begin */
function placeIn(page: readonly Named[], id: string, from: number): number {
  let low = from;
  let high = page.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((page[middle] as Named).id < id) low = middle + 1;
    else high = middle;
  }
  return low;
}
