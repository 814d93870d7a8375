/** Plain English in a text of the program in the made-up language. */
import { crossingGroups } from "../../src/core/kinds/groups.ts";
import { kinds } from "../../src/core/kinds/kinds.ts";
import { sources } from "../../src/core/kinds/sources.ts";
import { sourceFiles } from "../architecture/source-files.ts";
import { textsIn, treeOf } from "../architecture/syntax.ts";
import { CORE_NOT_DONE, QUOTED } from "./not-yet-words.ts";

/** Strings within a value, however deep. */
function textsWithin(value: unknown): readonly string[] {
  if (typeof value === "string") return [value];
  return typeof value === "object" && value !== null
    ? Object.values(value).flatMap(textsWithin)
    : [];
}

/** A word with no accent on any letter; a revision or a code has digits. */
const WORD = /(?<![\p{L}\d])[A-Za-z]{3,}(?![\p{L}\d])/gu;

export interface NobodysWords {
  /** Quoted and named, several words each, the longest first. */
  readonly phrases: readonly string[];
  /** Those of names alone: a table may break them over lines. */
  readonly words: ReadonlySet<string>;
}

const KIND_NAMES = [
  ...crossingGroups.map(({ name }) => name),
  ...kinds.flatMap(({ name, species, botanicalName, forms = [] }) => [
    name,
    species,
    botanicalName,
    ...forms.map((form) => form.name),
  ]),
];

const hasWord = (text: string) => /[A-Za-z]{3}/.test(text);
const spaced = (text: string) => text.replace(/\s+/g, " ").trim();

const QUOTED_TEXTS = [
  ...textsWithin(kinds),
  ...textsWithin(crossingGroups),
  ...textsWithin(sources),
  ...[...sourceFiles()].flatMap(([path, text]) =>
    [...QUOTED, ...CORE_NOT_DONE].includes(path.slice("src/".length))
      ? textsIn(treeOf(path, text))
      : [],
  ),
];

/**
 * Names and quotations that stay what they are in any language: those of a plan, of kinds, groups
 * and sources, and what tables quote. The longest first. @param plan as JSON
 */
export function nobodysWords(plan: string): NobodysWords {
  const own = [...KIND_NAMES, ...textsWithin(JSON.parse(plan))].map(spaced).filter(hasWord);
  const phrases = [...QUOTED_TEXTS, ...own].map(spaced).filter((text) => /\w\W+\w/.test(text));
  return {
    phrases: [...new Set(phrases)].sort((a, b) => b.length - a.length),
    words: new Set(own.flatMap((text) => text.match(WORD) ?? [])),
  };
}

/** English words of a text once names and quotations are taken out, each once. */
export function plainWords(text: string, { phrases, words }: NobodysWords): readonly string[] {
  let rest = spaced(text);
  for (const phrase of phrases) if (rest.includes(phrase)) rest = rest.replaceAll(phrase, "·");
  // Of a turned label poppler may take the last letter for a word of its own: `she d`.
  const isNamed = (word: string) => [...words].some((name) => name.startsWith(word));
  return [...new Set(rest.match(WORD) ?? [])].filter((word) => !isNamed(word));
}
