import loadHighs from "highs";
import { describe, expect, test } from "vitest";
import { firstAnswer } from "../../../src/core/renewal/first-answer.ts";
import { judgeYears } from "../../../src/core/renewal/judge-years.ts";
import { smallestClash } from "../../../src/core/renewal/smallest-clash.ts";
import { canAllBe, solveYears } from "../../../src/core/renewal/solve-years.ts";
import { type Years, type YearsProblem, withoutItems } from "../../../src/core/renewal/years-problem.ts";
import { collection, item, problemOf, together } from "./years-cases.ts";

const highs = await loadHighs();

/** Every lay-out there is, judged: the least points without a fault, null where there is none. */
function bruteForce(problem: YearsProblem): number | null {
  const { items, seasons } = problem;
  let best: number | null = null;
  const years = items.map(() => 0);
  const count = (1 << seasons) ** items.length;
  for (let at = 0; at < count; at += 1) {
    let rest = at;
    for (let index = 0; index < items.length; index += 1) {
      years[index] = rest % (1 << seasons);
      rest = Math.floor(rest / (1 << seasons));
    }
    if (!obeysHand(problem, years)) continue;
    const { faults, points } = judgeYears(problem, years);
    if (faults.some(({ kind }) => kind !== "exposed")) continue;
    if (best === null || points < best) best = points;
  }
  return best;
}

function obeysHand({ byHand }: YearsProblem, years: Years): boolean {
  return byHand.every(
    ({ grown, notGrown }, index) =>
      ((years[index] ?? 0) & grown) === grown && ((years[index] ?? 0) & notGrown) === 0,
  );
}

describe("all small cases", () => {
  test("the solver proves what trying every lay-out finds, and the search is never better", () => {
    let [feasible, infeasible] = [0, 0];
    for (let seed = 1; seed <= 70; seed += 1) {
      const problem = collection(seed, 3 + (seed % 2), 3, 2 + (seed % 3));
      const best = bruteForce(problem);
      const answer = solveYears(problem, highs, { start: null, seconds: 20 });
      const found = judgeYears(problem, firstAnswer(problem));
      const isFound = found.faults.every(({ kind }) => kind === "exposed");
      if (best === null) {
        infeasible += 1;
        expect(answer.kind, `seed ${seed}`).toBe("cannot be");
        expect(isFound, `seed ${seed}`).toBe(false);
        continue;
      }
      feasible += 1;
      if (answer.kind !== "found") throw new Error(`seed ${seed}: ${answer.kind}`);
      expect(answer.bound, `seed ${seed}`).toBeLessThanOrEqual(best + 1e-6);
      expect(answer.points, `seed ${seed}`).toBeLessThanOrEqual(best * 1.01 + 1e-6);
      expect(answer.points, `seed ${seed}`).toBeGreaterThanOrEqual(best - 1e-6);
      if (isFound) expect(found.points, `seed ${seed}`).toBeGreaterThanOrEqual(best - 1e-6);
    }
    expect(feasible).toBeGreaterThan(20);
    expect(infeasible).toBeGreaterThan(5);
  });
});
