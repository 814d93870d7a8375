/** A first lay-out of the years, made better and proven as far as time lets, by a solver handed in. */
import type { Highs } from "highs";
import { judgeYears } from "./judge-years.ts";
import { type LeastSeasons, leastSeasons } from "./least-seasons.ts";
import { type Clash, clashesOf } from "./smallest-clash.ts";
import { gapOf, solveYears } from "./solve-years.ts";
import type { Years, YearsProblem } from "./years-problem.ts";

export interface YearsProof {
  /** What is proven of the years kept; null: nothing. How far above a proven bound, share of it. */
  readonly gap: number | null;
  /** Varieties that cannot all be kept, whatever the years; none where all can, or nobody knows. */
  readonly clashes: readonly Clash[];
  /** Each once, whenever due. */
  readonly least: LeastSeasons;
}

export interface ProvenYears extends YearsProof {
  readonly years: Years;
}

/**
 * @param first a lay-out found without the solver, kept where that finds no better one
 * @param seconds longest time for the solver, and as much again for each of the two other proofs
 * @param now milliseconds since whenever, never going back
 */
export function provenYears(
  problem: YearsProblem,
  first: Years,
  highs: Highs,
  { seconds, now }: { readonly seconds: number; readonly now: () => number },
): ProvenYears {
  const judged = judgeYears(problem, first);
  const isWhole = judged.faults.every(({ kind }) => kind === "exposed");
  const secondsLeft = () => {
    const end = now() + seconds * 1000;
    return () => (end - now()) / 1000;
  };
  const answer = solveYears(problem, highs, { start: isWhole ? first : null, seconds });
  const clashes = answer.kind === "cannot be" ? clashesOf(problem, highs, secondsLeft()) : [];
  const least = leastSeasons(problem, highs, secondsLeft());
  if (answer.kind !== "found") return { years: first, gap: null, clashes, least };
  const isBetter = !isWhole || answer.points < judged.points;
  return {
    years: isBetter ? answer.years : first,
    gap: gapOf(Math.min(answer.points, isWhole ? judged.points : Infinity), answer.bound),
    clashes,
    least,
  };
}
