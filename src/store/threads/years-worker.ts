/**
 * Lays out the years on a thread of its own: a first answer at once, then the solver's, and how far
 * it is proven. The solver is fetched by this thread alone. Gets one request, sends progress and
 * one answer.
 */
import loadHighs from "highs";
import solverUrl from "highs/runtime?url";
import { firstAnswer } from "../../core/renewal/first-answer.ts";
import { judgeYears } from "../../core/renewal/judge-years.ts";
import { type ProvenYears, provenYears } from "../../core/renewal/proven-years.ts";
import type { Years, YearsProblem } from "../../core/renewal/years-problem.ts";

export interface YearsRequest {
  readonly problem: YearsProblem;
  /** Longest time for the solver, and as much again for what it proves besides. */
  readonly seconds: number;
}

/** The first answer, in the order of the plan's rows; what comes after is proof. */
export interface YearsProgress {
  readonly kind: "progress";
  readonly years: Years;
  readonly faults: number;
}

export type YearsAnswered = { readonly kind: "answer" } & ProvenYears;

async function layOut({ problem, seconds }: YearsRequest): Promise<YearsAnswered> {
  const first = firstAnswer(problem);
  const { faults } = judgeYears(problem, first);
  const progress: YearsProgress = { kind: "progress", years: first, faults: faults.length };
  postMessage(progress);
  const highs = await loadHighs({ locateFile: () => solverUrl });
  const now = () => performance.now();
  return { kind: "answer", ...provenYears(problem, first, highs, { seconds, now }) };
}

addEventListener("message", ({ data }: MessageEvent<YearsRequest>) => {
  void layOut(data)
    .then((answer) => postMessage(answer))
    .catch((fault: unknown) => {
      // Brought to the window as the worker's own error event.
      setTimeout(() => {
        throw fault;
      });
    });
});
