import { findRemedies } from "../../core/remedies/find-remedies.ts";
import type { Remedy } from "../../core/remedies/remedy.ts";
import { tangleOf, tangleWords } from "../../core/remedies/plantings-that-can-stay.ts";
import { type CheckedLayout, wordingOf } from "../../core/checks/checked-layout.ts";
import { describeFinding, type Finding, checkOf } from "../../core/checks/all-checks.ts";
import { type EstimateWords, estimateWords } from "../../core/crossing-share/estimate-words.ts";
import { estimateOf, mostAtRisk, shareAfterWords } from "../../core/crossing-share/share-after.ts";
import { severityWord } from "../../core/checks/wording.ts";
import { type ConflictEffect, waysOutWords as words } from "./ways-out-words.ts";
import { countBySeverity } from "../../core/checks/run-checks.ts";

/** A way out, and what else it would change. */
export interface ShownRemedy extends Remedy {
  /** Titles of other conflicts it clears. */
  readonly alsoClears: readonly string[];
  /** What it brings or makes worse, each with its severity and title. */
  readonly bringsWords: readonly string[];
  /** Crossed seed before and after; null where it is not estimated. */
  readonly shareWords: string | null;
}

export interface Remedies {
  /** Title of the finding they are for; null when the plan no longer has it. */
  readonly title: string | null;
  /** Distance the finding requires now, metres. */
  readonly requiredM: number | null;
  readonly remedies: readonly ShownRemedy[];
  /** What can be said of all plantings tangled in conflicts with these; empty for a mere pair. */
  readonly tangle: readonly string[];
  /** How much would cross at the seed parent at most risk: its name, and the estimate in words. */
  readonly crossing: { readonly name: string; readonly words: EstimateWords } | null;
}

const NONE: Remedies = { title: null, requiredM: null, remedies: [], tangle: [], crossing: null };

/** Ways out of an isolation finding of the committed plan, made when asked for. */
export function remediesNow(kept: CheckedLayout, findingId: string): Remedies {
  const { result } = kept;
  const finding = result.findings.find((entry) => entry.id === findingId);
  if (!finding || checkOf(finding).hasWaysOut !== true) return NONE;
  const wording = wordingOf(kept);
  const titleOf = (entry: Finding) => describeFinding(entry, wording).title;
  const byId = new Map(result.findings.map((entry) => [entry.id, entry]));
  const tangle = tangleOf(result, finding);
  const atRisk = checkOf(finding).pairsAtRisk?.(finding) ?? [];
  const worst = mostAtRisk(kept, atRisk);
  return {
    crossing: crossingOf(kept, worst?.id ?? atRisk[0]?.seedParent),
    title: titleOf(finding),
    requiredM: finding.requiredM ?? null,
    tangle: tangle ? tangleWords(tangle, wording.nameOf) : [],
    remedies: findRemedies(kept, finding).map((remedy) => ({
      ...remedy,
      alsoClears: remedy.clears
        .filter((id) => id !== findingId)
        .flatMap((id) => byId.get(id) ?? [])
        .map(titleOf),
      bringsWords: remedy.brings.map((entry) =>
        words.brought(remedy.worsens.has(entry.id), severityWord[entry.severity], titleOf(entry)),
      ),
      shareWords: worst && shareAfterWords(kept, worst, remedy.edit),
    })),
  };
}

function crossingOf(kept: CheckedLayout, id: string | undefined): Remedies["crossing"] {
  const estimate = id === undefined ? null : estimateOf(kept, id);
  if (id === undefined || estimate === null) return null;
  const wording = wordingOf(kept);
  return { name: wording.nameOf(id), words: estimateWords(estimate, kept.result, wording) };
}

export function effectOf({ brings, worsens, clears, conflictsAfter }: Remedy): ConflictEffect {
  return {
    clears: clears.length,
    left: conflictsAfter,
    brings: countedWords(brings.filter(({ id }) => !worsens.has(id))),
    worsens: countedWords(brings.filter(({ id }) => worsens.has(id))),
  };
}

function countedWords(findings: readonly Finding[]): string {
  const { caution, unknown } = countBySeverity(findings);
  return [counted(caution, "caution"), counted(unknown, "unknown")]
    .filter((part) => part !== null)
    .join(" and ");
}

function counted(count: number, word: string): string | null {
  if (count === 0) return null;
  return count === 1 ? `1 ${word}` : `${count} ${word}s`;
}
