/** How fragile isolation in time is: days of slack, and what a late spring would undo. */
import type { IsolationPair } from "./isolation-pair.ts";

/** Days by which the gap of a pair resting on time exceeds what is wanted; null for other pairs. */
export function timeSlackDays(pair: IsolationPair): number | null {
  if (pair.standing !== "time" || pair.gapDays === null) return null;
  return pair.gapDays - pair.guardDays;
}

/**
 * Pairs resting on time that would no longer be clear if one of the two bloomed up to `shiftDays`
 * nearer the other than predicted: the least slack first.
 */
export function pairsLostToShift(
  pairs: readonly IsolationPair[],
  shiftDays: number,
): readonly IsolationPair[] {
  return pairs
    .flatMap((pair) => {
      const slack = timeSlackDays(pair);
      return slack !== null && slack < shiftDays ? [{ pair, slack }] : [];
    })
    .sort((a, b) => a.slack - b.slack)
    .map(({ pair }) => pair);
}
