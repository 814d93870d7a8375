/**
 * Directed pairs of things in a list. Two that reach each other are looked at once, what is
 * found is gathered in columns in whatever order is cheapest, and put in order by counting.
 */
import { groupPlaces, nearStands } from "./near-stands.ts";
import type { Reacher } from "./reach-index.ts";

/** A directed pair, by the ids of the two. */
interface Directed {
  readonly seedParent: string;
  readonly pollenSource: string;
}

export interface OrderedPairs<T> {
  readonly items: readonly T[];
  /** Where the pairs from each place begin among the items; one more at the end. */
  readonly starts: Uint32Array;
}

/** Directed pairs, each kept with the places of its two. */
function pairColumns<T>() {
  const all: T[] = [];
  const starts: number[] = [];
  const ends: number[] = [];
  return {
    add: (from: number, to: number, item: T): void => {
      all.push(item);
      starts.push(from);
      ends.push(to);
    },
    /** All by where they start, then by where they end. @param length how many places there are */
    inOrder: (length: number): OrderedPairs<T> => {
      const byEnd = counted(Uint32Array.from(all.keys()), ends, length);
      const byStart = counted(byEnd.order, starts, length);
      const items: T[] = [];
      for (const index of byStart.order) items.push(all[index] as T);
      return { items, starts: byStart.starts };
    },
  };
}

/** Indices in the order of their keys, those of one key as they were. */
function counted(indices: Uint32Array, keys: readonly number[], length: number) {
  const starts = new Uint32Array(length + 1);
  for (const key of keys) starts[key + 1] = (starts[key + 1] as number) + 1;
  for (let key = 0; key < length; key += 1) {
    starts[key + 1] = (starts[key + 1] as number) + (starts[key] as number);
  }
  const next = starts.slice();
  const order = new Uint32Array(indices.length);
  for (const index of indices) {
    const key = keys[index] as number;
    order[next[key] as number] = index;
    next[key] = (next[key] as number) + 1;
  }
  return { order, starts };
}

/**
 * Both ways of two things that cross; null: none counts, or both are found from the other side.
 * @param isAskedBefore whether the other, if it reaches the first, was asked or will be
 */
type WaysBetween<S, P> = (from: S, to: S, isAskedBefore: boolean) => readonly P[] | null;

interface PairsAmong<P> {
  /** By the places of the two in the list. */
  readonly directed: OrderedPairs<P>;
  /** One or both ways of any two, in no order. */
  readonly ways: readonly (readonly P[])[];
}

/** All pairs among things of one group, found from those that are seed parents. */
export function pairsAmong<S extends Reacher & { readonly id: string }, P extends Directed>(
  items: readonly S[],
  waysBetween: WaysBetween<S, P>,
): PairsAmong<P> {
  const directed = pairColumns<P>();
  const ways: (readonly P[])[] = [];
  const found = (one: number, other: number, both: readonly P[]) => {
    const { id } = items[one] as S;
    for (const way of both) {
      if (way.seedParent === id) directed.add(one, other, way);
      else directed.add(other, one, way);
    }
    ways.push(both);
  };
  for (const places of groupPlaces(items).values()) {
    const group = places.map((place) => items[place] as S);
    const index = nearStands(group);
    const all = [...group.keys()];
    for (const at of index?.order ?? all) {
      const from = group[at] as S;
      if (!from.isSeedParent) continue;
      for (const near of index?.near(at) ?? all) {
        const both = waysBetween(from, group[near] as S, near < at);
        if (both) found(places[at] as number, places[near] as number, both);
      }
    }
  }
  return { directed: directed.inOrder(items.length), ways };
}

/** The pairs of all, in the order of the list. */
export function pairsInOrder<P extends Directed>(
  items: readonly { readonly id: string }[],
  byParent: ReadonlyMap<string, readonly P[]>,
): readonly P[] {
  const pairs: P[] = [];
  for (const { id } of items) for (const pair of byParent.get(id) ?? []) pairs.push(pair);
  return pairs;
}

/** The pairs whose end is unchanged; the same list when all are. */
export function keptPairs<P extends Directed>(
  pairs: readonly P[],
  changed: ReadonlySet<string>,
): readonly P[] {
  const isStale = (pair: P) => changed.has(pair.pollenSource);
  return pairs.some(isStale) ? pairs.filter((pair) => !isStale(pair)) : pairs;
}

/** The pairs by rank of their ends; the same list when they stand in order already. */
export function byRank<P extends Directed>(
  pairs: readonly P[],
  rank: ReadonlyMap<string, number>,
): readonly P[] {
  const rankOf = (pair: P | undefined) => rank.get(pair?.pollenSource ?? "") ?? 0;
  return pairs.every((pair, index) => index === 0 || rankOf(pairs[index - 1]) < rankOf(pair))
    ? pairs
    : [...pairs].sort((a, b) => rankOf(a) - rankOf(b));
}
