/** What placing a variety in a bed would bring, tried on the kept plan. */
import { newPlanting } from "../../core/edits/new-planting.ts";
import { addPlantings } from "../../core/edits/object-edits.ts";
import { type FoundPlace, type Wanted, findPlace } from "../../core/beds/find-place.ts";
import { describeFinding } from "../../core/checks/all-checks.ts";
import { type CheckedLayout, recheckLayout, wordingOf } from "../../core/checks/checked-layout.ts";
import type { Edit } from "../../core/edits/edit.ts";
import type { Bed, Planting, Variety } from "../../core/model/plan.ts";

export interface PlaceTrial {
  readonly found: FoundPlace;
  /** As it would stand, and the edit that puts it there. */
  readonly planting: Planting;
  readonly edit: Edit;
  /** Titles of the conflicts it would bring. */
  readonly conflicts: readonly string[];
  /** How much it would bring that cannot be told, such as a pair of which one has no dates. */
  readonly unknowns: number;
}

/** Null where the bed has no room. */
export function tryPlace(
  kept: CheckedLayout,
  bed: Bed,
  variety: Variety,
  wanted: Wanted,
): PlaceTrial | null {
  const found = findPlace(kept.plan, kept.layout, bed, wanted);
  if (!found) return null;
  const { plan, layout } = kept;
  // A day that is not said yet stays so, unless it follows from what is cleared there.
  const { start: _asOthers, ...undated } = newPlanting(plan, layout, bed, variety, found.placed);
  const start = found.after ? found.start : wanted.start;
  const planting = start ? { ...undated, start } : undated;
  const edit = addPlantings(layout.id, [planting], "");
  const after = recheckLayout(kept, edit.apply(plan));
  const tried = { found, planting, edit };
  if (!after) return { ...tried, conflicts: [], unknowns: 1 };
  const known = new Set(kept.result.findings.map(({ id }) => id));
  const wording = wordingOf(after);
  const brought = after.result.findings.filter(({ id }) => !known.has(id));
  return {
    ...tried,
    unknowns: brought.filter(({ severity }) => severity === "unknown").length,
    conflicts: brought
      .filter(({ severity }) => severity === "conflict")
      .map((finding) => describeFinding(finding, wording).title),
  };
}

/** Beds tried for the first answer: enough for a garden, and no wait on a farm. */
const MOST_TRIED = 40;

/**
 * The bed to begin with: of those with room for all plants the first that brings neither a conflict
 * nor a pair that cannot be told, else the one with fewest; else the one that takes most plants.
 * Undefined where none has room.
 */
export function likelyBed(kept: CheckedLayout, variety: Variety, wanted: Wanted): Bed | undefined {
  let best: { readonly bed: Bed; readonly cost: number } | undefined;
  for (const bed of kept.layout.beds.slice(0, MOST_TRIED)) {
    const trial = tryPlace(kept, bed, variety, wanted);
    if (!trial) continue;
    const missing = wanted.plants - trial.found.placed.plants;
    const cost = missing * kept.result.stands.length + trial.conflicts.length + trial.unknowns;
    if (!best || cost < best.cost) best = { bed, cost };
    if (cost === 0) break;
  }
  return best?.bed;
}
