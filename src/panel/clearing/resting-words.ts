/** On what the clear pairs rest when there is no conflict to report. */
import { type IsolationPair, countPairs } from "../../core/checks/isolation-pair.ts";
import { formOf } from "../../core/words/plurals.ts";

export const noConflict = "No conflict.";
export const noConflictFoundBut = "No conflict found, but not all is known.";

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
