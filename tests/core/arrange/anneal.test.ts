/** The arranger against optima that are known: published ones, and all arrangements counted through. */
import { readFileSync } from "node:fs";
import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type AnnealSettings, type Arrangement, anneal } from "../../../src/core/arrange/anneal.ts";
import { type ArrangeProblem, arrangeProblem } from "../../../src/core/arrange/arrange-problem.ts";
import { put, startState, wholeTrouble } from "../../../src/core/arrange/arrange-state.ts";
import { arrangedLayout, movedPieces } from "../../../src/core/arrange/arranged-layout.ts";
import { runChecks } from "../../../src/core/checks/run-checks.ts";
import type { Layout, Plan } from "../../../src/core/model/plan.ts";
import { readPlan } from "../../../src/core/model/read-plan.ts";
import {
  bed,
  book,
  checkedLayout,
  firstLayout,
  gardenPlan,
  planting,
  square,
  variety,
} from "../../support/arrange-garden.ts";

function solved(problem: ArrangeProblem, settings: AnnealSettings): Arrangement {
  const run = anneal(problem, settings);
  for (;;) {
    const { done, value } = run.next(false);
    if (done === true) return value;
  }
}

function problemOf(plan: Plan): ArrangeProblem {
  return arrangeProblem(checkedLayout(plan));
}

function conflictsIn(plan: Plan, layout: Layout): number {
  return runChecks(plan, layout, book).findings.filter(({ severity }) => severity === "conflict")
    .length;
}

/** Varieties of one kind that each need so many metres, all in one heap. */
function heap(count: number, metres: number, size: number, beds: Layout["beds"]): Plan {
  const ids = Array.from({ length: count }, (_, index) => `v${index}`);
  return gardenPlan(
    ids.map((id) => variety(id, "tomato", { isolationM: metres })),
    beds,
    ids.map((id) => planting(`p-${id}`, id, { outline: square(0, 0, size) })),
  );
}

describe("free placement: n equal points in a square", () => {
  // OEIS A281065 and the published table of equal circles in a square: the greatest least distance
  // of n points in a unit square.
  const optima = "1.4142 1.0353 1 0.7071 0.6009 0.5359 0.5176 0.5 0.4213".split(" ").map(Number);
  test.each([2, 3, 4, 5, 6, 7, 8, 9, 10])(
    "%i points come within 2 hundredths of the optimum",
    (count) => {
      const optimum = optima[count - 2] ?? 0;
      const side = 100;
      const size = 0.01;
      // The middles have a square of 100 m; edges are nearer than middles by less than the size's diagonal.
      const wanted = side * optimum * 0.98;
      const plan = heap(count, wanted, size, [bed("b1", 0, 0, side + size, side + size)]);
      const { trouble } = solved(problemOf(plan), { seed: 7, steps: 120_000 });
      expect(trouble).toMatchObject({ overlaps: 0, conflicts: 0 });
    },
    60_000,
  );
});

/** Fewest conflicts over all ways to lay the pieces in slots, counted through. */
function fewestInSlots(problem: ArrangeProblem): number {
  const state = startState(problem);
  let fewest = Infinity;
  const place = (index: number, free: readonly number[]) => {
    if (index === problem.pieces.length) {
      fewest = Math.min(fewest, wholeTrouble(problem, state).conflicts);
      return;
    }
    for (const slot of free) {
      put(problem, state, index, { bed: slot, across: 0, along: 0 });
      place(
        index + 1,
        free.filter((other) => other !== slot),
      );
    }
  };
  place(
    0,
    problem.beds.map((_, index) => index),
  );
  return fewest;
}

