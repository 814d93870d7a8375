/** What a spring later than reckoned would undo. */
import {
  type IsolationPair,
  countPairs,
  unorderedPairs,
} from "../../core/checks/isolation-pair.ts";
import { pairsLostToShift, timeSlackDays } from "../../core/checks/day-words.ts";

/** Two stands kept apart by time alone that a shift would bring together. */
export interface LostPair {
  readonly a: string;
  readonly b: string;
  /** Days the blooms may move together before the pair is no longer clear. */
  readonly slackDays: number;
}

export interface SpringTest {
  /** Pairs of stands that rest on time alone, whichever way pollen goes. */
  readonly resting: number;
  /** Those that fail, the tightest first. */
  readonly lost: readonly LostPair[];
}

/** @param shiftDays days by which one bloom of a pair may come nearer the other */
export function springTest(pairs: readonly IsolationPair[], shiftDays: number): SpringTest {
  const lost = [...unorderedPairs(pairsLostToShift(pairs, shiftDays)).values()];
  return {
    resting: countPairs(pairs, "time"),
    lost: lost.flatMap(([pair]) => {
      if (!pair) return [];
      const [a = "", b = ""] = [pair.seedParent, pair.pollenSource].sort();
      return [{ a, b, slackDays: timeSlackDays(pair) ?? 0 }];
    }),
  };
}
