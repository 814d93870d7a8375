/** The shade against the estimate of the planting laid at the place. */
import { expect, test } from "vitest";
import { moveObjects } from "../../../src/core/edits/move-objects.ts";
import { resolveStands } from "../../../src/core/checks/stand.ts";
import { crossingEstimate } from "../../../src/core/crossing-share/estimate.ts";
import { shadeProblem } from "../../../src/core/crossing-share/shade-problem.ts";
import { shadeOver } from "../../../src/core/crossing-share/shade.ts";
import { shadeBands } from "../../../src/core/crossing-share/shade-bands.ts";
import { noShadeWords, shadeWords } from "../../../src/core/crossing-share/shade-words.ts";
import type { Plan } from "../../../src/core/model/plan.ts";
import { book, layoutOf, trialPlan } from "../../support/trial-plan.ts";

const block = (x: number, y: number, widthM: number, lengthM: number) =>
  ({ shape: "rectangle", x, y, widthM, lengthM, turnDeg: 0 }) as const;

const garden = (kind: string): Plan =>
  trialPlan({
    a: { at: 0, kind, outline: block(0, 0, 4, 6) },
    b: { at: 0, kind, outline: block(30, 10, 20, 15) },
    kin: { at: 0, kind, outline: block(-12, 0, 3, 8), variety: { id: "v-a", name: "Variety a" } },
    c: { at: 0, kind, outline: block(-20, 40, 2, 2) },
  });

const standsOf = (plan: Plan) => resolveStands(plan, layoutOf(plan), book);
const AREA = { minX: -60, minY: -60, maxX: 60, maxY: 60 };

function problemOf(plan: Plan) {
  const stands = standsOf(plan);
  const [parent] = stands;
  const problem = parent ? shadeProblem(parent, stands, book) : null;
  if (!problem) throw new Error("no shade");
  return problem;
}

/** Upper end of the estimate with the middle of `a` at a place. */
function estimateAt(plan: Plan, x: number, y: number): number {
  const there = moveObjects(layoutOf(plan).id, ["a"], x, y).apply(plan);
  const stands = standsOf(there);
  const estimate = stands[0] ? crossingEstimate(stands[0], stands, book) : null;
  if (estimate?.way !== "estimate") throw new Error("no estimate");
  return estimate.shares[1];
}

test.each([
  ["sweet-corn", 1.35],
  ["oilseed-rape", 1.001],
  ["turnip", 1.001],
])("%s: clear of the sources it is the estimate within a factor of %d", (kind, factor) => {
  const plan = garden(kind);
  const { bounds, columns, rows, shares } = shadeOver(problemOf(plan), AREA, 60);
  const [cellX, cellY] = [
    (bounds.maxX - bounds.minX) / columns,
    (bounds.maxY - bounds.minY) / rows,
  ];
  let looked = 0;
  for (const [column, row] of [
    [5, 5],
    [10, 50],
    [30, 12],
    [55, 30],
    [30, 55],
    [28, 28],
  ] as const) {
    const [x, y] = [bounds.minX + (column + 0.5) * cellX, bounds.minY + (row + 0.5) * cellY];
    const ratio = (shares[row * columns + column] ?? 0) / estimateAt(plan, x, y);
    expect(Math.max(ratio, 1 / ratio)).toBeLessThan(factor);
    looked += 1;
  }
  expect(looked).toBe(6);
});

test("every cell is a share, also where the planting would lie on a source", () => {
  for (const kind of ["sweet-corn", "oilseed-rape", "turnip"]) {
    const { shares, columns, rows } = shadeOver(problemOf(garden(kind)), AREA, 40);
    expect(shares.length).toBe(columns * rows);
    expect(shares.every((share) => share > 0 && share <= 1)).toBe(true);
  }
});

test("degenerate ground to look at gives a cell, and no NaN", () => {
  const nowhere = { minX: 3, minY: 3, maxX: 3, maxY: 3 };
  const { shares } = shadeOver(problemOf(garden("sweet-corn")), nowhere, 24);
  expect(shares.length).toBeGreaterThan(0);
  expect(shares.every((share) => share >= 0 && share <= 1)).toBe(true);
});

test("bands run from most to all other ground, and the words name each and the caution", () => {
  expect(shadeBands.map(({ from }) => from)).toEqual([0.05, 0.01, 0.001, 0.0001, 0]);
  const words = shadeWords("C1");
  for (const said of ["C1", "1 in 20", "1 in 10,000", "not measured", "The rule decides"]) {
    expect(words).toContain(said);
  }
});

test("what has no shade says why", () => {
  const stands = standsOf(
    trialPlan({ a: { at: 0, kind: "beet" }, b: { at: 6, kind: "beet", purpose: "food" } }),
  );
  const [beet, food] = stands;
  expect(beet && shadeProblem(beet, stands, book)).toBeNull();
  expect(noShadeWords(beet)).toContain("Only maize, rape and turnip");
  expect(noShadeWords(food)).toContain("no seed is kept of B");
  expect(noShadeWords(undefined)).toContain("select one planting");
});
