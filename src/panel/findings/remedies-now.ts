import type { Remedy } from "../../core/remedies/remedy.ts";
import { tangleOf, tangleWords } from "../../core/remedies/plantings-that-can-stay.ts";
import { type CheckedLayout, wordingOf } from "../../core/checks/checked-layout.ts";
import { type Finding, checkOf, describeFinding } from "../../core/checks/all-checks.ts";
import { type EstimateWords, estimateWords } from "../../core/crossing-share/estimate-words.ts";
import { estimateOf, mostAtRisk, shareAfterWords } from "../../core/crossing-share/share-after.ts";
import { type ToldWay, hasWaysOut, toldWays } from "../../core/remedies/told-ways.ts";
import type { ConflictEffect } from "./ways-out-words.ts";
import { countBySeverity } from "../../core/checks/finding.ts";
import { broughtWords } from "./ways-out-words.ts";

/** A way out, and what else it would change. */
export interface ShownRemedy extends ToldWay {
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
  if (!finding || !hasWaysOut(finding)) return NONE;
  const wording = wordingOf(kept);
  const tangle = tangleOf(result, finding);
  const atRisk = checkOf(finding).pairsAtRisk?.(finding) ?? [];
  const worst = mostAtRisk(kept, atRisk);
  return {
    crossing: crossingOf(kept, worst?.id ?? atRisk[0]?.seedParent),
    title: describeFinding(finding, wording).title,
    requiredM: finding.requiredM ?? null,
    tangle: tangle ? tangleWords(tangle, wording.nameOf) : [],
    remedies: toldWays(kept, finding).map((way) => ({
      ...way,
      shareWords: worst && shareAfterWords(kept, worst, way.edit),
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
  return broughtWords(caution, unknown);
}
