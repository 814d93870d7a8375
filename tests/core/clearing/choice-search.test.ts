/** The cheapest choices against all of them counted through. */
import { expect, test } from "vitest";
import type { Choice } from "../../../src/core/clearing/choice.ts";
import {
  type ChoiceProblem,
  cheapestChoices,
  remembered,
} from "../../../src/core/clearing/choice-search.ts";
import { seeded } from "../../bench/field.ts";

function problemOf(seed: number): ChoiceProblem {
  const next = seeded(seed);
  const pieces = Array.from({ length: 2 + Math.floor(next() * 4) }, () =>
    Array.from({ length: 1 + Math.floor(next() * 4) }, (_, index): Choice => ({
      stands: [],
      cost: index === 0 ? 0 : Math.round(next() * 20),
      cages: 0,
    })),
  );
  const density = next();
  const clashing = new Set<string>();
  for (const [a, left] of pieces.entries()) {
    for (let b = a + 1; b < pieces.length; b += 1) {
      for (const i of left.keys()) {
        for (const j of (pieces[b] ?? []).keys()) {
          if (next() < density) clashing.add(`${a} ${i} ${b} ${j}`);
        }
      }
    }
  }
  return {
    pieces,
    clash: (a, i, b, j) => clashing.has(a < b ? `${a} ${i} ${b} ${j}` : `${b} ${j} ${a} ${i}`),
  };
}

/** Every choice of every piece, one after the other. */
function countedThrough({ pieces, clash }: ChoiceProblem): number {
  let best = Infinity;
  const descend = (taken: readonly number[], cost: number): void => {
    const piece = taken.length;
    if (piece === pieces.length) {
      best = Math.min(best, cost);
      return;
    }
    for (const [index, choice] of (pieces[piece] ?? []).entries()) {
      if (taken.every((other, at) => !clash(at, other, piece, index))) {
        descend([...taken, index], cost + choice.cost);
      }
    }
  };
  descend([], 0);
  return best;
}

test("500 small cases cost what counting them through finds, and say so", () => {
  let possible = 0;
  for (let seed = 1; seed <= 500; seed += 1) {
    const problem = problemOf(seed);
    const best = countedThrough(problem);
    const { taken, cost, isProven } = cheapestChoices(remembered(problem));
    expect([seed, isProven, cost]).toEqual([seed, true, best]);
    expect(taken === null).toBe(best === Infinity);
    if (taken === null) continue;
    possible += 1;
    for (const [a, i] of taken.entries()) {
      for (const [b, j] of taken.entries()) {
        if (a !== b) expect(problem.clash(a, i, b, j)).toBe(false);
      }
    }
  }
  expect(possible).toBeGreaterThan(100);
});

test("out of steps it does not call its answer proven", () => {
  const pieces = Array.from({ length: 14 }, () =>
    Array.from({ length: 4 }, (_, index): Choice => ({ stands: [], cost: index, cages: 0 })),
  );
  const problem: ChoiceProblem = { pieces, clash: (_, i, __, j) => i === j && i < 3 };
  const { isProven, taken } = cheapestChoices(problem, 30);
  expect([isProven, taken?.length]).toEqual([false, 14]);
});
