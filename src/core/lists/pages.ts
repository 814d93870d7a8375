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

/** Stands for an item that is made when it is read. */
const LATER = Symbol("later");
type Page<T> = readonly (T | typeof LATER)[];

export class Pages<T> implements Listed<T> {
  readonly length: number;
  private readonly pages: readonly Page<T>[];
  /** Makes the item of a place; null: all are there. */
  private readonly make: ((place: number) => T) | null;
  private made: readonly T[] | null = null;

  private constructor(
    pages: readonly Page<T>[],
    length: number,
    make: ((place: number) => T) | null,
  ) {
    this.pages = pages;
    this.length = length;
    this.make = make;
  }

  static of<T>(items: readonly T[]): Pages<T> {
    const pages: (readonly T[])[] = [];
    for (let from = 0; from < items.length; from += PAGE) {
      pages.push(items.slice(from, from + PAGE));
    }
    const made = new Pages(pages, items.length, null);
    made.made = items;
    return made;
  }

  /** Items that are made when they are read. @param make the same item each time it is asked for one */
  static later<T>(length: number, make: (place: number) => T): Pages<T> {
    const page: Page<T> = Array.from({ length: PAGE }, () => LATER);
    return new Pages(
      Array.from({ length: Math.ceil(length / PAGE) }, () => page),
      length,
      make,
    );
  }

  at(place: number): T | undefined {
    const item = this.pages[place >> PAGE_BITS]?.[place & (PAGE - 1)];
    if (item !== LATER) return item;
    return place < this.length ? this.make?.(place) : undefined;
  }

  /** All in one list, made when it is first asked for. */
  get all(): readonly T[] {
    return (this.made ??= this.make
      ? Array.from({ length: this.length }, (_, place) => this.at(place) as T)
      : ([] as T[]).concat(...(this.pages as readonly (readonly T[])[])));
  }

  /**
   * The same list with other items at some places; the same pages when there are none.
   * @param changes by place; throws a RangeError for a place the list has not
   */
  with(changes: ReadonlyMap<number, T>): Pages<T> {
    if (changes.size === 0) return this;
    const pages = this.pages.slice();
    const own = new Map<number, (T | typeof LATER)[]>();
    for (const [place, item] of changes) {
      if (!(place >= 0 && place < this.length)) {
        throw new RangeError(`no place ${place}`);
      }
      const number = place >> PAGE_BITS;
      let page = own.get(number);
      if (!page) {
        page = (pages[number] as Page<T>).slice();
        own.set(number, page);
        pages[number] = page;
      }
      page[place & (PAGE - 1)] = item;
    }
    return new Pages(pages, this.length, this.make);
  }
}
