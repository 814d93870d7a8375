/** Directed pairs of things in a list: which two meet, and lists of what is found of them. */
import { type Boxes, curveOrder, gridOf } from "../geometry/boxes.ts";
import { groupPlaces, groupStands } from "./near-stands.ts";
import { nearPairs } from "./near-pairs.ts";
import type { Reacher } from "./reach-index.ts";

/** A directed pair, by the ids of the two. */
interface Directed {
  readonly seedParent: string;
  readonly pollenSource: string;
}

/**
 * Two things of one group, by their places in the list; the first reaches the second.
 * @param isMutual whether the second reaches the first as well
 */
type Meeting = (from: number, to: number, isMutual: boolean) => void;

/**
 * Tells each two things of a group of which one reaches the other, as far as bounds tell, once.
 * @param boxes their bounds
 */
export function meetings(items: readonly Reacher[], boxes: Boxes, meet: Meeting): void {
  const grid = gridOf(boxes);
  for (const order of groupPlaces(items, curveOrder(grid)).values()) {
    // How far each looks; one that is no seed parent looks at nothing.
    const squares = Float64Array.from(order, (place) => {
      const { isSeedParent, reachM } = items[place] as Reacher;
      return isSeedParent ? reachM * reachM : -1;
    });
    nearPairs({ boxes, grid, order, squares }, (one, other, apart) => {
      const isThere = apart < (squares[one] as number);
      const isBack = apart < (squares[other] as number);
      const [from, to] = isThere ? [one, other] : [other, one];
      meet(order[from] as number, order[to] as number, isThere && isBack);
    });
  }
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

/** Lists of pairs by the id of the seed parent, and which things are no longer what they were then. */
export interface CarriedForward<P> {
  readonly byParent: ReadonlyMap<string, readonly P[]>;
  /** Ids of things changed, added or removed since. */
  readonly changed: ReadonlySet<string>;
}

interface Found<P> {
  readonly byParent: ReadonlyMap<string, readonly P[]>;
  /** Those that were judged now rather than carried forward. */
  readonly fresh: readonly P[];
}

/**
 * The lists of pairs of a list in which things changed, came or went: only pairs that touch one
 * of these are judged again.
 * @param anew the lists of a group all of which changed
 * @param closeTo the pairs of one seed parent among some, in their order
 */
export function carriedLists<S extends Reacher & { readonly id: string }, P extends Directed>(
  items: readonly S[],
  earlier: CarriedForward<P>,
  anew: (group: readonly S[]) => ReadonlyMap<string, readonly P[]>,
  closeTo: (parent: S, sources: readonly S[]) => P[],
): Found<P> {
  const byParent = new Map<string, readonly P[]>();
  const fresh: P[] = [];
  for (const group of groupStands(items).values()) {
    const changed = group.filter(({ id }) => earlier.changed.has(id));
    if (changed.length === group.length) {
      for (const [id, pairs] of anew(group)) {
        byParent.set(id, pairs);
        for (const pair of pairs) fresh.push(pair);
      }
      continue;
    }
    const rank = new Map(group.map(({ id }, index) => [id, index]));
    for (const parent of group) {
      if (!parent.isSeedParent) continue;
      const before = earlier.changed.has(parent.id) ? undefined : earlier.byParent.get(parent.id);
      const found = closeTo(parent, before ? changed : group);
      for (const pair of found) fresh.push(pair);
      const kept = before ? keptPairs(before, earlier.changed) : [];
      // In the order of the list, as they are made anew.
      byParent.set(parent.id, byRank(kept.length === 0 ? found : [...kept, ...found], rank));
    }
  }
  return { byParent, fresh };
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
