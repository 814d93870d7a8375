/** What a kind crosses with, species by species, and who says so. */
import type { CropBook } from "../../core/kinds/crop-book.ts";
import type { Kind, Relation, SpeciesRelation } from "../../core/kinds/crop.ts";
import { crossingGroups, knownSeparations } from "../../core/kinds/groups.ts";

export interface Crossing {
  readonly species: string;
  /** Other kinds of that species in the crop base; none for a wild relative. */
  readonly kinds: readonly string[];
  readonly relation: Relation;
  readonly note: string | null;
  /** Id of the source; null where none is needed or none was found. */
  readonly source: string | null;
  /** Ids of sources that say otherwise. */
  readonly otherwise: readonly string[];
}

const ORDER: readonly Relation[] = ["freely", "sometimes", "rarely", "no"];

/** Readiest first. The kind's own species is named when it has other kinds or a source. */
export function crossings(kind: Kind, book: CropBook): readonly Crossing[] {
  const members = book.kinds.filter(({ group, id }) => group === kind.group && id !== kind.id);
  const bySpecies = new Map<string, readonly Kind[]>();
  for (const member of members) {
    bySpecies.set(member.species, [...(bySpecies.get(member.species) ?? []), member]);
  }
  const carried = [...bySpecies].map(([species, kinds]): Crossing => {
    const { relation, source, note } = book.relation(kind, kinds[0] as Kind);
    const names = kinds.map(({ name }) => name);
    const otherwise = rowFor(kind, species)?.otherwise ?? [];
    return { species, kinds: names, relation, note: note ?? null, source, otherwise };
  });
  const others = rowsOf(kind)
    .filter((row) => !bySpecies.has(otherOf(row, kind)))
    .map((row): Crossing => ({
      species: otherOf(row, kind),
      kinds: book.kinds
        .filter(({ species, id }) => species === otherOf(row, kind) && id !== kind.id)
        .map(({ name }) => name),
      relation: row.relation,
      note: row.note ?? null,
      source: row.source,
      otherwise: row.otherwise ?? [],
    }));
  return [...carried, ...others].sort(
    (a, b) => ORDER.indexOf(a.relation) - ORDER.indexOf(b.relation),
  );
}

/** Name of a crossing group; the grower's own groups are named by their id. */
export function groupName(id: string): string {
  return crossingGroups.find((group) => group.id === id)?.name ?? id;
}

/** Rows of the tables that name the kind's species. */
function rowsOf(kind: Kind): readonly SpeciesRelation[] {
  const group = crossingGroups.find(({ id }) => id === kind.group);
  return [...(group?.relations ?? []), ...knownSeparations].filter(({ between }) =>
    between.includes(kind.species),
  );
}

function rowFor(kind: Kind, species: string): SpeciesRelation | undefined {
  return rowsOf(kind).find((row) => otherOf(row, kind) === species);
}

function otherOf({ between: [one, other] }: SpeciesRelation, kind: Kind): string {
  return one === kind.species ? other : one;
}
