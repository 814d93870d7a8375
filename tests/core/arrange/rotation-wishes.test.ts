/** The arranger and what grew on the ground before. */
import { describe, expect, test } from "vitest";
import { anneal } from "../../../src/core/arrange/anneal.ts";
import { arrangeProblem, outlineAt } from "../../../src/core/arrange/arrange-problem.ts";
import {
  arrangedCounts,
  countsArranged,
  movedPieces,
} from "../../../src/core/arrange/arranged-layout.ts";
import { rotationWishes, wishesMissed } from "../../../src/core/arrange/rotation-wishes.ts";
import type { EarlierCrop, Plan } from "../../../src/core/model/plan.ts";
import {
  bed,
  checked,
  checkedLayout,
  firstLayout,
  gardenPlan,
  planting,
  square,
  variety,
} from "../../support/arrange-garden.ts";

const ground = (id: string, x: number, kind: string, year: number): EarlierCrop => ({
  id,
  outline: { shape: "rectangle", x, y: 0, widthM: 2, lengthM: 10, turnDeg: 0 },
  kind,
  year,
});

/** Three beds side by side, 20 m apart; one tomato in the middle of the first. */
function garden(earlierCrops: readonly EarlierCrop[], more: Partial<Plan> = {}): Plan {
  return gardenPlan(
    [variety("a", "tomato")],
    [bed("b1", 0, 0, 2, 10), bed("b2", 20, 0, 2, 10), bed("b3", 40, 0, 2, 10)],
    [planting("p1", "a", { outline: square(0, 0, 1), bed: "b1" })],
    { earlierCrops, ...more },
  );
}

function arranged(plan: Plan) {
  const problem = arrangeProblem(checkedLayout(plan));
  const run = anneal(problem, { seed: 7, steps: 8000 });
  let next = run.next(false);
  while (next.done !== true) next = run.next(false);
  const { places, trouble } = next.value;
  const at = problem.pieces.map((piece, index) => outlineAt(problem, piece, places[index] ?? null));
  const counts = countsArranged(plan, "layout-1", movedPieces(problem, places));
  return { trouble, at, counts, before: arrangedCounts(checkedLayout(plan)) };
}

describe("the arranger", () => {
  test("takes a seed parent off ground where volunteers may come up, the nearest way", () => {
    const { at, counts, before } = arranged(garden([ground("c", 0, "tomato", 2026)]));
    expect([before.volunteers, counts.volunteers]).toEqual([1, 0]);
    // The nearest bed that is free of them.
    expect(Math.abs((at[0]?.bounds.minX ?? 0) - 20)).toBeLessThan(2);
  });

  test("goes past ground of the family, where there is other ground", () => {
    const crops = [ground("c", 0, "tomato", 2026), ground("d", 20, "pepper", 2025)];
    const { at, counts } = arranged(garden(crops));
    expect(counts).toMatchObject({ volunteers: 0, kin: 0 });
    expect(Math.abs((at[0]?.bounds.minX ?? 0) - 40)).toBeLessThan(2);
  });

  test("stays where nothing stands against it, and where all ground is alike", () => {
    const beside = arranged(garden([ground("c", 20, "tomato", 2026)]));
    expect(beside.trouble).toMatchObject({ wishes: 0, disturbance: 0 });
    const all = [0, 20, 40].map((x, index) => ground(`c${index}`, x, "tomato", 2026));
    const nowhere = arranged(garden(all));
    expect(nowhere.trouble.disturbance).toBe(0);
    expect(nowhere.counts.volunteers).toBe(1);
  });

  test("never takes a conflict to be rid of volunteers", () => {
    const plan = garden([ground("c", 0, "tomato", 2026)]);
    const layout = firstLayout(plan);
    const others = [20, 40].map((x) =>
      planting(`q${x}`, "b", { outline: square(x, 0, 1), locked: true }),
    );
    const crowded: Plan = {
      ...plan,
      varieties: [
        variety("a", "tomato", { isolationM: 15 }),
        variety("b", "tomato", { isolationM: 15 }),
      ],
      layouts: [{ ...layout, plantings: [...layout.plantings, ...others] }],
    };
    const { counts } = arranged(crowded);
    expect(counts).toMatchObject({ conflicts: 0, volunteers: 1 });
  });
});

test("where no source names a disease, the family is a wish for three years, and not where volunteers are the trouble", () => {
  const [stand] = checked(garden([])).stands;
  if (!stand) throw new Error("no stand");
  const missed = (kind: string, year: number) => {
    const earlierCrops = [ground("c", 0, kind, year)];
    return wishesMissed(rotationWishes(stand, { earlierCrops, groundMarks: [] }), stand.outline);
  };
  expect(missed("pepper", 2024)).toEqual({ volunteers: 0, marks: 0, kin: 1 });
  expect(missed("pepper", 2023)).toEqual({ volunteers: 0, marks: 0, kin: 0 });
  expect(missed("pepper", 2028), "still to come").toEqual({ volunteers: 0, marks: 0, kin: 0 });
  expect(missed("carrot", 2026)).toEqual({ volunteers: 0, marks: 0, kin: 0 });
  expect(missed("tomato", 2026)).toEqual({ volunteers: 1, marks: 0, kin: 0 });
  expect(missed("tomato", 2024), "its land years are over").toEqual({
    volunteers: 0,
    marks: 0,
    kin: 1,
  });
});
