/**
 * Directed pairs brought up to date for things that changed: only the lists that one of them is in
 * are made anew, and any two are measured once for both ways.
 */
import { boundsGap } from "../geometry/bounds.ts";
import type { Listed } from "../lists/pages.ts";
import { type Reacher, type ReachIndex, placesAround } from "./reach-index.ts";

interface Directed {
  readonly pollenSource: string;
}

/** Pairs by place of the seed parent, each list in the order of its sources; undefined: it is none. */
type PairList<P> = readonly P[] | undefined;

/** A thing that is no longer what it was, at its place in the list; it stays of its group. */
interface Change<S> {
  readonly place: number;
  readonly before: S;
  readonly after: S;
}

/** Things as they are now, what lies near what, and the pairs as they were. */
interface Paired<S, P> {
  readonly stands: Listed<S>;
  readonly placeOf: ReadonlyMap<string, number>;
  readonly reach: ReachIndex;
  readonly pairs: Listed<PairList<P>>;
  /** From the one to the other and back, each null where it is no pair; null: neither is. */
  readonly waysBetween: (one: S, other: S) => readonly [P | null, P | null] | null;
}

/** A pair with the place of its source. */
interface Entry<P> {
  readonly source: number;
  readonly pair: P;
}

/** The lists that differ now, by place. @param changes in the order of their places */
export function changedPairLists<S extends Reacher & { readonly id: string }, P extends Directed>(
  changes: readonly Change<S>[],
  paired: Paired<S, P>,
): ReadonlyMap<number, PairList<P>> {
  const { stands, placeOf, pairs } = paired;
  const changed = new Set(changes.map(({ place }) => place));
  const entering = enteringPairs(changes, changed, paired);
  const lists = new Map<number, PairList<P>>();
  const left = new Set(changes.map(({ after }) => after.id));
  for (const [place, entries] of entering) {
    if (changed.has(place)) continue;
    const before = pairs.at(place) ?? [];
    const now = withEntries(before, entries, left, placeOf);
    if (now !== before) lists.set(place, now);
  }
  for (const { place } of changes) {
    const entries = entering.get(place) ?? [];
    const isParent = stands.at(place)?.isSeedParent === true;
    // Found from both sides, so that they come in no order.
    entries.sort((a, b) => a.source - b.source);
    lists.set(place, isParent ? entries.map(({ pair }) => pair) : undefined);
  }
  return lists;
}

/**
 * Pairs of what changed by place of the seed parent, the sources of one that stayed in order. A
 * list without pairs: it may have held one.
 */
function enteringPairs<S extends Reacher, P>(
  changes: readonly Change<S>[],
  changed: ReadonlySet<number>,
  { stands, reach, waysBetween }: Paired<S, P>,
): ReadonlyMap<number, Entry<P>[]> {
  const entering = new Map<number, Entry<P>[]>();
  const listOf = (parent: number): Entry<P>[] => {
    let list = entering.get(parent);
    if (!list) entering.set(parent, (list = []));
    return list;
  };
  for (const { place, before, after } of changes) {
    for (const near of placesAround(reach, stands, before, after)) {
      const hasChanged = changed.has(near);
      // Of two that both changed the first in the list has found the other.
      if (near === place || (hasChanged && near < place)) continue;
      const other = stands.at(near) as S;
      const [there, back] = waysBetween(after, other) ?? NEITHER;
      if (there) listOf(place).push({ source: near, pair: there });
      if (back) listOf(near).push({ source: place, pair: back });
      else if (!hasChanged && reaches(other, before)) listOf(near);
    }
  }
  return entering;
}

const NEITHER = [null, null] as const;

const reaches = ({ isSeedParent, reachM, outline }: Reacher, other: Reacher): boolean =>
  isSeedParent && boundsGap(outline.bounds, other.outline.bounds) < reachM;

/** A list without its pairs of what changed, and with those found now; the same when it had none. */
function withEntries<P extends Directed>(
  before: readonly P[],
  entries: readonly Entry<P>[],
  left: ReadonlySet<string>,
  placeOf: ReadonlyMap<string, number>,
): readonly P[] {
  const now: P[] = [];
  let next = 0;
  let isChanged = entries.length > 0;
  for (const pair of before) {
    if (left.has(pair.pollenSource)) {
      isChanged = true;
      continue;
    }
    if (next < entries.length) {
      const source = placeOf.get(pair.pollenSource) ?? 0;
      for (; (entries[next]?.source ?? Infinity) < source; next += 1) {
        now.push((entries[next] as Entry<P>).pair);
      }
    }
    now.push(pair);
  }
  for (; next < entries.length; next += 1) now.push((entries[next] as Entry<P>).pair);
  return isChanged ? now : before;
}
