/**
 * Counts and lists in the language of the screen, in one place: plural forms by the rules of the
 * language (Unicode CLDR, through Intl), never by `=== 1`.
 */

/** British usage: no comma before the last "and". */
const LANGUAGE = "en-GB";

/** A noun in the forms English has; other languages have more (`few`, `many`). */
export interface Noun {
  readonly one: string;
  readonly other: string;
}

let rules: Intl.PluralRules | null = null;
let lists: Intl.ListFormat | null = null;

/** The form of a noun that goes with a number: `bed`, `beds`. */
export function formOf(count: number, { one, other }: Noun): string {
  rules ??= new Intl.PluralRules(LANGUAGE);
  return rules.select(count) === "one" ? one : other;
}

/** `1 bed`, `0 beds`, `3 beds`. */
export function counted(count: number, noun: Noun): string {
  return `${count} ${formOf(count, noun)}`;
}

/** `a`, `a and b`, `a, b and c`. */
export function listOf(items: readonly string[]): string {
  lists ??= new Intl.ListFormat(LANGUAGE, { type: "conjunction" });
  return lists.format(items);
}
