/**
 * Which things of a list can cross with which, in columns: asked of every two that lie near each
 * other, so that texts and tables are looked at once for each thing, or each two kinds.
 */
import type { Kind, Relation } from "../kinds/crop.ts";
import type { CropBook } from "../kinds/crop-book.ts";

export interface Crosser {
  readonly kind: Kind;
  readonly varietyKey: string | null;
  readonly keepApart: boolean;
  readonly isSeedParent: boolean;
  readonly shedsPollen: boolean;
}

/** How readily a seed parent takes the pollen of a source, by places: `no` where the two are one lot. */
type RelationOfPlaces = (parent: number, source: number) => Relation;

export function crossingsOf(things: readonly Crosser[], book: CropBook): RelationOfPlaces {
  const kinds = new Map<Kind, number>();
  const lots = new Map<string, number>();
  const kindOf = new Uint32Array(things.length);
  /** Of one number they are one population; 0: it is of none but itself. */
  const lotOf = new Uint32Array(things.length);
  things.forEach(({ kind, varietyKey, keepApart }, place) => {
    kindOf[place] = numberOf(kind, kinds);
    if (varietyKey !== null && !keepApart) lotOf[place] = numberOf(varietyKey, lots);
  });
  /** By kind of the seed parent, then of the source; undefined: it was not asked. */
  const relations: Relation[][] = [];
  return (parent, source) => {
    const [one, other] = [things[parent] as Crosser, things[source] as Crosser];
    if (!one.isSeedParent || !other.shedsPollen) return "no";
    if (lotOf[parent] !== 0 && lotOf[parent] === lotOf[source]) return "no";
    const row = (relations[kindOf[parent] as number] ??= []);
    return (row[kindOf[source] as number] ??= book.relation(one.kind, other.kind).relation);
  };
}

function numberOf<K>(key: K, numbers: Map<K, number>): number {
  const known = numbers.get(key) ?? numbers.size + 1;
  numbers.set(key, known);
  return known;
}
