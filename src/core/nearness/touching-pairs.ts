/** The directed pairs that some things are part of, found by where they lie instead of among all. */
import { type Reacher, reachIndexOf, reachingItems } from "./reach-index.ts";

interface Directed {
  readonly seedParent: string;
  readonly pollenSource: string;
}

/** With more things than this, all pairs are gone through once. */
const FEW = 40;

/**
 * Pairs with one of the ids at either end, in the order of all pairs.
 * @param items all of the run, which never change once they are made
 * @param byParent pairs of each seed parent
 */
export function touchingPairs<P extends Directed>(
  items: readonly Reacher[],
  byParent: ReadonlyMap<string, readonly P[]>,
  ids: ReadonlySet<string>,
): readonly P[] {
  if (ids.size === 0) return [];
  const touches = ({ seedParent, pollenSource }: P) => ids.has(seedParent) || ids.has(pollenSource);
  if (ids.size > FEW) {
    return items.flatMap(({ id }) => byParent.get(id)?.filter(touches) ?? []);
  }
  const index = reachIndexOf(items);
  const places = new Set<number>();
  for (const id of ids) {
    const place = index.placeOf.get(id);
    const item = place === undefined ? undefined : items[place];
    if (place === undefined || !item) continue;
    places.add(place);
    for (const parent of reachingItems(index, items, item)) {
      places.add(index.placeOf.get(parent.id) ?? 0);
    }
  }
  return [...places]
    .sort((a, b) => a - b)
    .flatMap((place) => byParent.get(items[place]?.id ?? "")?.filter(touches) ?? []);
}
