/** Finding kinds by what people call them. */
import type { FlowerForm, Kind } from "../../core/kinds/crop.ts";

/** Lower case without accents, so that `betterave` finds `Betterave` and `mais` finds `maïs`. */
function plain(text: string): string {
  return text
    .normalize("NFD")
    .replace(/\p{Mn}/gu, "")
    .replace(/[-\u2010-\u2015]/g, " ")
    .toLowerCase()
    .trim();
}

function namesOf(kind: Kind): readonly string[] {
  const { name, otherNames, sharedNames = [], botanicalName, id } = kind;
  return [name, ...otherNames, ...sharedNames, botanicalName, id];
}

/** The flower form that is searched for, where no name of the kind itself is: `potato leaf`. */
export function formSearched(kind: Kind, search: string): FlowerForm | null {
  const text = plain(search);
  if (text === "" || namesOf(kind).some((name) => plain(name).includes(text))) return null;
  return (kind.forms ?? []).find(({ name }) => hasWords(name, kind, text)) ?? null;
}

/** Shorter texts are in too many names of forms to mean one. */
const LEAST_FORM_LETTERS = 4;

/** Every word searched for is in the form's name or the kind's: `potato leaf tomato`. */
function hasWords(form: string, kind: Kind, text: string): boolean {
  const words = plain(`${form} ${kind.name}`);
  if (text.length < LEAST_FORM_LETTERS) return false;
  return text.split(/\s+/).every((word) => words.includes(word));
}

/** 0: a name is the text; 1: one begins with it; 2: a later word begins with it; 3: it is inside; 4: a flower form is called so; null: nowhere. */
function closeness(kind: Kind, text: string): number | null {
  const names = namesOf(kind).map(plain);
  if (names.includes(text)) return 0;
  if (names.some((name) => name.startsWith(text))) return 1;
  if (names.some((name) => name.includes(` ${text}`))) return 2;
  if (names.some((name) => name.includes(text))) return 3;
  return (kind.forms ?? []).some(({ name }) => hasWords(name, kind, text)) ? 4 : null;
}

/** `carrots` as `carrot`, `radishes` as `radish`, `berries` as `berry`; `swiss` stays. */
function singular(word: string): string {
  if (word.length <= LEAST_FORM_LETTERS || word.endsWith("ss")) return word;
  if (word.endsWith("ies")) return `${word.slice(0, -3)}y`;
  if (/(?:sh|ch|x|o)es$/.test(word)) return word.slice(0, -2);
  return word.endsWith("s") ? word.slice(0, -1) : word;
}

/** Every word, said as of one, is in some name of the kind: `flint maize` is a flint corn. */
function hasAllWords(kind: Kind, words: readonly string[]): boolean {
  const names = plain(namesOf(kind).join(" | "));
  return words.every((word) => names.includes(word));
}

/**
 * As `closestKinds`; what nothing is called so is looked for as of one (`courgettes`), then word by
 * word over all names of a kind.
 */
export function findKinds(kinds: readonly Kind[], search: string): readonly Kind[] {
  const found = closestKinds(kinds, search);
  if (found.length > 0) return found;
  const words = plain(search).split(/\s+/).map(singular);
  const ofOne = closestKinds(kinds, words.join(" "));
  if (ofOne.length > 0 || words.length < 2) return ofOne;
  return kinds.filter((kind) => hasAllWords(kind, words));
}

/** Kinds whose common, other or botanical name or flower form holds the text, closest first, then by name. */
function closestKinds(kinds: readonly Kind[], search: string): readonly Kind[] {
  const text = plain(search);
  if (text === "") return [];
  return [...kinds]
    .sort((a, b) => (plain(a.name) < plain(b.name) ? -1 : 1))
    .map((kind) => ({ kind, rank: closeness(kind, text) }))
    .filter((found): found is { kind: Kind; rank: number } => found.rank !== null)
    .sort((a, b) => a.rank - b.rank)
    .map(({ kind }) => kind);
}
