/**
 * What lies near what among things of which a few are moved again and again. A tree over all as
 * they were, and the places of those moved since, which are looked at one by one: bringing it up
 * to date costs what moved, and an index made earlier goes on holding for what it was made of.
 */
import Flatbush from "flatbush";
import type { Bounds } from "../geometry/bounds.ts";
import type { Listed } from "../lists/pages.ts";

/** A thing with a place: what is kept in a list, whose places the index tells. */
export interface Placed {
  readonly outline: { readonly bounds: Bounds };
}

export interface NearIndex {
  /** Null: nothing is in it. */
  readonly tree: Flatbush | null;
  /** Places in the list of what is in it; the tree counts along these. */
  readonly members: readonly number[];
  /** Members that are no longer where the tree has them. */
  readonly moved: ReadonlySet<number>;
}

/** So many may have moved before the tree is made anew: at least these, of many the square root. */
const MOST_MOVED = 16;

/** @param members places in the list of what is to be in it, in order; left out: all */
export function nearIndex(
  items: Listed<Placed>,
  members: readonly number[] = Array.from({ length: items.length }, (_, place) => place),
): NearIndex {
  if (members.length === 0) return { tree: null, members, moved: NONE };
  const tree = new Flatbush(members.length);
  for (const place of members) {
    const { minX, minY, maxX, maxY } = (items.at(place) as Placed).outline.bounds;
    tree.add(minX, minY, maxX, maxY);
  }
  tree.finish();
  return { tree, members, moved: NONE };
}

const NONE: ReadonlySet<number> = new Set();

/** The index for a list in which other things stand at some of its members' places. */
export function movedIndex(
  index: NearIndex,
  items: Listed<Placed>,
  places: Iterable<number>,
): NearIndex {
  const { tree, members } = index;
  const moved = new Set([...index.moved, ...places]);
  const most = Math.max(MOST_MOVED, Math.sqrt(members.length));
  return moved.size > most ? nearIndex(items, members) : { tree, members, moved };
}

/** Places whose bounds touch a box, in no order. @param items the list the index is of */
export function placesNear(
  { tree, members, moved }: NearIndex,
  items: Listed<Placed>,
  { minX, minY, maxX, maxY }: Bounds,
): number[] {
  const found: number[] = [];
  for (const member of tree?.search(minX, minY, maxX, maxY) ?? []) {
    const place = members[member] as number;
    if (!moved.has(place)) found.push(place);
  }
  for (const place of moved) {
    const { bounds } = (items.at(place) as Placed).outline;
    const isApart =
      bounds.minX > maxX || bounds.maxX < minX || bounds.minY > maxY || bounds.maxY < minY;
    if (!isApart) found.push(place);
  }
  return found;
}
