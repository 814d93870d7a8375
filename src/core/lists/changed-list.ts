/**
 * Lists made from another by putting other items at a few places. Where a list came from is
 * remembered beside it, so that what differs between two of them is told without looking through
 * them, and places by id are reckoned once for all of them. The lists themselves are plain lists.
 */
import { placesById } from "./placed-map.ts";

interface Named {
  readonly id: string;
}

interface Origin {
  readonly base: readonly Named[];
  /** Every place at which the list may differ from its base. */
  readonly places: ReadonlySet<number>;
}

const origins = new WeakMap<readonly unknown[], Origin>();

/** One in so many places may differ before the list is taken as one of its own. */
const MOST_DIFFERING = 4;

/**
 * The list with other items at some places, each with the id of the one it stands for; the same
 * list when there are none. @param changes by place; throws a RangeError for another id
 */
export function changedList<T extends Named>(
  list: readonly T[],
  changes: ReadonlyMap<number, T>,
): readonly T[] {
  if (changes.size === 0) return list;
  const changed = list.slice();
  for (const [place, item] of changes) {
    if (item.id !== list[place]?.id) {
      throw new RangeError(`${item.id} at place ${place}`);
    }
    changed[place] = item;
  }
  const { base, places } = originOf(list);
  const differing = new Set([...places, ...changes.keys()]);
  const isOwn = differing.size * MOST_DIFFERING > list.length;
  if (!isOwn) origins.set(changed, { base, places: differing });
  return changed;
}

/** A list as another with other items at some places. */
export interface ListParts<T> {
  readonly list: readonly T[];
  readonly changes: ReadonlyMap<number, T>;
}

/** Lists that nobody has read yet, by what holds them. */
const unread = new WeakMap<object, ListParts<Named>>();

/** From so many items on a copy costs more than all else a move does, and is made when it is read. */
const LONG = 4096;

/**
 * What holds a list with other items at some places of it. Of a long list the copy is made when it
 * is read: whoever wants those places alone asks `partsOf`.
 */
export function withChanges<K extends string, T extends Named, H extends Holder<K, T>>(
  holder: H,
  key: K,
  changes: ReadonlyMap<number, T>,
): H {
  if (changes.size === 0) return holder;
  const list = holder[key];
  if (list.length < LONG) return { ...holder, [key]: changedList(list, changes) };
  const made = { ...holder };
  const own = { enumerable: true, configurable: true };
  unread.set(made, { list, changes });
  return Object.defineProperty(made, key, {
    ...own,
    get: () => {
      const value = changedList(list, changes);
      unread.delete(made);
      // From now on a plain field, as of any other holder.
      Object.defineProperty(made, key, { ...own, writable: true, value });
      return value;
    },
  });
}

type Holder<K extends string, T> = Readonly<Record<K, readonly T[]>>;

type ItemOf<L> = L extends readonly (infer T)[] ? T : never;

/** The list of a holder, without making it where nobody has read it. */
export function partsOf<K extends string, H extends Holder<K, Named>>(
  holder: H,
  key: K,
): ListParts<ItemOf<H[K]>> {
  const parts: ListParts<Named> = unread.get(holder) ?? { list: holder[key], changes: UNCHANGED };
  return parts as ListParts<ItemOf<H[K]>>;
}

const UNCHANGED: ReadonlyMap<number, Named> = new Map<number, Named>();

/** Places at which two lists may differ, in order; null when all must be looked at. */
export function placesDiffering(
  now: readonly Named[],
  before: readonly Named[],
): readonly number[] | null {
  if (now === before) return [];
  const [one, other] = [originOf(now), originOf(before)];
  if (one.base !== other.base) return null;
  return [...new Set([...one.places, ...other.places])].sort((a, b) => a - b);
}

const known = new WeakMap<readonly Named[], ReadonlyMap<string, number>>();

/** Places by id in a list, no id of which is there twice; reckoned once for all that are made from it. */
export function placeById(list: readonly Named[]): ReadonlyMap<string, number> {
  const { base } = originOf(list);
  const found = known.get(base);
  if (found) return found;
  const made = placesById(base);
  known.set(base, made);
  return made;
}

/** The items of some ids, each with its place, in the order of the list; ids it has not are passed over. */
export function itemsById<T extends Named>(
  list: readonly T[],
  ids: Iterable<string>,
): readonly (readonly [number, T])[] {
  const placeOf = placeById(list);
  const places = new Set<number>();
  for (const id of ids) {
    const place = placeOf.get(id);
    if (place !== undefined) places.add(place);
  }
  return [...places].sort((a, b) => a - b).map((place) => [place, list[place] as T]);
}

function originOf(list: readonly Named[]): Origin {
  return origins.get(list) ?? { base: list, places: NONE };
}

const NONE: ReadonlySet<number> = new Set();

/** The same of lists in parts. */
export function placesApart<T extends Named>(
  now: ListParts<T>,
  before: ListParts<T>,
): Iterable<number> {
  const places = placesDiffering(now.list, before.list) ?? now.list.keys();
  const more = [...now.changes.keys(), ...before.changes.keys()];
  return more.length === 0 ? places : [...new Set([...places, ...more])].sort((a, b) => a - b);
}
