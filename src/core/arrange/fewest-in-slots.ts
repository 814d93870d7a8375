/** The fewest conflicts any choice of slots has, proven by a mixed-integer solver that is handed in. */
import type { Highs } from "highs";
import type { ArrangeProblem, Place } from "./arrange-problem.ts";
import { put, startState, wholeTrouble } from "./arrange-state.ts";
import { slotModel } from "./slot-model.ts";
import { type Slot, slotsOf } from "./slots.ts";

export type SlotProof =
  | {
      /** No choice of slots has fewer conflicts than these places, and no two lie on each other. */
      readonly kind: "proven";
      readonly conflicts: number;
      readonly places: readonly (Place | null)[];
      /** Slots of all pieces together. */
      readonly slots: number;
    }
  | {
      /** Time ran out; so much is sure: every choice of slots has at least so many conflicts. */
      readonly kind: "open";
      readonly atLeast: number;
      readonly slots: number;
    }
  /** The slots do not let all pieces lie clear of each other's ground. */
  | { readonly kind: "no-room"; readonly slots: number };

/**
 * Looks through all choices of slots by branch and bound. The slots hold where each piece lies now
 * and the places found by a search, so the answer is never worse than that search's.
 */
export function fewestInSlots(
  problem: ArrangeProblem,
  found: readonly (Place | null)[],
  highs: Highs,
  seconds: number,
): SlotProof {
  const slots = slotsOf(problem, found);
  const { numSlots, ...data } = slotModel(problem, slots);
  if (slots.some((list) => list.length === 0)) return { kind: "no-room", slots: numSlots };
  return highs.withModel(data, (model): SlotProof => {
    // Conflicts are whole: what lies less than one above the bound is the optimum.
    model.options.set({
      output_flag: false,
      time_limit: seconds,
      mip_rel_gap: 0,
      mip_abs_gap: 0.999,
    });
    const start = startOf(slots, found);
    if (start) model.setSolution(start);
    model.run();
    const status = model.getModelStatus();
    if (status === highs.constants.modelStatus.infeasible) {
      return { kind: "no-room", slots: numSlots };
    }
    if (status !== highs.constants.modelStatus.optimal) {
      const bound = Number(model.info.get("mip_dual_bound"));
      const atLeast = Number.isFinite(bound) ? Math.max(0, Math.ceil(bound - 1e-6)) : 0;
      return { kind: "open", atLeast, slots: numSlots };
    }
    const places = chosen(slots, model.getSolution().colValue);
    const conflicts = Math.round(model.getObjectiveValue());
    confirm(problem, places, conflicts);
    return { kind: "proven", conflicts, places, slots: numSlots };
  });
}

/** Columns of the slots a search found, as a start for the solver. */
function startOf(slots: readonly (readonly Slot[])[], found: readonly (Place | null)[]) {
  const indices: number[] = [];
  let first = 0;
  for (const [piece, list] of slots.entries()) {
    const place = found[piece] ?? null;
    const slot = list.findIndex((entry) => entry.place === place);
    if (slot < 0) return null;
    indices.push(first + slot);
    first += list.length;
  }
  return { indices, values: indices.map(() => 1) };
}

function chosen(
  slots: readonly (readonly Slot[])[],
  values: ArrayLike<number>,
): readonly (Place | null)[] {
  let first = 0;
  return slots.map((list) => {
    const slot = list.find((_, index) => (values[first + index] ?? 0) > 0.5);
    first += list.length;
    return slot?.place ?? null;
  });
}

/** The solver's answer, counted again without it. */
function confirm(problem: ArrangeProblem, places: readonly (Place | null)[], conflicts: number) {
  const state = startState(problem);
  places.forEach((place, index) => put(problem, state, index, place));
  const counted = wholeTrouble(problem, state);
  if (counted.overlaps > 0 || counted.conflicts !== conflicts) {
    throw new Error("The solver's count is not what the places have.");
  }
}
