/** What the seed list still wants, laid where there is room, none of it lost from the count. */
import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { anneal } from "../../../src/core/arrange/anneal.ts";
import { arrangeProblem } from "../../../src/core/arrange/arrange-problem.ts";
import { arrangedLayout, movedPieces } from "../../../src/core/arrange/arranged-layout.ts";
import { missingPlantings, shortVarieties } from "../../../src/core/arrange/missing-plantings.ts";
import { runChecks } from "../../../src/core/checks/run-checks.ts";
import { addPlantings } from "../../../src/core/edits/object-edits.ts";
import {
  bed,
  book,
  checked,
  checkedLayout,
  day,
  firstLayout,
  gardenPlan,
  planting,
  square,
  variety,
} from "../../support/arrange-garden.ts";

const rows = [bed("b1", 0, 0, 1.2, 9), bed("b2", 40, 0, 1.2, 9)];

describe("what is still wanted", () => {
  test("only what a layout has too few of, with how many", () => {
    const plan = gardenPlan(
      [
        variety("a", "tomato", { wantedPlants: 50 }),
        variety("b", "tomato", { wantedPlants: 40 }),
        variety("c", "tomato"),
      ],
      rows,
      [
        planting("p1", "a", { outline: square(0, 0, 1) }),
        planting("p2", "b", { outline: square(0, 2, 1) }),
      ],
    );
    const short = shortVarieties(plan, firstLayout(plan));
    expect(short.map(({ variety: { id }, missing }) => [id, missing])).toEqual([["a", 10]]);
  });

  test("a kind that is not known is left, and so is what no bed takes", () => {
    const plan = gardenPlan(
      [
        variety("a", "no-such-kind", { wantedPlants: 5 }),
        variety("b", "tomato", { wantedPlants: 100_000 }),
      ],
      rows,
      [],
    );
    const { added, left } = missingPlantings(plan, firstLayout(plan), book);
    expect(added).toHaveLength(2);
    const placed = added.reduce((sum, { plants = 0 }) => sum + plants, 0);
    expect(left.map(({ missing }) => missing)).toEqual([5, 100_000 - placed]);
  });

  test("new plantings start as the latest of their kind", () => {
    const start = { method: "sown", date: day("2027-04-20") } as const;
    const plan = gardenPlan(
      [variety("a", "tomato"), variety("b", "tomato", { wantedPlants: 4 })],
      rows,
      [planting("p1", "a", { outline: square(0, 0, 1), bed: "b1", start })],
    );
    const { added } = missingPlantings(plan, firstLayout(plan), book);
    expect(added.map((entry) => entry.start)).toEqual([start]);
  });

  test("property: placed and left add up, ids and codes are new, none lies on another or outside", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 1, max: 60 }), { minLength: 1, maxLength: 6 }),
        (wanted) => {
          const plan = gardenPlan(
            wanted.map((wantedPlants, index) => variety(`v${index}`, "lettuce", { wantedPlants })),
            rows,
            [],
          );
          const { added, left } = missingPlantings(plan, firstLayout(plan), book);
          const placed = added.reduce((sum, { plants = 0 }) => sum + plants, 0);
          const over = left.reduce((sum, { missing }) => sum + missing, 0);
          expect(placed + over).toBe(wanted.reduce((sum, one) => sum + one, 0));
          expect(new Set(added.map(({ id }) => id)).size).toBe(added.length);
          expect(new Set(added.map(({ code }) => code)).size).toBe(added.length);
          const after = addPlantings("layout-1", added, "").apply(plan);
          const wrong = checked(after).findings.filter(({ check }) =>
            ["overlap", "outside"].includes(check),
          );
          expect(wrong).toEqual([]);
        },
      ),
      { numRuns: 30 },
    );
  });
});

test("the arranger moves what was added until it is clear, in a layout of its own", () => {
  const plan = gardenPlan(
    [
      variety("a", "tomato", { isolationM: 20 }),
      variety("b", "tomato", { isolationM: 20, wantedPlants: 3 }),
    ],
    rows,
    [planting("p1", "a", { outline: square(0, 0, 1), bed: "b1", locked: true })],
  );
  const { added } = missingPlantings(plan, firstLayout(plan), book);
  const filled = addPlantings("layout-1", added, "").apply(plan);
  const problem = arrangeProblem(checkedLayout(filled));
  const run = anneal(problem, { seed: 1, steps: 20_000 });
  let next = run.next(false);
  while (next.done !== true) next = run.next(false);
  const moved = movedPieces(problem, next.value.places);
  const after = arrangedLayout("layout-1", "layout-2", "Arranged", moved, added).apply(plan);
  const layout = after.layouts[1];
  if (!layout) throw new Error("no new layout");
  expect(after.layouts[0]).toBe(plan.layouts[0]);
  expect(layout.plantings.map(({ variety: of }) => of)).toEqual(["a", "b"]);
  const conflicts = runChecks(after, layout, book).findings.filter(
    ({ severity }) => severity === "conflict",
  );
  expect(conflicts).toEqual([]);
  expect(layout.plantings[1]?.bed).toBe("b2");
});
