/** The exact solver against all arrangements counted through, and the arranger against the solver. */
import * as fc from "fast-check";
import loadHighs from "highs";
import { describe, expect, test } from "vitest";
import { anneal } from "../../../src/core/arrange/anneal.ts";
import { type ArrangeProblem, arrangeProblem } from "../../../src/core/arrange/arrange-problem.ts";
import {
  type Trouble,
  put,
  startState,
  wholeTrouble,
} from "../../../src/core/arrange/arrange-state.ts";
import { fewestInSlots } from "../../../src/core/arrange/fewest-in-slots.ts";
import { seededRandom } from "../../../src/core/arrange/seeded.ts";
import { type Slot, slotsOf } from "../../../src/core/arrange/slots.ts";
import {
  bed,
  checkedLayout,
  gardenPlan,
  planting,
  square,
  variety,
} from "../../support/arrange-garden.ts";

const KINDS = ["tomato", "beet", "onion", "carrot", "radish", "lettuce", "spinach", "parsnip"];
/** As many as the window gives each planting. */
const STEPS_EACH = 20_000;

const highs = await loadHighs();

/** Beds of 1 m that take one planting each, and plantings in the first of them. */
function plots(
  places: readonly (readonly [number, number])[],
  metres: readonly number[],
  each = metres.length,
) {
  const ids = metres.map((_, index) => `v${index}`);
  const plan = gardenPlan(
    ids.map((id, index) =>
      variety(id, KINDS[Math.floor(index / each)] ?? "tomato", { isolationM: metres[index] ?? 0 }),
    ),
    places.map(([x, y], index) => bed(`b${index}`, x, y, 1, 1)),
    ids.map((id, index) => {
      const [x, y] = places[index] ?? [0, 0];
      return planting(`p-${id}`, id, { outline: square(x, y, 1) });
    }),
  );
  return arrangeProblem(checkedLayout(plan));
}

function annealed(problem: ArrangeProblem, seed: number, steps: number): Trouble {
  const run = anneal(problem, { seed, steps });
  for (;;) {
    const { done, value } = run.next(false);
    if (done === true) return value.trouble;
  }
}

const home = (problem: ArrangeProblem) => problem.pieces.map(() => null);

/** Fewest conflicts over all choices of slots with none on another's ground, counted through. */
function countedThrough(problem: ArrangeProblem): number {
  const slots = slotsOf(problem, home(problem));
  const state = startState(problem);
  let fewest = Infinity;
  const lay = (index: number) => {
    const list: readonly Slot[] | undefined = slots[index];
    if (!list) {
      const { overlaps, conflicts } = wholeTrouble(problem, state);
      if (overlaps === 0) fewest = Math.min(fewest, conflicts);
      return;
    }
    for (const { place } of list) {
      put(problem, state, index, place);
      lay(index + 1);
    }
  };
  lay(0);
  return fewest;
}

describe("beds that take one planting each", () => {
  test("property: the solver proves what counting through finds", () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.tuple(fc.integer({ min: 0, max: 15 }), fc.integer({ min: 0, max: 15 })), {
          minLength: 4,
          maxLength: 5,
          selector: String,
        }),
        fc.array(fc.integer({ min: 3, max: 20 }), { minLength: 4, maxLength: 4 }),
        (cells, metres) => {
          const problem = plots(
            cells.map(([x, y]) => [x * 2, y * 2]),
            metres,
          );
          const proof = fewestInSlots(problem, home(problem), highs, 100);
          expect(proof).toMatchObject({ kind: "proven", conflicts: countedThrough(problem) });
        },
      ),
      { numRuns: 15 },
    );
  }, 120_000);

  // Groups of one kind each. The solver has every bed as a slot, so its optimum is the optimum.
  test.each([
    [1, 4, 3, 14, 15],
    [8, 8, 2, 18, 15],
    [9, 8, 2, 17, 32],
    [10, 10, 2, 22, 35],
  ])(
    "seed %i: the search is within 1 % of the optimum of %i groups of %i in %i beds",
    (seed, groups, each, beds, least) => {
      const random = seededRandom(seed);
      const places = Array.from({ length: beds }, (_, index): [number, number] => [
        (index % 5) * 9 + random() * 6,
        Math.floor(index / 5) * 9 + random() * 6,
      ]);
      const metres = Array.from({ length: groups }, () => least + Math.round(random() * 15));
      const problem = plots(
        places,
        metres.flatMap((one) => Array.from({ length: each }, () => one)),
        each,
      );
      const { overlaps, conflicts } = annealed(problem, seed, STEPS_EACH * problem.pieces.length);
      const proof = fewestInSlots(problem, home(problem), highs, 25);
      if (proof.kind !== "proven") throw new Error("not proven in time");
      expect(overlaps).toBe(0);
      expect(conflicts).toBeLessThanOrEqual(proof.conflicts * 1.01);
    },
    60_000,
  );
});

describe("what a proof says", () => {
  test("two plantings on ground for one: nothing is proven", () => {
    const problem = plots([[0, 0]], [5, 5]);
    expect(fewestInSlots(problem, home(problem), highs, 10)).toMatchObject({ kind: "no-room" });
  });

  test("what stays counts as well", () => {
    const plan = gardenPlan(
      [variety("a", "tomato", { isolationM: 50 }), variety("b", "tomato", { isolationM: 50 })],
      [bed("b1", 0, 0, 1, 1), bed("b2", 10, 0, 1, 20)],
      [
        planting("p1", "a", { outline: square(0, 0, 1), locked: true }),
        planting("p2", "b", { outline: square(10, 0, 1) }),
      ],
    );
    const problem = arrangeProblem(checkedLayout(plan));
    const proof = fewestInSlots(problem, home(problem), highs, 10);
    expect(proof).toMatchObject({ kind: "proven", conflicts: 1 });
  });

  test("out of time it claims no more than a bound", () => {
    const places = Array.from({ length: 20 }, (_, index): [number, number] => [
      (index % 5) * 9 + (index % 3),
      Math.floor(index / 5) * 9 + (index % 2),
    ]);
    const problem = plots(
      places,
      places.slice(4).map(() => 12),
    );
    const proof = fewestInSlots(problem, home(problem), highs, 0.5);
    if (proof.kind !== "open") throw new Error("it was easier than thought");
    expect(proof.atLeast).toBeLessThanOrEqual(annealed(problem, 1, 20_000).conflicts);
  });
});
