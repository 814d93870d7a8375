/** The list of ways out, in words. */
import { countWord } from "../../core/words/deed-words.ts";
import { formOf, listOf } from "../../core/words/plurals.ts";

/** What a remedy does to the findings, counted. */
export interface ConflictEffect {
  readonly clears: number;
  /** Conflicts of the whole layout that are left. */
  readonly left: number;
  /** `1 caution and 2 unknowns`; empty for none. */
  readonly brings: string;
  readonly worsens: string;
}

export const waysOutWords = {
  heading: "Ways out",
  close: "Close",
  gone: "This conflict is no longer there.",
  onTrial: (title: string) => `Tried on the sheet, not kept: ${title}.`,
  apply: "Apply",
  cancel: "Cancel",
  try: "Try",
  /** What a screen reader hears of a button. */
  of: (verb: string, title: string) => `${verb}: ${title}`,
  more: (count: number) =>
    formOf(count, { one: "Show 1 more way out", other: `Show ${count} more ways out` }),
  ranked:
    "Those that leave the least trouble come first: conflicts, then cautions, then work, then ground moved.",
  alsoClearsMany: (count: number) => `Also clears ${count} other conflicts`,
  accept: "Or accept it, because",
  acceptWithReason: "Accept with this reason",
  crossingAt: (name: string) => `How much would cross at ${name}`,
  notSure: "needs their yes",
  effect: ({ clears, left, brings, worsens }: ConflictEffect): string =>
    [
      `clears ${clears}`,
      ...(left === 0 ? ["none left"] : [`${left} left`]),
      ...(brings === "" ? [] : [`brings ${brings}`]),
      ...(worsens === "" ? [] : [`makes worse ${worsens}`]),
    ].join(", "),
} as const;

/** `1 caution and 2 unknowns`; empty where there are none. */
export function broughtWords(cautions: number, unknowns: number): string {
  return listOf([
    ...(cautions > 0 ? [countWord(cautions, "caution")] : []),
    ...(unknowns > 0 ? [countWord(unknowns, "unknown")] : []),
  ]);
}
