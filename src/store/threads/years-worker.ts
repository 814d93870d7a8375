/**
 * Lays out the years on a thread of its own: a first answer at once, then the solver's, and how far
 * it is proven. The solver is fetched by this thread alone. Gets one request, sends progress and
 * one answer.
 */
import loadHighs from "highs";
import solverUrl from "highs/runtime?url";
import { firstAnswer } from "../../core/renewal/first-answer.ts";
import { judgeYears } from "../../core/renewal/judge-years.ts";
import { type LeastSeasons, leastSeasons } from "../../core/renewal/least-seasons.ts";
import { type Clash, clashesOf } from "../../core/renewal/smallest-clash.ts";
import { gapOf, solveYears } from "../../core/renewal/solve-years.ts";
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

export interface YearsAnswered {
  readonly kind: "answer";
  readonly years: Years;
  /** How far above a proven bound; null: nothing is proven. */
  readonly gap: number | null;
  /** Varieties that cannot all be kept, whatever the years; none where all can, or nobody knows. */
  readonly clashes: readonly Clash[];
  /** Each once, whenever due. */
  readonly least: LeastSeasons;
}

async function layOut({ problem, seconds }: YearsRequest): Promise<YearsAnswered> {
  const first = firstAnswer(problem);
  const judged = judgeYears(problem, first);
  const isWhole = judged.faults.every(({ kind }) => kind === "exposed");
  const progress: YearsProgress = { kind: "progress", years: first, faults: judged.faults.length };
  postMessage(progress);
  const highs = await loadHighs({ locateFile: () => solverUrl });
  const answer = solveYears(problem, highs, { start: isWhole ? first : null, seconds });
  const clock = clockOf(seconds);
  const clashes = answer.kind === "cannot be" ? clashesOf(problem, highs, clock) : [];
  const least = leastSeasons(problem, highs, clockOf(seconds));
  if (answer.kind !== "found") return { kind: "answer", years: first, gap: null, clashes, least };
  const isBetter = !isWhole || answer.points < judged.points;
  return {
    kind: "answer",
    years: isBetter ? answer.years : first,
    gap: gapOf(Math.min(answer.points, isWhole ? judged.points : Infinity), answer.bound),
    clashes,
    least,
  };
}

/** Seconds left of so many from now on. */
function clockOf(seconds: number): () => number {
  const end = performance.now() + seconds * 1000;
  return () => (end - performance.now()) / 1000;
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
