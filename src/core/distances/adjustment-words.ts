/** What an adjustment does to a distance, in words. */
import { METRES_PER_FOOT } from "../model/length.ts";
import type { AdjustmentEffect } from "./adjustment.ts";

/** E.g. "half the distance" or "at most 410 ft (124.97 m)". */
export function adjustmentWords(effect: AdjustmentEffect): string {
  switch (effect.kind) {
    case "times":
      return effect.factor === 0.5 ? "half the distance" : `${effect.factor} times the distance`;
    case "at most":
      return effect.feet === 0 ? "no distance" : `at most ${lengthWords(effect.feet)}`;
    case "at least":
      return `at least ${lengthWords(effect.feet)}`;
  }
}

function lengthWords(feet: number): string {
  return `${feet} ft (${Number((feet * METRES_PER_FOOT).toFixed(2))} m)`;
}
