/**
 * A list that never changes, kept in pages: one like it but for a few items shares all pages in
 * which nothing differs. Making it costs those pages, not what the list holds.
 */

/** What is read by its place: a list or pages. */
export interface Listed<T> {
  readonly length: number;
  readonly at: (place: number) => T | undefined;
}

/** Items on a page, as a power of two: large enough that a long list has few pages to copy the list of. */
const PAGE_BITS = 8;
const PAGE = 1 << PAGE_BITS;

export class Pages<T> implements Listed<T> {
  readonly length: number;
  private readonly pages: readonly (readonly T[])[];
  private made: readonly T[] | null = null;

  private constructor(pages: readonly (readonly T[])[], length: number) {
    this.pages = pages;
    this.length = length;
  }

  static of<T>(items: readonly T[]): Pages<T> {
    const pages: (readonly T[])[] = [];
    for (let from = 0; from < items.length; from += PAGE) {
      pages.push(items.slice(from, from + PAGE));
    }
    const made = new Pages(pages, items.length);
    made.made = items;
    return made;
  }

  at(place: number): T | undefined {
    return this.pages[place >> PAGE_BITS]?.[place & (PAGE - 1)];
  }

  /** All in one list, made when it is first asked for. */
  get all(): readonly T[] {
    return (this.made ??= ([] as T[]).concat(...this.pages));
  }

  /**
   * The same list with other items at some places; the same pages when there are none.
   * @param changes by place; throws a RangeError for a place the list has not
   */
  with(changes: ReadonlyMap<number, T>): Pages<T> {
    if (changes.size === 0) return this;
    const pages = this.pages.slice();
    const own = new Map<number, T[]>();
    for (const [place, item] of changes) {
      if (!(place >= 0 && place < this.length)) {
        throw new RangeError(`no place ${place}`);
      }
      const number = place >> PAGE_BITS;
      let page = own.get(number);
      if (!page) {
        page = (pages[number] as readonly T[]).slice();
        own.set(number, page);
        pages[number] = page;
      }
      page[place & (PAGE - 1)] = item;
    }
    return new Pages(pages, this.length);
  }
}
