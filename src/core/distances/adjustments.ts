/**
 * Changes to a distance that regulations themselves give. None is ever applied unasked: a grower
 * states that its condition holds, the choice is recorded, and the steps show what it did.
 */
import { METRES_PER_FOOT } from "../model/length.ts";
import type { Adjustment, AdjustmentEffect } from "./adjustment.ts";
import { largerDistances, smallerDistances } from "./adjustment-table.ts";

export const adjustments: readonly Adjustment[] = [...smallerDistances, ...largerDistances];

/** The adjustments printed for a kind. */
export function adjustmentsOf(kindId: string): readonly Adjustment[] {
  return adjustments.filter((entry) => entry.kinds.includes(kindId));
}

export interface AdjustmentStep {
  readonly adjustment: string;
  readonly fromM: number;
  readonly toM: number;
}

export interface AdjustedDistance {
  readonly metres: number;
  /** One step for each adjustment, in the order given, for the record. */
  readonly steps: readonly AdjustmentStep[];
}

/** A required distance (metres) after the adjustments a grower chose, applied in order. */
export function adjustedDistance(
  requiredM: number,
  chosen: readonly Adjustment[],
): AdjustedDistance {
  const steps: AdjustmentStep[] = [];
  let metres = requiredM;
  for (const { id, effect } of chosen) {
    const toM = adjustOnce(metres, effect);
    steps.push({ adjustment: id, fromM: metres, toM });
    metres = toM;
  }
  return { metres, steps };
}

function adjustOnce(metres: number, effect: AdjustmentEffect): number {
  switch (effect.kind) {
    case "times":
      return metres * effect.factor;
    case "at most":
      return Math.min(metres, effect.feet * METRES_PER_FOOT);
    case "at least":
      return Math.max(metres, effect.feet * METRES_PER_FOOT);
  }
}

/** Highest share of plants in bloom, percent, at which a field counts as not in bloom. */
export const BLOOM_STARTS_PERCENT = 1;
/** Highest sum of the two fields' shares, percent, while either is in bloom. */
export const BLOOM_SUM_PERCENT = 5;

/**
 * The bloom-percentage rule of 7 CFR 201.76 footnote 21, printed for hybrid barley, hybrid wheat
 * and commercial hybrid sorghum: two fields may lie as near as mechanical separation allows if,
 * whenever more than 1 % of the plants of either are in bloom, the two shares add up to no more
 * than 5 %. Takes the shares (percent) of both fields day by day from the same first day; gives
 * the place of the first day that breaks the rule, or null when none does. A day missing from
 * the shorter list counts as no bloom.
 */
export function firstBloomBreach(
  sharesA: readonly number[],
  sharesB: readonly number[],
): number | null {
  const days = Math.max(sharesA.length, sharesB.length);
  for (let day = 0; day < days; day += 1) {
    const a = sharesA[day] ?? 0;
    const b = sharesB[day] ?? 0;
    if (Math.max(a, b) > BLOOM_STARTS_PERCENT && a + b > BLOOM_SUM_PERCENT) return day;
  }
  return null;
}
