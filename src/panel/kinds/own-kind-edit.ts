/** A kind of the plan's own being typed, and what it still lacks. */
import { type CropBook, cropBook } from "../../core/kinds/crop-book.ts";
import type { Kind } from "../../core/kinds/crop.ts";
import { crossingGroups } from "../../core/kinds/groups.ts";
import { nextId } from "../../core/edits/edit.ts";
import type { OwnKind, Plan } from "../../core/model/plan.ts";
import type { Choice } from "../state/plan-words.ts";
import * as words from "./words.ts";
import { levelNames } from "../../core/words/level-words.ts";

/** Changes some fields of the kind being typed. */
export type ChangeOwnKind = (changes: {
  readonly [Key in keyof Omit<OwnKind, "id">]?: OwnKind[Key] | undefined;
}) => null;

/** A kind that crosses with nothing known here until a group is picked. */
export function blankOwnKind(plan: Plan, name: string): OwnKind {
  const taken = [...plan.ownKinds, ...cropBook().kinds].flatMap(({ id, group }) => [id, group]);
  const id = nextId("own-kind-", taken);
  return {
    id,
    name,
    group: id,
    lifeCycle: "annual",
    carrier: "insects",
    breeding: "outcrossing",
    isolationM: {},
  };
}

/** Own figures for a kind: all it has stays until something else is typed. */
export function ownKindFrom(kind: Kind): OwnKind {
  return {
    id: kind.id,
    name: kind.name,
    botanicalName: kind.botanicalName,
    family: kind.family,
    group: kind.group,
    species: kind.species,
    lifeCycle: kind.lifeCycle,
    carrier: kind.carrier,
    breeding: kind.breeding,
    isolationM: {},
  };
}

/** Why the kind cannot be kept as typed, or null. */
export function ownKindProblem(own: OwnKind, book: CropBook): string | null {
  const name = own.name.trim();
  if (name === "") return words.typeKindName;
  const other = book.find(name);
  if (!other || other.id === own.id) return null;
  return words.kindKnownAlready(other.name);
}

/** The groups a kind can belong to: built-in ones, those of other own kinds, and one of its own. */
export function groupChoices(plan: Plan, own: OwnKind): readonly Choice<string>[] {
  const builtIn = crossingGroups
    .map(({ id, name }) => ({ value: id, label: name }))
    .sort((a, b) => a.label.localeCompare(b.label));
  const known = new Set(builtIn.map(({ value }) => value));
  const others = plan.ownKinds
    .filter(({ id, group }) => id !== own.id && !known.has(group))
    .map(({ name, group }) => ({ value: group, label: words.groupOf(name) }));
  const alone = { value: aloneGroup(own), label: words.ownGroup };
  const distinct = new Map(
    [alone, ...others, ...builtIn].map((choice) => [choice.value, choice] as const),
  );
  return [...distinct.values()];
}

/** A kind in a built-in kind's place keeps that kind's name for a group of its own. */
function aloneGroup({ id, group }: OwnKind): string {
  return crossingGroups.some((entry) => entry.id === id) && group !== id ? `own-${id}` : id;
}

/** Species of a group, with the kinds that are of it. */
export function speciesChoices(
  group: string,
  own: OwnKind,
  book: CropBook,
): readonly Choice<string>[] {
  const bySpecies = new Map<string, string[]>();
  for (const kind of book.kinds) {
    if (kind.group !== group || kind.id === own.id) continue;
    bySpecies.set(kind.species, [...(bySpecies.get(kind.species) ?? []), kind.name]);
  }
  return [...bySpecies].map(([species, names]) => ({
    value: species,
    label: `${species} (${names.join(", ")})`,
  }));
}

/** Own distances in words: `7.6 m home, 25 m sale`. */
export function ownDistances({ isolationM }: OwnKind, format: (metres: number) => string): string {
  const parts = (["home", "sale", "stock"] as const).flatMap((level) => {
    const metres = isolationM[level];
    return metres === undefined ? [] : [words.distanceAt(format(metres), levelNames[level])];
  });
  return parts.length === 0 ? words.noOwnDistance : parts.join(", ");
}
