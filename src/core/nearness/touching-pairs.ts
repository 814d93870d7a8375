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

/** With more things than this, all pairs are gone through once. */
const FEW = 40;

/** Pairs with one of the ids at either end, in the order of all pairs. */
export function touchingPairs<P extends Directed>(
  { stands, placeOf, reach, pairs }: Paired<P>,
  ids: ReadonlySet<string>,
): readonly P[] {
  const places = new Set<number>(ids.size > FEW ? placeOf.values() : []);
  for (const id of ids.size > FEW ? [] : ids) {
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
