/** What the program says of a pair, in the words a practitioner's verdict is written in. */
import type { Severity } from "../../src/core/checks/finding.ts";
import type { Standing } from "../../src/core/checks/isolation-pair.ts";
import { type Verdict, type VerdictGarden, pairsNamed } from "./verdict-garden.ts";

export interface GivenFinding {
  readonly check: string;
  readonly severity: Severity;
  readonly subjects: readonly (string | number)[];
  /** Of the subjects those whose seed it is about; absent: of all. */
  readonly parents?: readonly (string | number)[];
  readonly title: string;
  readonly sentences: readonly string[];
}

/** What screen and command line both hold of a plan. */
export interface Given {
  readonly pairs: readonly {
    readonly seedParent: string | number;
    readonly pollenSource: string | number;
    readonly standing: Standing;
  }[];
  readonly findings: readonly GivenFinding[];
}

const WORST: readonly Severity[] = ["conflict", "unknown", "caution"];

/** What is said of one seed parent and one source. */
export function verdictGiven(given: Given, parent: string, source: string): Verdict {
  const standing = standingOf(given, parent, source);
  if (standing === "unknown") return "unknown";
  const isOppositeAtRisk = standingOf(given, source, parent) === "conflict";
  const about = naming(given, parent, source).filter(
    ({ check, parents }) =>
      parents?.includes(parent) !== false &&
      (check !== "isolation" || standing === "conflict" || !isOppositeAtRisk) &&
      // Of the two directions only those that time clears rest on it.
      (check !== "unsure-time" || standing === "time"),
  );
  const worst = WORST.find((severity) => about.some((finding) => finding.severity === severity));
  // Lots of one name are no pair of the isolation rule, and may be told of all the same.
  return worst ?? standing ?? "none";
}

/** All words of the findings that name both. */
export function wordsGiven(given: Given, parent: string, source: string): string {
  return naming(given, parent, source).map(textOf).join("\n");
}

/** All that differs between what is said and what a practitioner signs; empty: nothing. */
export function disagreements(garden: VerdictGarden, given: Given): readonly string[] {
  const verdicts = Object.entries(garden.verdict).flatMap(([key, signed]) =>
    pairsNamed(key).flatMap(([parent, source]) => {
      const said = verdictGiven(given, parent, source);
      const wanted = typeof signed === "string" ? [signed] : signed;
      return wanted.some((each) => isMet(each, said))
        ? []
        : [`${parent}<-${source}: said "${said}", signed ${wanted.join(" or ")}`];
    }),
  );
  const words = Object.entries(garden.says).flatMap(([key, list]) =>
    pairsNamed(key).flatMap(([parent, source]) => {
      const text = wordsGiven(given, parent, source);
      return list
        .filter((each) => !text.toLowerCase().includes(each.toLowerCase()))
        .map((each) => `${parent}<-${source}: "${each}" is not in: ${text}`);
    }),
  );
  const told = garden.told.flatMap(({ about, severity, words: list }) => {
    const text = given.findings
      .filter((finding) => finding.severity === severity && finding.subjects.includes(about))
      .map(textOf)
      .join("\n");
    return list
      .filter((each) => !text.toLowerCase().includes(each.toLowerCase()))
      .map((each) => `${about}: no ${severity} says "${each}": ${text}`);
  });
  return [...verdicts, ...words, ...told];
}

function isMet(signed: Verdict, said: Verdict): boolean {
  if (signed !== "clear") return signed === said;
  return said === "distance" || said === "time" || said === "cover";
}

function standingOf(given: Given, parent: string, source: string): Standing | undefined {
  return given.pairs.find((pair) => pair.seedParent === parent && pair.pollenSource === source)
    ?.standing;
}

/** Findings about both, but for those about ground rather than pollen. */
function naming({ findings }: Given, one: string, other: string): readonly GivenFinding[] {
  return findings.filter(
    ({ check, severity, subjects }) =>
      subjects.includes(one) &&
      subjects.includes(other) &&
      check !== "safety" &&
      !(check === "overlap" && severity === "caution"),
  );
}

function textOf({ title, sentences }: GivenFinding): string {
  return [title, ...sentences].join(" ");
}
