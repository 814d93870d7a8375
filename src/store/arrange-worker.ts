/**
 * Arranges plantings on a thread of its own, so that the window stays live. Gets one request, sends
 * progress while it works and one answer at the end; any later message makes it stop with what it has.
 */
import { anneal } from "../core/arrange/anneal.ts";
import { arrangeProblem } from "../core/arrange/arrange-problem.ts";
import { type MovedPiece, arrangedLayout, movedPieces } from "../core/arrange/arranged-layout.ts";
import { countBySeverity, runChecks } from "../core/checks/run-checks.ts";
import { planBook } from "../core/crops/own-kinds.ts";
import type { Layout, Plan } from "../core/model/plan.ts";

export interface ArrangeRequest {
  readonly plan: Plan;
  readonly layoutId: string;
  readonly seed: number;
  /** Longest time to look, seconds. */
  readonly seconds: number;
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
  readonly conflictsBefore: number;
  /** Conflicts the checks find in the new layout. */
  readonly conflictsAfter: number;
  /** Plantings that could have been moved. */
  readonly movable: number;
}

/** Steps for each piece: more find little more. */
const STEPS_EACH = 20_000;
const LEAST_STEPS = 100_000;
/** Between looks at the clock and the messages, milliseconds. */
const TURN_MS = 60;

let isStopped = false;

async function arrange({ plan, layoutId, seed, seconds }: ArrangeRequest): Promise<void> {
  const layout = plan.layouts.find(({ id }) => id === layoutId);
  if (!layout) throw new Error("The layout is no longer there.");
  const book = planBook(plan);
  const result = runChecks(plan, layout, book);
  const problem = arrangeProblem(layout, result);
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
  const moved = movedPieces(problem, next.value.places);
  const newId = `${layoutId} arranged`;
  const after = arrangedLayout(layoutId, newId, "", moved).apply(plan);
  const arranged = after.layouts.find(({ id }) => id === newId) as Layout;
  send({
    kind: "answer",
    moved,
    conflictsBefore: countBySeverity(result.findings).conflict,
    conflictsAfter: countBySeverity(runChecks(after, arranged, book).findings).conflict,
    movable: problem.pieces.length,
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
