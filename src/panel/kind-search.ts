/** Finding kinds by what people call them. */
import type { Kind } from "../core/crops/crop.ts";

/** Lower case without accents, so that `betterave` finds `Betterave` and `mais` finds `maïs`. */
function plain(text: string): string {
  return text
    .normalize("NFD")
    .replace(/\p{Mn}/gu, "")
    .toLowerCase()
    .trim();
}

/** 0: a name is the text; 1: one begins with it; 2: a later word begins with it; 3: it is inside; null: nowhere. */
function closeness(kind: Kind, text: string): number | null {
  const names = [kind.name, ...kind.otherNames, kind.botanicalName, kind.id].map(plain);
  if (names.includes(text)) return 0;
  if (names.some((name) => name.startsWith(text))) return 1;
  if (names.some((name) => name.includes(` ${text}`))) return 2;
  return names.some((name) => name.includes(text)) ? 3 : null;
}

/** Kinds whose common, other or botanical name holds the text, closest first, then by name. */
export function findKinds(kinds: readonly Kind[], search: string): readonly Kind[] {
  const text = plain(search);
  if (text === "") return [];
  return [...kinds]
    .sort((a, b) => (plain(a.name) < plain(b.name) ? -1 : 1))
    .map((kind) => ({ kind, rank: closeness(kind, text) }))
    .filter((found): found is { kind: Kind; rank: number } => found.rank !== null)
    .sort((a, b) => a.rank - b.rank)
    .map(({ kind }) => kind);
}
