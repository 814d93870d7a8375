/**
 * Counts and lists in the language of the screen, in one place: plural forms by the rules of the
 * language (Unicode CLDR, through Intl), never by `=== 1`.
 */

const LANGUAGE = "en-GB";

/** A noun in the forms English has; other languages have more (`few`, `many`). */
export interface Noun {
  readonly one: string;
  readonly other: string;
}

let rules: Intl.PluralRules | null = null;

/** The form of a noun that goes with a number: `bed`, `beds`. */
export function formOf(count: number, { one, other }: Noun): string {
  rules ??= new Intl.PluralRules(LANGUAGE);
  return rules.select(count) === "one" ? one : other;
}

/** `1 bed`, `0 beds`, `3 beds`. */
export function counted(count: number, noun: Noun): string {
  return `${count} ${formOf(count, noun)}`;
}

/** Between the items of a list: all but the last two, and those (Unicode CLDR, British English). */
const LIST = { middle: ", ", end: " and " };

/**
 * `a`, `a and b`, `a, b and c`. By hand, since setting up Intl.ListFormat takes longer than all
 * checks of a garden; a test compares the two.
 */
export function listOf(items: readonly string[]): string {
  const end = items.slice(-2).join(LIST.end);
  return [...items.slice(0, -2), end].join(LIST.middle);
}
