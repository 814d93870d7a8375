/** The kinds of a plan: the built-in ones, and the plan's own added or put in their place. */
import { kinds as builtInKinds } from "./kinds.ts";
import type { Kind } from "./crop.ts";
import { type KindRelation, speciesRelation } from "./species-relation.ts";

export interface CropBook {
  readonly kinds: readonly Kind[];
  kind(id: string): Kind | undefined;
  /**
   * The kind a text names: id, common name, other name or botanical name, in any case, in the
   * singular or a plain plural. A botanical name shared by kinds gives the first of them; a common
   * name shared by species gives none.
   */
  find(text: string): Kind | undefined;
  /** The kinds a text may mean that species share as a name: none where it is no such name. */
  sharing(text: string): readonly Kind[];
  /** How readily a seed parent takes pollen of a source: for some pairs one way only. */
  relation(seedParent: Kind, pollenSource: Kind): KindRelation;
}

/** Names that kinds of several species have. */
const SHARED: ReadonlySet<string> = new Set(
  builtInKinds.flatMap(({ sharedNames = [] }) => sharedNames),
);

const builtIn = makeBook([]);

/** The built-in kinds with a plan's own: an own kind with a built-in id stands in its place. */
export function cropBook(ownKinds: readonly Kind[] = []): CropBook {
  return ownKinds.length === 0 ? builtIn : makeBook(ownKinds);
}

function makeBook(ownKinds: readonly Kind[]): CropBook {
  const byId = new Map([...builtInKinds, ...ownKinds].map((kind) => [kind.id, kind]));
  const kinds = [...byId.values()];
  // Made when a name is first looked for: opening a plan goes by ids.
  let names: ReturnType<typeof nameIndex> | null = null;
  return {
    kinds,
    kind: (id) => byId.get(id),
    find: (text) => {
      const id = text.trim();
      // As lists are written: `winter-squash` is the kind, `winter squash` may be several.
      if (byId.has(id) && !SHARED.has(id)) return byId.get(id);
      const index = (names ??= nameIndex(ownKinds, kinds));
      return spellings(text)
        .map((spelling) => index.get(spelling))
        .find((kind) => kind !== undefined);
    },
    sharing: (text) => {
      const spelling = spellings(text).find((each) => SHARED.has(each));
      return spelling === undefined
        ? []
        : kinds.filter(({ sharedNames = [] }) => sharedNames.includes(spelling));
    },
    relation: remembered(speciesRelation),
  };
}

type RelationOf = (a: Kind, b: Kind) => KindRelation;

/** The same answers, looked up once for each pair of kinds: a field asks thousands of times. */
function remembered(relationOf: RelationOf): RelationOf {
  const known = new Map<Kind, Map<Kind, KindRelation>>();
  // The last row looked at: mostly it is asked for again.
  let last: Kind | null = null;
  let row = new Map<Kind, KindRelation>();
  return (a, b) => {
    if (a !== last) known.set((last = a), (row = known.get(a) ?? new Map()));
    const found = row.get(b);
    if (found) return found;
    const made = relationOf(a, b);
    row.set(b, made);
    return made;
  };
}

/**
 * Plain name -> kind. Earlier sorts of name go before later ones, earlier kinds before later. A name
 * that species share means a kind only where the grower has called one so.
 */
function nameIndex(
  ownKinds: readonly Kind[],
  allKinds: readonly Kind[],
): ReadonlyMap<string, Kind> {
  const own = new Set(ownKinds.map(({ id }) => id));
  const kinds = [...ownKinds, ...allKinds];
  const sorts: readonly ((kind: Kind) => readonly string[])[] = [
    (kind) => [kind.id],
    (kind) => [kind.name],
    (kind) => kind.otherNames,
    (kind) => [kind.botanicalName],
    (kind) => [kind.species],
  ];
  const index = new Map<string, Kind>();
  for (const namesOf of sorts) {
    for (const kind of kinds) {
      for (const name of namesOf(kind)) {
        const key = plain(name);
        const isOpen = SHARED.has(key) && !own.has(kind.id);
        if (!isOpen && !index.has(key)) index.set(key, kind);
      }
    }
  }
  return index;
}

/** Accents and apostrophes are left out by many who type a name: jalapeño, lamb's lettuce. */
function plain(text: string): string {
  return text
    .normalize("NFD")
    .replace(/[\u0300-\u036f'\u2019`]/g, "")
    .normalize("NFC")
    .trim()
    .toLowerCase()
    .replace(/[\s_-]+/g, " ");
}

/** The text itself, then without the ending of a plural, then with one. */
function spellings(text: string): readonly string[] {
  const key = plain(text);
  return [
    key,
    key.replace(/s$/, ""),
    key.replace(/es$/, ""),
    key.replace(/ies$/, "y"),
    key.replace(/ves$/, "f"),
    `${key}s`,
  ];
}
