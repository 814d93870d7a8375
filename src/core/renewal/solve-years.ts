/** The years by a mixed-integer solver that is handed in: the best lay-out, and how far it is proven. */
import type { Highs } from "highs";
import { judgeYears } from "./judge-years.ts";
import type { Years, YearsProblem } from "./years-problem.ts";
import { yearsModel } from "./years-model.ts";

export type YearsAnswer =
  /** No lay-out costs less than `bound`; proven best where `gap` is next to nothing. */
  | {
      readonly kind: "found";
      readonly years: Years;
      readonly points: number;
      readonly bound: number;
      /** How far above the bound, share of it. */
      readonly gap: number;
    }
  /** No lay-out keeps all of these; proven. */
  | { readonly kind: "cannot be" }
  /** Time ran out before any lay-out was found. */
  | { readonly kind: "open" };

/** Search stops when it is so near to the bound: of no use to a grower beyond. */
const NEAR_ENOUGH = 0.01;

/** @param start a lay-out to begin from @param seconds longest time to look */
export function solveYears(
  problem: YearsProblem,
  highs: Highs,
  { start, seconds }: { readonly start: Years | null; readonly seconds: number },
): YearsAnswer {
  const model = yearsModel(problem);
  if (!model) return { kind: "cannot be" };
  return highs.withModel(model.data, (solver): YearsAnswer => {
    solver.options.set({ output_flag: false, time_limit: seconds, mip_rel_gap: NEAR_ENOUGH });
    const first = start && model.startOf(start);
    if (first) solver.setSolution(first);
    solver.run();
    const status = solver.getModelStatus();
    if (status === highs.constants.modelStatus.infeasible) return { kind: "cannot be" };
    const isOptimal = status === highs.constants.modelStatus.optimal;
    const bound = Number(solver.info.get("mip_dual_bound"));
    const values = solver.getSolution().colValue;
    const found = solver.getObjectiveValue();
    if (!isOptimal && !(Number.isFinite(found) && values.length > 0 && found < 1e20)) {
      return { kind: "open" };
    }
    const years = model.yearsOf(values);
    // Counted again without the solver: what it gives is judged like what anybody gives.
    const judged = judgeYears(problem, years);
    if (judged.faults.some(({ kind }) => kind !== "exposed")) {
      if (!isOptimal) return { kind: "open" };
      throw new Error("The solver's years are not what they are said to be.");
    }
    const least = Number.isFinite(bound) ? Math.max(0, bound) : 0;
    return {
      kind: "found",
      years,
      points: judged.points,
      bound: Math.min(least, judged.points),
      gap: gapOf(judged.points, least),
    };
  });
}

/** How far points are above a bound, share of the bound. */
export function gapOf(points: number, bound: number): number {
  if (points <= bound) return 0;
  return bound > 0 ? points / bound - 1 : Infinity;
}

/** Whether all can be kept at all; null: not told in time. */
export function canAllBe(problem: YearsProblem, highs: Highs, seconds: number): boolean | null {
  const model = yearsModel(problem, false);
  if (!model) return false;
  return highs.withModel(model.data, (solver): boolean | null => {
    solver.options.set({ output_flag: false, time_limit: seconds });
    solver.run();
    const status = solver.getModelStatus();
    if (status === highs.constants.modelStatus.infeasible) return false;
    return status === highs.constants.modelStatus.optimal ? true : null;
  });
}
