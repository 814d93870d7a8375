/** The directed pairs that some things are part of, found by where they lie instead of among all. */
import type { Listed } from "../lists/pages.ts";
import { type Reacher, type ReachIndex, placesReaching } from "./reach-index.ts";

interface Directed {
  readonly seedParent: string;
  readonly pollenSource: string;
}

/** Things with their places by id, what lies near what, and the pairs by place of the seed parent. */
interface Paired<P extends Directed> {
  readonly stands: Listed<Reacher>;
  readonly placeOf: ReadonlyMap<string, number>;
  readonly reach: ReachIndex;
  readonly pairs: Listed<readonly P[] | undefined>;
}

/** With more than one of so many things, all pairs are gone through once. */
const FEW_OF = 8;

/** Pairs with one of the ids at either end, in the order of all pairs. */
export function touchingPairs<P extends Directed>(
  { stands, placeOf, reach, pairs }: Paired<P>,
  ids: ReadonlySet<string>,
): readonly P[] {
  const isMany = ids.size * FEW_OF > stands.length;
  const places = new Set<number>(isMany ? placeOf.values() : []);
  for (const id of isMany ? [] : ids) {
    const place = placeOf.get(id);
    const item = place === undefined ? undefined : stands.at(place);
    if (place === undefined || !item) continue;
    places.add(place);
    for (const parent of placesReaching(reach, stands, item)) places.add(parent);
  }
  return [...places]
    .sort((a, b) => a - b)
    .flatMap(
      (place) =>
        pairs
          .at(place)
          ?.filter(
            ({ seedParent, pollenSource }) => ids.has(seedParent) || ids.has(pollenSource),
          ) ?? [],
    );
}
