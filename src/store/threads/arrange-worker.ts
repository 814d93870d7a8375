/**
 * Arranges plantings on a thread of its own, so that the window stays live. Gets one request, sends
 * progress while it works and one answer at the end; any later message makes it stop with what it has.
 */
import { anneal } from "../../core/arrange/anneal.ts";
import { type Place, arrangeProblem } from "../../core/arrange/arrange-problem.ts";
import {
  type ArrangedCounts,
  type MovedPiece,
  arrangedCounts,
  countsArranged,
  movedPieces,
} from "../../core/arrange/arranged-layout.ts";
import type { Trouble } from "../../core/arrange/arrange-state.ts";
import { type ShortVariety, missingPlantings } from "../../core/arrange/missing-plantings.ts";
import { checkLayout } from "../../core/checks/checked-layout.ts";
import { addPlantings } from "../../core/edits/object-edits.ts";
import type { Plan, Planting } from "../../core/model/plan.ts";

export interface ArrangeRequest {
  readonly plan: Plan;
  readonly layoutId: string;
  readonly seed: number;
  /** Longest time to look, seconds. */
  readonly seconds: number;
  /** Also places what the seed list still wants. */
  readonly doesPlace: boolean;
}

export interface ArrangeProgress {
  readonly kind: "progress";
  /** Share of time or steps used up, 0 to 1. */
  readonly share: number;
  readonly conflicts: number;
}

export interface ArrangeAnswer {
  readonly kind: "answer";
  readonly moved: readonly MovedPiece[];
  /** Plantings the layout had not, where they lay before the moves. */
  readonly added: readonly Planting[];
  /** Plants that found no room. */
  readonly left: readonly ShortVariety[];
  /** What the checks find in the layout as it is, and in the new one. */
  readonly before: ArrangedCounts;
  readonly after: ArrangedCounts;
  /** Plantings that could have been moved. */
  readonly movable: number;
  /** The answer as a proof takes it up. */
  readonly places: readonly (Place | null)[];
  readonly trouble: Trouble;
}

/** Steps for each piece: more find little more. */
const STEPS_EACH = 20_000;
const LEAST_STEPS = 100_000;
/** Between looks at the clock and the messages, milliseconds. */
const TURN_MS = 60;

let isStopped = false;

async function arrange(request: ArrangeRequest): Promise<void> {
  const { layoutId, seed, seconds } = request;
  const before = checkLayout(request.plan, layoutId);
  if (before.layout.id !== layoutId) throw new Error("The layout is no longer there.");
  const { added, left } = request.doesPlace
    ? missingPlantings(request.plan, before.layout, before.book)
    : { added: [], left: [] };
  const plan = addPlantings(layoutId, added, "").apply(request.plan);
  const problem = arrangeProblem(checkLayout(plan, layoutId, before.result));
  const steps = Math.max(LEAST_STEPS, problem.pieces.length * STEPS_EACH);
  const start = performance.now();
  let turn = start;
  const run = anneal(problem, { seed, steps });
  let next = run.next(false);
  while (next.done !== true) {
    const now = performance.now();
    const share = Math.max(next.value.done / steps, (now - start) / (seconds * 1000));
    if (now - turn > TURN_MS) {
      turn = now;
      const { conflicts, overlaps } = next.value.best;
      send({ kind: "progress", share: Math.min(1, share), conflicts: conflicts + overlaps });
      await new Promise((resolve) => setTimeout(resolve));
    }
    next = run.next(isStopped || share >= 1);
  }
  const { places, trouble } = next.value;
  const moved = movedPieces(problem, places);
  send({
    kind: "answer",
    moved,
    added,
    left,
    before: arrangedCounts(before),
    after: countsArranged(plan, layoutId, moved),
    movable: problem.pieces.length,
    places,
    trouble,
  });
}

function send(message: ArrangeProgress | ArrangeAnswer): void {
  postMessage(message);
}

let isStarted = false;
addEventListener("message", ({ data }: MessageEvent<ArrangeRequest>) => {
  if (isStarted) {
    isStopped = true;
    return;
  }
  isStarted = true;
  void arrange(data).catch((fault: unknown) => {
    // Brought to the window as the worker's own error event.
    setTimeout(() => {
      throw fault;
    });
  });
});
