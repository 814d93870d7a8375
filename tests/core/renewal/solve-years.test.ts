import loadHighs from "highs";
import { describe, expect, test } from "vitest";
import { firstAnswer } from "../../../src/core/renewal/first-answer.ts";
import { judgeYears } from "../../../src/core/renewal/judge-years.ts";
import { leastSeasons } from "../../../src/core/renewal/least-seasons.ts";
import { smallestClash } from "../../../src/core/renewal/smallest-clash.ts";
import { canAllBe, solveYears } from "../../../src/core/renewal/solve-years.ts";
import {
  type Years,
  type YearsProblem,
  withoutItems,
} from "../../../src/core/renewal/years-problem.ts";
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
    for (let seed = 1; seed <= 40; seed += 1) {
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
    expect(feasible).toBeGreaterThan(10);
    expect(infeasible).toBeGreaterThan(3);
  });
});

describe("what cannot be", () => {
  test("three that cross, one place and two seasons: those three are named and no other", () => {
    const items = [0, 1, 2, 3, 4].map((index) => item(index, { deadline: 1 }));
    const problem = problemOf(items, { seasons: 2, sets: [together([0, 1, 2]), together([3, 4])] });
    expect(canAllBe(problem, highs, 10)).toBe(false);
    const clash = smallestClash(problem, highs, () => 10);
    expect(clash).toEqual({ items: [0, 1, 2], isSmallest: true });
    // One cage more, or one season more, and they can be.
    expect(canAllBe({ ...problem, covers: { cage: 1, bag: 0 } }, highs, 10)).toBe(true);
    const longer = {
      ...problem,
      seasons: 3,
      items: items.map((each) => ({ ...each, deadline: 2 })),
    };
    expect(canAllBe(longer, highs, 10)).toBe(true);
  });

  test("property: a clash cannot be, and with any one of it left out it can", () => {
    let met = 0;
    for (let seed = 100; seed < 300 && met < 12; seed += 1) {
      const problem = collection(seed, 9, 3, 3);
      if (canAllBe(problem, highs, 10) !== false) continue;
      met += 1;
      const { items, isSmallest } = smallestClash(problem, highs, () => 10);
      expect(isSmallest).toBe(true);
      const others = problem.items.flatMap((_, index) => (items.includes(index) ? [] : [index]));
      expect(canAllBe(withoutItems(problem, new Set(others)), highs, 10), `seed ${seed}`).toBe(
        false,
      );
      for (const one of items) {
        const left = new Set([...others, one]);
        expect(canAllBe(withoutItems(problem, left), highs, 10), `seed ${seed}`).toBe(true);
      }
    }
    expect(met).toBe(12);
  });
});

describe("the fewest seasons", () => {
  test("seven that cross with two places apart and one cage need three", () => {
    const items = Array.from({ length: 7 }, (_, index) => item(index));
    const sets = [together([0, 1, 2, 3, 4, 5, 6], 2)];
    const problem = problemOf(items, { sets, covers: { cage: 1, bag: 0 } });
    expect(leastSeasons(problem, highs, () => 10)).toEqual({ kind: "proven", seasons: 3 });
  });

  test("without time nothing more is said than what counting gives", () => {
    const items = Array.from({ length: 7 }, (_, index) => item(index));
    const problem = problemOf(items, { sets: [together([0, 1, 2, 3, 4, 5, 6], 2)] });
    expect(leastSeasons(problem, highs, () => 0)).toEqual({ kind: "at least", seasons: 4 });
  });
});

test("sixty varieties over five seasons: within 5 % of what is proven", () => {
  let met = 0;
  for (const seed of [1, 4, 5, 10]) {
    const problem = collection(seed, 60, 5, 3);
    const first = firstAnswer(problem);
    const answer = solveYears(problem, highs, { start: first, seconds: 60 });
    if (answer.kind !== "found") continue;
    met += 1;
    expect(answer.gap).toBeLessThanOrEqual(0.05);
  }
  expect(met).toBeGreaterThan(1);
});
