/**
 * Which things of a list reach others: each has a distance within which it looks at those of its
 * group. An index over a list, and the same brought up to date for a list in which a few differ.
 */
import { boundsGap, growBounds, joinBounds } from "../geometry/bounds.ts";
import type { Listed } from "../lists/pages.ts";
import { type NearIndex, type Placed, movedIndex, nearIndex, placesNear } from "./near-index.ts";

/** A thing that reaches as far as `reachM`, metres, where it `isSeedParent`; infinite: not known. */
export interface Reacher extends Placed {
  readonly kind: { readonly group: string };
  readonly isSeedParent: boolean;
  readonly reachM: number;
}

export interface ReachIndex {
  /** Over all. */
  readonly index: NearIndex;
  readonly groups: ReadonlyMap<string, GroupReach>;
}

/** Over those of one group. */
interface GroupReach {
  readonly index: NearIndex;
  /** No less than the farthest reach of any whose reach is known. */
  readonly farthestM: number;
  /** Places of those that may reach everything. */
  readonly unbounded: ReadonlySet<number>;
}

export function reachIndexOf(items: Listed<Reacher>): ReachIndex {
  const index = nearIndex(items);
  const groups = new Map<string, GroupReach>();
  for (const [group, members] of byGroup(items, index.members)) {
    const none = { index: nearIndex(items, members), farthestM: 0, unbounded: new Set<number>() };
    groups.set(group, withReaches(none, items, members));
  }
  return { index, groups };
}

/**
 * The index of a list of the same groups in the same order.
 * @param places at which another thing stands, of the group of the one before
 */
export function changedReachIndex(
  { index, groups }: ReachIndex,
  items: Listed<Reacher>,
  places: readonly number[],
): ReachIndex {
  const changed = new Map(groups);
  for (const [group, members] of byGroup(items, places)) {
    const before = groups.get(group) as GroupReach;
    const moved = { ...before, index: movedIndex(before.index, items, members) };
    changed.set(group, withReaches(moved, items, members));
  }
  return { index: movedIndex(index, items, places), groups: changed };
}

function byGroup(
  items: Listed<Reacher>,
  places: readonly number[],
): ReadonlyMap<string, readonly number[]> {
  const groups = new Map<string, number[]>();
  for (const place of places) {
    const { group } = (items.at(place) as Reacher).kind;
    const members = groups.get(group);
    if (members) members.push(place);
    else groups.set(group, [place]);
  }
  return groups;
}

function withReaches(
  reach: GroupReach,
  items: Listed<Reacher>,
  places: readonly number[],
): GroupReach {
  let { farthestM } = reach;
  const unbounded: number[] = [];
  for (const place of places) {
    const { isSeedParent, reachM } = items.at(place) as Reacher;
    if (!isSeedParent) continue;
    if (reachM !== Infinity) farthestM = Math.max(farthestM, reachM);
    else if (!reach.unbounded.has(place)) unbounded.push(place);
  }
  if (unbounded.length === 0) return { ...reach, farthestM };
  return { ...reach, farthestM, unbounded: new Set([...reach.unbounded, ...unbounded]) };
}

/** All within some metres of one, by their bounds, itself included; in the order of the list. */
export function itemsNear<T extends Reacher>(
  { index }: ReachIndex,
  items: Listed<T>,
  { outline }: Placed,
  metres: number,
): readonly T[] {
  return itemsAt(items, placesWithin(index, items, outline.bounds, metres));
}

/** The same, of its group alone. */
export function groupNear<T extends Reacher>(
  { groups }: ReachIndex,
  items: Listed<T>,
  { outline, kind }: Pick<Reacher, "outline" | "kind">,
  metres: number,
): readonly T[] {
  const reach = groups.get(kind.group);
  return reach ? itemsAt(items, placesWithin(reach.index, items, outline.bounds, metres)) : [];
}

/** Those of its group within some share of the farthest that any of the group reaches. */
export function groupNearly<T extends Reacher>(
  index: ReachIndex,
  items: Listed<T>,
  thing: Pick<Reacher, "outline" | "kind">,
  share: number,
): readonly T[] {
  const farthestM = index.groups.get(thing.kind.group)?.farthestM ?? 0;
  return groupNear(index, items, thing, farthestM * share);
}

/** Places of those of its group that reach a thing, as far as their bounds tell, in order. */
export function placesReaching(
  { groups }: ReachIndex,
  items: Listed<Reacher>,
  { outline: { bounds }, kind }: Pick<Reacher, "outline" | "kind">,
): readonly number[] {
  const reach = groups.get(kind.group);
  if (!reach) return [];
  const near = placesNear(reach.index, items, growBounds(bounds, reach.farthestM));
  const all = reach.unbounded.size === 0 ? near : [...new Set([...near, ...reach.unbounded])];
  return all
    .filter((place) => {
      const { isSeedParent, outline, reachM } = items.at(place) as Reacher;
      return isSeedParent && boundsGap(outline.bounds, bounds) < reachM;
    })
    .sort((a, b) => a - b);
}

/**
 * Places of those of its group that a thing may reach or be reached by where it is, and of those
 * that may have reached it where it was; in no order, and maybe itself.
 */
export function placesAround(
  { groups }: ReachIndex,
  items: Listed<Reacher>,
  before: Pick<Reacher, "outline">,
  after: Reacher,
): readonly number[] {
  const reach = groups.get(after.kind.group);
  if (!reach) return [];
  const { index, farthestM, unbounded } = reach;
  if (after.isSeedParent && after.reachM === Infinity) return index.members;
  const [was, is] = [before.outline.bounds, after.outline.bounds];
  // Mostly it moved by less than it reaches: then one look around both takes in little more.
  const isBeside = boundsGap(was, is) < farthestM;
  const boxes = was === is ? [is] : isBeside ? [joinBounds([was, is]) ?? is] : [was, is];
  const found = boxes.flatMap((box) => placesNear(index, items, growBounds(box, farthestM)));
  return boxes.length === 1 && unbounded.size === 0
    ? found
    : [...new Set([...found, ...unbounded])];
}

function placesWithin(
  index: NearIndex,
  items: Listed<Placed>,
  bounds: Placed["outline"]["bounds"],
  metres: number,
): readonly number[] {
  return metres === Infinity
    ? index.members
    : placesNear(index, items, growBounds(bounds, metres)).sort((a, b) => a - b);
}

export function itemsAt<T>(items: Listed<T>, places: readonly number[]): readonly T[] {
  return places.map((place) => items.at(place) as T);
}
