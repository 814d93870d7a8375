/**
 * A map whose keys are the ids of a list and whose values lie in pages, in the order of the list.
 * One that differs in a few values is made for what differs; the keys are shared.
 */
import type { Pages } from "./pages.ts";

/** An id without a value, undefined, is not in the map. */
export class PlacedMap<V> implements ReadonlyMap<string, V> {
  readonly items: Pages<V | undefined>;
  private places: ReadonlyMap<string, number> | (() => ReadonlyMap<string, number>);
  private made: ReadonlyMap<string, V> | null = null;

  /** @param places by id, or what makes them when one is first asked for */
  constructor(
    places: ReadonlyMap<string, number> | (() => ReadonlyMap<string, number>),
    items: Pages<V | undefined>,
  ) {
    this.places = places;
    this.items = items;
  }

  private get placeOf(): ReadonlyMap<string, number> {
    if (typeof this.places === "function") this.places = this.places();
    return this.places;
  }

  get(id: string): V | undefined {
    const place = this.placeOf.get(id);
    return place === undefined ? undefined : this.items.at(place);
  }

  has(id: string): boolean {
    return this.get(id) !== undefined;
  }

  get size(): number {
    return this.all.size;
  }

  entries(): MapIterator<[string, V]> {
    return this.all.entries();
  }

  keys(): MapIterator<string> {
    return this.all.keys();
  }

  values(): MapIterator<V> {
    return this.all.values();
  }

  [Symbol.iterator](): MapIterator<[string, V]> {
    return this.all.entries();
  }

  forEach(visit: (value: V, id: string, map: ReadonlyMap<string, V>) => void): void {
    this.all.forEach(visit);
  }

  /** As a plain map, made when it is first gone over. */
  private get all(): ReadonlyMap<string, V> {
    if (this.made) return this.made;
    const made = new Map<string, V>();
    for (const [id, place] of this.placeOf) {
      const value = this.items.at(place);
      if (value !== undefined) made.set(id, value);
    }
    return (this.made = made);
  }
}

/** Places by id. @param items no id twice */
export function placesById(items: readonly { readonly id: string }[]): ReadonlyMap<string, number> {
  return new Map(items.map(({ id }, place) => [id, place]));
}
