/** The cheapest choices against all of them counted through: by branch and bound, rounds and solver. */
import loadHighs from "highs";
import { beforeAll, expect, test } from "vitest";
import { costOf, provenChoices } from "../../../src/core/clearing/choice-proof.ts";
import { searchedChoices } from "../../../src/core/clearing/choice-rounds.ts";
import {
  type ChoiceProblem,
  type Priced,
  cheapestChoices,
  remembered,
} from "../../../src/core/clearing/choice-search.ts";
import { seeded } from "../../bench/field.ts";

let highs: Awaited<ReturnType<typeof loadHighs>>;
beforeAll(async () => {
  highs = await loadHighs();
});

function problemOf(seed: number, pieceCount = 2 + (seed % 4)): ChoiceProblem {
  const next = seeded(seed);
  const pieces = Array.from({ length: pieceCount }, () =>
    Array.from({ length: 1 + Math.floor(next() * 4) }, (_, index): Priced => ({
      cost: index === 0 ? 0 : 1 + Math.round(next() * 20),
      cages: next() < 0.3 ? 1 : 0,
    })),
  );
  const density = next();
  const costs = new Map<string, number>();
  for (const [a, left] of pieces.entries()) {
    for (let b = a + 1; b < pieces.length; b += 1) {
      for (const i of left.keys()) {
        for (const j of (pieces[b] ?? []).keys()) {
          if (next() >= density) continue;
          costs.set(`${a} ${i} ${b} ${j}`, next() < 0.4 ? 30 : Infinity);
        }
      }
    }
  }
  return {
    pieces,
    together: (a, i, b, j) => costs.get(a < b ? `${a} ${i} ${b} ${j}` : `${b} ${j} ${a} ${i}`) ?? 0,
    ...(seed % 3 === 0 ? { mostCages: Math.floor(next() * 3) } : {}),
  };
}

/** Every choice of every piece, one after the other. */
function countedThrough(problem: ChoiceProblem): number {
  let best = Infinity;
  const descend = (taken: readonly number[]): void => {
    const list = problem.pieces[taken.length];
    if (!list) best = Math.min(best, costOf(problem, taken));
    else for (const index of list.keys()) descend([...taken, index]);
  };
  descend([]);
  return best;
}

test("500 small cases cost what counting them through finds, and say so", () => {
  let possible = 0;
  for (let seed = 1; seed <= 500; seed += 1) {
    const problem = remembered(problemOf(seed));
    const best = countedThrough(problem);
    const { taken, cost, isProven } = cheapestChoices(problem);
    expect([seed, isProven, cost]).toEqual([seed, true, best]);
    expect(taken === null).toBe(best === Infinity);
    if (taken === null) continue;
    possible += 1;
    expect(costOf(problem, taken)).toBe(best);
  }
  expect(possible).toBeGreaterThan(150);
});

test("the solver agrees with counting through on 120 of them", () => {
  let possible = 0;
  for (let seed = 1; seed <= 120; seed += 1) {
    const problem = problemOf(seed);
    const best = countedThrough(problem);
    const { cost, isProven, atLeast } = provenChoices(problem, null, highs, 20);
    expect([seed, isProven, cost]).toEqual([seed, true, best]);
    if (best < Infinity) expect(atLeast).toBe(best);
    if (best < Infinity) possible += 1;
  }
  expect(possible).toBeGreaterThan(40);
});

test("a search that is cut off is made cheaper few by few, and is not called proven", () => {
  let proven = 0;
  for (let seed = 1; seed <= 3; seed += 1) {
    const problem = remembered(hardProblem(seed));
    const run = searchedChoices(problem);
    let next = run.next();
    while (next.done !== true) next = run.next();
    const { taken, cost, isProven } = next.value;
    if (!taken) throw new Error("no set");
    expect(costOf(problem, taken)).toBeCloseTo(cost, 9);
    const proof = provenChoices(problem, taken, highs, 20);
    if (isProven) expect(cost).toBeCloseTo(proof.cost, 6);
    else if (proof.isProven) {
      proven += 1;
      expect(cost).toBeLessThanOrEqual(1.25 * proof.cost);
      expect(proof.cost).toBeLessThanOrEqual(cost + 1e-9);
    }
  }
  expect(proven).toBeGreaterThan(0);
}, 120_000);

/** 18 pieces of 6 choices; to leave one as it is costs nothing and clashes with most others. */
function hardProblem(seed: number): ChoiceProblem {
  const next = seeded(seed);
  const pieces = Array.from({ length: 18 }, () =>
    Array.from({ length: 6 }, (_, index): Priced => ({
      cost: index === 0 ? 0 : 10 + Math.round(next() * 40),
      cages: 0,
    })),
  );
  const costs = new Map<string, number>();
  for (let a = 0; a < 18; a += 1) {
    for (let b = a + 1; b < 18; b += 1) {
      for (let i = 0; i < 6; i += 1) {
        for (let j = 0; j < 6; j += 1) {
          if (next() < (i + j === 0 ? 0.25 : 0.08)) {
            costs.set(`${a} ${i} ${b} ${j}`, i + j === 0 ? 1000 : Infinity);
          }
        }
      }
    }
  }
  return {
    pieces,
    together: (a, i, b, j) => costs.get(a < b ? `${a} ${i} ${b} ${j}` : `${b} ${j} ${a} ${i}`) ?? 0,
  };
}
