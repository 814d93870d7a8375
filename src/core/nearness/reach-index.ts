/**
 * Which things of a list reach others: each has a distance within which it looks at those of its
 * group. An index over a list, and the same brought up to date for a list in which a few differ.
 */
import { boundsGap, growBounds } from "../geometry/bounds.ts";
import { type NearIndex, type Placed, movedIndex, nearIndex, placesNear } from "./near-index.ts";

/** A thing that reaches as far as `reachM`, metres, where it `isSeedParent`; infinite: not known. */
export interface Reacher extends Placed {
  readonly id: string;
  readonly kind: { readonly group: string };
  readonly isSeedParent: boolean;
  readonly reachM: number;
}

export interface ReachIndex {
  readonly index: NearIndex;
  readonly placeOf: ReadonlyMap<string, number>;
  /** By group. */
  readonly reaches: ReadonlyMap<string, GroupReach>;
}

interface GroupReach {
  /** No less than the farthest reach of any whose reach is known. */
  readonly farthestM: number;
  /** Places of those that may reach everything. */
  readonly unbounded: ReadonlySet<number>;
}

/** Of lists that never change once they are made. */
const known = new WeakMap<readonly Reacher[], ReachIndex>();

export function reachIndexOf(items: readonly Reacher[]): ReachIndex {
  const found = known.get(items);
  if (found) return found;
  const made = {
    index: nearIndex(items),
    placeOf: new Map(items.map(({ id }, place) => [id, place])),
    reaches: withReaches(new Map(), items, items.keys()),
  };
  known.set(items, made);
  return made;
}

/** The index of a list of the same ids in the same order. @param places at which another thing stands */
export function changedReachIndex(
  { index, placeOf, reaches }: ReachIndex,
  items: readonly Reacher[],
  places: readonly number[],
): ReachIndex {
  const made = {
    index: movedIndex(index, items, places),
    placeOf,
    reaches: withReaches(reaches, items, places),
  };
  known.set(items, made);
  return made;
}

function withReaches(
  before: ReachIndex["reaches"],
  items: readonly Reacher[],
  places: Iterable<number>,
): ReachIndex["reaches"] {
  const reaches = new Map(before);
  const own = new Map<string, { farthestM: number; unbounded: Set<number> }>();
  for (const place of places) {
    const { kind, isSeedParent, reachM } = items[place] as Reacher;
    if (!isSeedParent) continue;
    const was = reaches.get(kind.group);
    const isWithin =
      reachM === Infinity ? was?.unbounded.has(place) === true : reachM <= (was?.farthestM ?? -1);
    if (isWithin) continue;
    let reach = own.get(kind.group);
    if (!reach) {
      reach = { farthestM: was?.farthestM ?? 0, unbounded: new Set(was?.unbounded) };
      own.set(kind.group, reach);
      reaches.set(kind.group, reach);
    }
    if (reachM === Infinity) reach.unbounded.add(place);
    else reach.farthestM = Math.max(reach.farthestM, reachM);
  }
  return own.size === 0 ? before : reaches;
}

/** All within some metres of one, by their bounds, itself included; in the order of the list. */
export function itemsNear<T extends Reacher>(
  { index }: ReachIndex,
  items: readonly T[],
  { outline }: Placed,
  metres: number,
): readonly T[] {
  if (metres === Infinity) return items;
  return placesNear(index, items, growBounds(outline.bounds, metres))
    .sort((a, b) => a - b)
    .map((place) => items[place] as T);
}

/** Those of its group that reach a thing, as far as their bounds tell, in the order of the list. */
export function reachingItems<T extends Reacher>(
  { index, reaches }: ReachIndex,
  items: readonly T[],
  { outline, kind }: Pick<Reacher, "outline" | "kind">,
): readonly T[] {
  const reach = reaches.get(kind.group);
  if (!reach) return [];
  const near = placesNear(index, items, growBounds(outline.bounds, reach.farthestM));
  return [...new Set([...near, ...reach.unbounded])]
    .sort((a, b) => a - b)
    .map((place) => items[place] as T)
    .filter(
      (item) =>
        item.isSeedParent &&
        item.kind.group === kind.group &&
        boundsGap(item.outline.bounds, outline.bounds) < item.reachM,
    );
}
