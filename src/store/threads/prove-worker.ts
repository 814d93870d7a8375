/**
 * Looks through all choices of slots on a thread of its own. The solver is fetched by this thread
 * alone, when it is first asked for. Gets one request and sends one answer.
 */
import loadHighs from "highs";
import solverUrl from "highs/runtime?url";
import { type Place, arrangeProblem } from "../../core/arrange/arrange-problem.ts";
import {
  type ArrangedCounts,
  type MovedPiece,
  countsArranged,
  movedPieces,
} from "../../core/arrange/arranged-layout.ts";
import { type SlotProof, fewestInSlots } from "../../core/arrange/fewest-in-slots.ts";
import { checkLayout } from "../../core/checks/checked-layout.ts";
import { addPlantings } from "../../core/edits/object-edits.ts";
import type { Plan, Planting } from "../../core/model/plan.ts";

export interface ProveRequest {
  readonly plan: Plan;
  readonly layoutId: string;
  /** Plantings the search added to it. */
  readonly added: readonly Planting[];
  /** What the search found, for the plantings of that layout that may move. */
  readonly places: readonly (Place | null)[];
  /** Longest time to look, seconds. */
  readonly seconds: number;
}

export interface ProveAnswer {
  readonly proof: SlotProof;
  /** The proven layout's moves; none when nothing is proven. */
  readonly moved: readonly MovedPiece[];
  /** What the checks find in that layout. */
  readonly after: ArrangedCounts;
}

async function prove(request: ProveRequest): Promise<void> {
  const { layoutId, places, seconds } = request;
  const plan = addPlantings(layoutId, request.added, "").apply(request.plan);
  const checked = checkLayout(plan, layoutId);
  if (checked.layout.id !== layoutId) throw new Error("The layout is no longer there.");
  const problem = arrangeProblem(checked);
  const highs = await loadHighs({ locateFile: () => solverUrl });
  const proof = fewestInSlots(problem, places, highs, seconds);
  const moved = proof.kind === "proven" ? movedPieces(problem, proof.places) : [];
  const after = countsArranged(plan, layoutId, moved);
  const answer: ProveAnswer = { proof, moved, after };
  postMessage(answer);
}

addEventListener("message", ({ data }: MessageEvent<ProveRequest>) => {
  void prove(data).catch((fault: unknown) => {
    // Brought to the window as the worker's own error event.
    setTimeout(() => {
      throw fault;
    });
  });
});
