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
