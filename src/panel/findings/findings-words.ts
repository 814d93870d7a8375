/** Counts above the findings, and on what the clear pairs rest when there is nothing to report. */
import type { Severity } from "../../core/checks/finding.ts";
import { countWord } from "../../core/words/deed-words.ts";
import { type IsolationPair, countPairs } from "../../core/checks/isolation-pair.ts";
import { formOf } from "../../core/words/plurals.ts";

/** On a finding that the last change brought. */
export const NEW_MARK = "new";

/** What a screen reader hears of the button. */
export function waysOutOf(title: string): string {
  return `Ways out: ${title}`;
}

/** `Wild carrot by the road: only a rule of thumb keeps blooms apart`; without a cause the check alone. */
export function groupTitle(checkTitle: string, cause: string | null): string {
  if (cause === null) return checkTitle;
  return `${cause}: ${checkTitle.charAt(0).toLowerCase()}${checkTitle.slice(1)}`;
}

/** `Last change: 2 cleared, 1 new`; empty where it did neither. */
export function newsWords(cleared: number, fresh: number): string {
  const parts = [cleared > 0 && `${cleared} cleared`, fresh > 0 && `${fresh} new`].filter(
    (part) => part !== false,
  );
  return parts.length === 0 ? "" : `Last change: ${parts.join(", ")}`;
}

/** `2 conflicts, 1 caution, 1 unknown`; `none` when all are 0. */
export function countWords(counts: Readonly<Record<Severity, number>>): string {
  const parts = SEVERITIES.filter((severity) => counts[severity] > 0);
  if (parts.length === 0) return "none";
  return parts.map((severity) => countWord(counts[severity], severity)).join(", ");
}

const SEVERITIES = ["conflict", "caution", "unknown"] as const;

/**
 * What the absence of conflicts rests on. `pairs` are those that distance does not clear; time
 * and cover are fragile and are named with their numbers.
 * @param hasSeed whether anything that flowers is kept for seed: neighbours alone endanger nothing
 */
export function restingWords(pairs: readonly IsolationPair[], hasSeed: boolean): readonly string[] {
  if (!hasSeed)
    return ["Nothing that flowers for seed is placed yet, so there is nothing to check."];
  const counts = {
    unknown: countPairs(pairs, "unknown"),
    rare: countPairs(pairs, "conflict"),
    time: countPairs(pairs, "time"),
    cover: countPairs(pairs, "cover"),
  };
  const sentences = [
    counts.unknown > 0 &&
      `${pairCount(counts.unknown)} not known to be apart: a date or a figure is missing.`,
    counts.rare > 0 && `${pairCount(counts.rare)} too close, of species that cross rarely.`,
    counts.time > 0 &&
      `${pairCount(counts.time)} kept apart by time alone: a late spring or a second flush can close the gap.`,
    counts.cover > 0 &&
      `${pairCount(counts.cover)} kept apart by cover alone: a torn mesh or a late bag undoes it.`,
  ].filter((sentence) => sentence !== false);
  if (sentences.length === 0) {
    return ["Every pair that could cross is at least its required distance apart."];
  }
  return [
    ...sentences,
    "All other pairs that could cross are at least their required distance apart.",
  ];
}

function pairCount(count: number): string {
  return formOf(count, { one: "1 pair is", other: `${count} pairs are` });
}