describe("beds that take one planting each", () => {
  test("property: as few conflicts as any arrangement has", () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: 0, max: 20 }), fc.integer({ min: 0, max: 20 })), {
          minLength: 5,
          maxLength: 6,
        }),
        fc.integer({ min: 3, max: 14 }),
        fc.integer({ min: 0, max: 1000 }),
        (places, metres, seed) => {
          const beds = places.map(([x, y], index) => bed(`b${index}`, x * 3, y * 3, 1, 1));
          fc.pre(new Set(places.map(String)).size === places.length);
          const heaped = heap(places.length - 1, metres, 1, beds);
          const inBeds = firstLayout(heaped).plantings.map((entry, index) => ({
            ...entry,
            outline: square((places[index]?.[0] ?? 0) * 3, (places[index]?.[1] ?? 0) * 3, 1),
          }));
          const problem = problemOf(gardenPlan(heaped.varieties, beds, inBeds));
          const { trouble } = solved(problem, { seed, steps: 6_000 });
          expect(trouble.overlaps).toBe(0);
          expect(trouble.conflicts).toBe(fewestInSlots(problem));
        },
      ),
      { numRuns: 25 },
    );
  }, 60_000);
});

describe("what the grower said", () => {
  const rows = [bed("b1", 0, 0, 2, 40), bed("b2", 30, 0, 2, 40)];
  const plan = gardenPlan(
    [
      variety("a", "tomato", { isolationM: 20 }),
      variety("b", "tomato", { isolationM: 20 }),
      variety("c", "tomato", { isolationM: 20 }),
    ],
    rows,
    [
      planting("p1", "a", { outline: square(0, 0, 2), bed: "b1", locked: true }),
      planting("p2", "b", { outline: square(0, 4, 2), bed: "b1" }),
      planting("p3", "c", { outline: square(30, 19, 2), bed: "b2" }),
    ],
  );

  test("a locked planting stays, sizes stay, and the result has no conflict by the checks", () => {
    const problem = problemOf(plan);
    const { places } = solved(problem, { seed: 1, steps: 20_000 });
    const moved = movedPieces(problem, places);
    const after = arrangedLayout("layout-1", "layout-2", "Arranged", moved).apply(plan);
    const layout = after.layouts[1];
    if (!layout) throw new Error("no new layout");
    expect(after.layouts[0]).toBe(plan.layouts[0]);
    expect(conflictsIn(plan, firstLayout(plan))).toBeGreaterThan(0);
    expect(conflictsIn(after, layout)).toBe(0);
    expect(moved.map(({ id }) => id)).not.toContain("p1");
    for (const { outline } of moved) expect([outline.widthM, outline.lengthM]).toEqual([2, 2]);
    const outside = runChecks(after, layout, book).findings.filter(
      ({ check }) => check === "outside" || check === "overlap",
    );
    expect(outside).toEqual([]);
  });

  test("what is in no conflict is left where it lies", () => {
    const problem = problemOf(plan);
    const { places } = solved(problem, { seed: 2, steps: 20_000 });
    expect(movedPieces(problem, places).map(({ id }) => id)).toEqual(["p2"]);
  });

  test("the same seed gives the same answer", () => {
    const run = () => solved(problemOf(plan), { seed: 5, steps: 5_000 });
    expect(run()).toEqual(run());
  });
});

describe("the sample plans", () => {
  // As docs/samples.md solves them by hand: two drags, and one.
  test.each([
    ["garden-to-solve", 2],
    ["two-acre-field", 1],
  ])(
    "%s is cleared with as few moves as by hand",
    (name, moves) => {
      const file = new URL(`../../../sample-plots/${name}.json`, import.meta.url);
      const read = readPlan(readFileSync(file, "utf8"), name, (id) => book.kind(id) !== undefined);
      if (!read.ok) throw new Error(`${name} does not read`);
      const problem = problemOf(read.value);
      const { places, trouble } = solved(problem, { seed: 3, steps: 100_000 });
      expect(trouble).toMatchObject({ overlaps: 0, conflicts: 0 });
      expect(movedPieces(problem, places)).toHaveLength(moves);
    },
    60_000,
  );
});
