/** Codes of new lots, made by the pattern the grower chooses: `{variety}-{yy}-{number}` -> `AL-25-01`. */
import { foldedCode, freeCode } from "../model/lot-code.ts";

/** What a pattern may hold between braces. */
export const patternParts = ["kind", "variety", "year", "yy", "plot", "number"] as const;
export type PatternPart = (typeof patternParts)[number];

export const USUAL_PATTERN = "{variety}-{yy}-{number}";

/** Letters of a pattern at most, so that its codes still fit on a label. */
const MOST_LETTERS = 80;
/** Letters a one-word name is shortened to. */
const SHORT_LETTERS = 3;
const MOST_NUMBER = 99_999;

/** Why a pattern cannot be used, or null. */
export function patternProblem(pattern: string): string | null {
  if (pattern.trim() === "") return "Type a pattern, for example {variety}-{yy}-{number}";
  if (pattern.length > MOST_LETTERS) return `A pattern has at most ${MOST_LETTERS} letters`;
  const strange = [...pattern.matchAll(/\{([^{}]*)\}/g)].find(
    ([, name]) => !patternParts.some((part) => part === name),
  );
  if (strange) {
    const known = patternParts.map((part) => `{${part}}`).join(", ");
    return `${strange[0]} is not known; there are ${known}`;
  }
  if (/[{}]/.test(pattern.replace(/\{[^{}]*\}/g, ""))) return "A brace has no partner";
  return pattern.includes("{") ? null : "Put at least one part in braces, for example {number}";
}

export interface CodeFacts {
  /** Names as they are written out. */
  readonly kind: string;
  readonly variety: string;
  readonly harvestYear?: number | undefined;
  /** Code of the plot it was harvested from. */
  readonly plot?: string | undefined;
}

/**
 * A code of the pattern that no lot has. Names are shortened to the first letters of their words, a
 * single word to its first three; the running number is the first that gives a free code. A part
 * that is not known falls out with the sign before it.
 * @param taken folded codes in use
 */
export function codeByPattern(
  pattern: string,
  facts: CodeFacts,
  taken: ReadonlySet<string>,
): string {
  const usable = patternProblem(pattern) === null ? pattern : USUAL_PATTERN;
  const codeWith = (number: string) => filled(usable, partsOf(facts, number)) || number;
  if (usable.includes("{number}")) {
    for (let number = 1; number <= MOST_NUMBER; number += 1) {
      const code = codeWith(String(number).padStart(2, "0"));
      if (!taken.has(foldedCode(code))) return code;
    }
  }
  return freeCode(codeWith("1"), taken);
}

function partsOf(facts: CodeFacts, number: string): Readonly<Record<PatternPart, string>> {
  const year = facts.harvestYear === undefined ? "" : String(facts.harvestYear);
  return {
    kind: shortName(facts.kind),
    variety: shortName(facts.variety),
    year,
    yy: year.slice(-2),
    plot: facts.plot?.trim() ?? "",
    number,
  };
}

function filled(pattern: string, parts: Readonly<Record<PatternPart, string>>): string {
  const text = pattern.replace(/([-_/. ]?)\{(\w+)\}/g, (_, sign: string, name: PatternPart) =>
    parts[name] === "" ? "" : sign + parts[name],
  );
  return text.replace(/^[-_/. ]+/, "").trim();
}

/** `Amber Lantern` -> `AL`, `Dusk` -> `DUS`; letters and figures only. */
function shortName(name: string): string {
  const words = name
    .normalize("NFC")
    .toUpperCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== "");
  const [first = ""] = words;
  if (words.length < 2) return Array.from(first).slice(0, SHORT_LETTERS).join("");
  return words.map((word) => Array.from(word)[0] ?? "").join("");
}
