import { lotsFromTexts } from "./migrate-lots.ts";
import { PLAN_VERSION } from "./limits.ts";

type RawPlan = Readonly<Record<string, unknown>>;

/**
 * One step per version: `steps[n]` turns a version n document into version n + 1.
 *
 * Version 2 added locked beds and surroundings, fences, trees and slopes, earlier crops and the
 * picture under the drawing. All are new or optional, so only the number changes.
 *
 * Version 3 added the seed shelf: the text `lot` of plantings and varieties became lots.
 */
const steps: Readonly<Record<number, (raw: RawPlan) => RawPlan>> = {
  1: (raw) => ({ ...raw, version: 2 }),
  2: lotsFromTexts,
};

/** Brings an older document to the present version. `version` must be 1 to PLAN_VERSION. */
export function migrate(raw: RawPlan, version: number): RawPlan {
  let current = raw;
  for (let from = version; from < PLAN_VERSION; from += 1) {
    const step = steps[from];
    if (!step) throw new Error(`No migration from plan version ${from}`);
    current = step(current);
  }
  return current;
}
