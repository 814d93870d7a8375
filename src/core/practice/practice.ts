/**
 * What growers do to keep seed true where distance does not: each rule with its source. The kinds
 * are gathered in lists because practice goes by the build of the flower, not by the variety.
 */
import type { Kind, Source } from "../kinds/crop.ts";
import { citedAs, findSource } from "../kinds/sources.ts";

/** Something said of a kind, and the id of the source that says it. */
export interface Rule<T> {
  readonly value: T;
  readonly source: string;
}

/** Read for these rules alone; the others are those of the crop base (kinds/sources.ts). */
export const practiceOnlySources: readonly Source[] = [
  seen(
    "ars-pollinators",
    "Pollinators at the Plant Introduction Station, Ames",
    "USDA Agricultural Research Service",
    "n.d.",
  ),
  seen(
    "ars-by-hand",
    "Agricultural Research magazine, October 1997: maize, sunflower, squash and pumpkin are pollinated by hand",
    "USDA Agricultural Research Service",
    "1997",
  ),
  seen(
    "onion-flies",
    "Note on the use of flies for onion pollination in Nigeria, 50(2)",
    "Tropical Agriculture",
    "1973",
  ),
  seen(
    "melon-by-hand",
    "Pollination of melon the day before the flower opens, Report 2:22",
    "Cucurbit Genetics Cooperative",
    "1979",
  ),
  seen(
    "cgn-spinach",
    "Regeneration of spinach",
    "Centre for Genetic Resources, the Netherlands",
    "n.d.",
  ),
];

function seen(id: string, title: string, publisher: string, edition: string): Source {
  return { id, title, publisher, edition, trust: "seen", authority: "book" };
}

const ownById = new Map(practiceOnlySources.map((source) => [source.id, source]));

/** Who says it, as it stands in a sentence: title and publisher, or `common practice`, `from memory`. */
export function ruleCited(sourceId: string): string {
  const own = ownById.get(sourceId);
  if (own) return `${own.title}, ${own.publisher}`;
  const known = findSource(sourceId);
  // Where the publisher was not shown, the title alone says more than our remark on it.
  return known?.publisher.includes("not shown") === true ? known.title : citedAs(sourceId);
}

/** Rules by id of a kind, written down as lists of ids that share one. */
export function rulesOf<T>(
  rows: readonly (readonly [ids: string, value: T, source: string])[],
): ReadonlyMap<string, Rule<T>> {
  const rules = new Map<string, Rule<T>>();
  for (const [ids, value, source] of rows) {
    for (const id of ids.trim().split(/\s+/)) {
      if (rules.has(id)) throw new Error(`Two rules for ${id}`);
      rules.set(id, { value, source });
    }
  }
  return rules;
}

/** A kind of the crop base by what the rules ask of it; a grower's own kind has no row by id. */
export type RuledKind = Pick<
  Kind,
  "id" | "family" | "species" | "group" | "breeding" | "carrier" | "lifeCycle"
>;
