/**
 * Clears all conflicts of a layout on a thread of its own. The solver is fetched by this thread
 * alone; where it cannot be, the answer is a search's. Gets one request, sends progress and one
 * answer; whoever cancels ends the thread.
 */
import loadHighs, { type Highs } from "highs";
import solverUrl from "highs/runtime?url";
import { checkLayout } from "../../core/checks/checked-layout.ts";
import { joinGroundReckoning } from "../../core/checks/ground-checks.ts";
import { joinSeedReckoning } from "../../core/checks/seed-lots.ts";
import { provenChoices } from "../../core/clearing/choice-proof.ts";
import {
  type Clearing,
  type Prover,
  clearEverything,
} from "../../core/clearing/clear-everything.ts";
import { groundReckoning } from "../../core/ground/ground-reckoning.ts";
import type { Plan } from "../../core/model/plan.ts";
import { seedReckoning } from "../../core/shelf/seed-reckoning.ts";

joinSeedReckoning(seedReckoning);
joinGroundReckoning(groundReckoning);

export interface ClearRequest {
  readonly plan: Plan;
  readonly layoutId: string;
  /** Null: as many as it takes. */
  readonly mostCages: number | null;
  readonly mostDays: number;
  readonly staying: readonly string[];
  readonly mayWait: readonly string[];
  /** Longest time the solver may take, seconds. */
  readonly seconds: number;
}

export interface ClearProgress {
  readonly kind: "progress";
  /** Conflicts that the best so far leaves. */
  readonly left: number;
}

export type ClearAnswer = { readonly kind: "answer" } & Clearing;

/** Between messages, milliseconds. */
const TURN_MS = 80;

async function clear(request: ClearRequest): Promise<void> {
  const { plan, layoutId, mostCages, mostDays, staying, mayWait, seconds } = request;
  const checked = checkLayout(plan, layoutId);
  const highs: Highs | null = await loadHighs({ locateFile: () => solverUrl }).catch(() => null);
  const prove: Prover | null =
    highs && ((problem, first) => provenChoices(problem, first.taken, highs, seconds));
  const allowances = {
    mostCages: mostCages ?? Infinity,
    mostDays,
    staying: new Set(staying),
    mayWait: new Set(mayWait),
  };
  const run = clearEverything(checked, allowances, prove);
  let told = performance.now();
  let next = run.next();
  while (next.done !== true) {
    const now = performance.now();
    if (now - told > TURN_MS) {
      told = now;
      const progress: ClearProgress = { kind: "progress", left: next.value };
      postMessage(progress);
    }
    next = run.next();
  }
  const answer: ClearAnswer = { kind: "answer", ...next.value };
  postMessage(answer);
}

addEventListener("message", ({ data }: MessageEvent<ClearRequest>) => {
  void clear(data).catch((fault: unknown) => {
    // Brought to the window as the worker's own error event.
    setTimeout(() => {
      throw fault;
    });
  });
});
