/** How readily two kinds cross, looked up in the crossing groups. */
import type { Kind, Relation, SpeciesRelation } from "./crop.ts";
import { crossingGroups, knownSeparations } from "./groups.ts";

export interface KindRelation {
  readonly relation: Relation;
  /** Id of the source, or null when nothing published is needed or was found. */
  readonly source: string | null;
  readonly note?: string;
}

const UNKNOWN: KindRelation = {
  relation: "sometimes",
  source: null,
  note: "nothing published was found on this pair, so it counts in full",
};

const relationsOf = new Map(crossingGroups.map((group) => [group.id, group.relations]));

/**
 * How readily a seed parent takes pollen of a source. One species crosses freely with itself; unlike species of one group as the group's table says,
 * and `sometimes` where it says nothing; kinds of different groups do not cross.
 */
export function speciesRelation(seedParent: Kind, pollenSource: Kind): KindRelation {
  const [a, b] = [seedParent, pollenSource];
  const table = a.group === b.group ? (relationsOf.get(a.group) ?? []) : knownSeparations;
  const found = table.find((row) => speaksOf(row, a.species, b.species));
  if (found) return answer(found);
  if (a.group !== b.group) return { relation: "no", source: null };
  return a.species === b.species ? { relation: "freely", source: null } : UNKNOWN;
}

/** Whether a row holds for a seed parent of one species and a pollen source of the other. */
export function speaksOf(
  { between: [one, other], oneWay }: SpeciesRelation,
  parent: string,
  source: string,
): boolean {
  if (one === parent && other === source) return true;
  return oneWay !== true && one === source && other === parent;
}

function answer({ relation, source, note }: SpeciesRelation): KindRelation {
  return note === undefined ? { relation, source } : { relation, source, note };
}
