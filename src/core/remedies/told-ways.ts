/** Ways out as they are told, on screen and on the command line: each with what it does to the rest. */
import { type Finding, checkOf, describeFinding } from "../checks/all-checks.ts";
import { type CheckedLayout, wordingOf } from "../checks/checked-layout.ts";
import { severityWord } from "../checks/wording.ts";
import { findRemedies } from "./find-remedies.ts";
import type { Remedy } from "./remedy.ts";
import { wayWords } from "./way-words.ts";

/** A way out, and what else it would change. */
export interface ToldWay extends Remedy {
  /** Titles of other conflicts it clears. */
  readonly alsoClears: readonly string[];
  /** What it brings or makes worse, each with its severity and title. */
  readonly bringsWords: readonly string[];
}

/** Whether ways out are looked for at all: not of what a single change cannot be tried on. */
export function hasWaysOut(finding: Finding): boolean {
  return checkOf(finding).hasWaysOut === true;
}

/** Ways out of a finding that has them, the best first; none when no single change clears it. */
export function toldWays(checked: CheckedLayout, finding: Finding): readonly ToldWay[] {
  const wording = wordingOf(checked);
  const titleOf = (entry: Finding) => describeFinding(entry, wording).title;
  const byId = new Map(checked.result.findings.map((entry) => [entry.id, entry]));
  return findRemedies(checked, finding).map((remedy) => ({
    ...remedy,
    alsoClears: remedy.clears
      .filter((id) => id !== finding.id)
      .flatMap((id) => byId.get(id) ?? [])
      .map(titleOf),
    bringsWords: remedy.brings.map((entry) =>
      wayWords.brought(remedy.worsens.has(entry.id), severityWord[entry.severity], titleOf(entry)),
    ),
  }));
}
