/**
 * What lies near what among things of which a few are moved again and again. A tree over all as
 * they were, and the places of those moved since, which are looked at one by one: bringing it up
 * to date costs what moved, and an index made earlier goes on holding for what it was made of.
 */
import Flatbush from "flatbush";
import type { Bounds } from "../geometry/bounds.ts";

/** A thing with a place: what is kept in a list, whose places the index tells. */
export interface Placed {
  readonly outline: { readonly bounds: Bounds };
}

export interface NearIndex {
  /** Null: nothing is in it. */
  readonly tree: Flatbush | null;
  /** Places in the list that are no longer where the tree has them. */
  readonly moved: ReadonlySet<number>;
}

/** So many may have moved before the tree is made anew. */
const MOST_MOVED = 64;

export function nearIndex(items: readonly Placed[]): NearIndex {
  if (items.length === 0) return { tree: null, moved: new Set() };
  const tree = new Flatbush(items.length);
  for (const { outline } of items) {
    const { minX, minY, maxX, maxY } = outline.bounds;
    tree.add(minX, minY, maxX, maxY);
  }
  tree.finish();
  return { tree, moved: new Set() };
}

/** The index for a list in which other things stand at some places; as many as before. */
export function movedIndex(
  index: NearIndex,
  items: readonly Placed[],
  places: readonly number[],
): NearIndex {
  const moved = new Set([...index.moved, ...places]);
  return moved.size > MOST_MOVED ? nearIndex(items) : { tree: index.tree, moved };
}

/** Places whose bounds touch a box, in no order. @param items the list the index is of */
export function placesNear(
  { tree, moved }: NearIndex,
  items: readonly Placed[],
  { minX, minY, maxX, maxY }: Bounds,
): number[] {
  const found =
    tree?.search(minX, minY, maxX, maxY, (place) => moved.size === 0 || !moved.has(place)) ?? [];
  for (const place of moved) {
    const { bounds } = (items[place] as Placed).outline;
    const isApart =
      bounds.minX > maxX || bounds.maxX < minX || bounds.minY > maxY || bounds.maxY < minY;
    if (!isApart) found.push(place);
  }
  return found;
}
