import { describe, expect, test } from "vitest";
import { clearGround } from "../../../src/core/remedies/clear-ground.ts";
import { groundProblem } from "../../../src/core/remedies/ground-problem.ts";
import {
  bed,
  checked,
  firstLayout,
  gardenPlan,
  planting,
  square,
  variety,
} from "../../support/arrange-garden.ts";

const TOMATO = [
  variety("t1", "tomato", { isolationM: 3 }),
  variety("t2", "tomato", { isolationM: 5 }),
];
const BED = bed("a", 0, 0, 1.2, 20);

/** A tomato in a bed, with another so far along from the bed's end. */
function withOther(pastTheEndM: number) {
  return gardenPlan(
    TOMATO,
    [BED],
    [
      planting("p", "t1", { outline: square(0, 0, 1.2), bed: "a" }),
      // Measured from edge to edge: the bed ends at 10 m, the square reaches 0.6 m about its middle.
      planting("q", "t2", { outline: square(0, 10 + pastTheEndM + 0.6, 1.2) }),
    ],
  );
}

describe("the problem of clear ground", () => {
  test("is made of what can lie in the way in some bed, and of nothing farther off", () => {
    const near = groundProblem(checked(withOther(4.9)), "p");
    expect(near?.keeps.map(({ id, distanceM }) => [id, distanceM])).toEqual([["q", 5]]);
    expect(groundProblem(checked(withOther(0.5)), "p")?.taken).toHaveLength(1);
    const far = groundProblem(checked(withOther(60)), "p");
    expect(far?.keeps).toEqual([]);
    expect(far?.taken).toEqual([]);
  });

  test("what is left out forbids nothing: the ground is that of a garden without it", () => {
    const alone = gardenPlan(TOMATO, [BED], firstLayout(withOther(0)).plantings.slice(0, 1));
    const ground = (plan: typeof alone) => clearGround(checked(plan), "p")?.centres;
    expect(ground(withOther(60))).toEqual(ground(alone));
    expect(ground(withOther(5.01))).toEqual(ground(alone));
    expect(ground(withOther(4.9))).not.toEqual(ground(alone));
  });

  test("without beds there is no ground to tell of, and nothing to work out", () => {
    const plan = gardenPlan(
      TOMATO,
      [],
      [
        planting("p", "t1", { outline: square(0, 0, 1.2) }),
        planting("q", "t2", { outline: square(2, 0, 1.2) }),
      ],
    );
    expect(groundProblem(checked(plan), "p")).toMatchObject({ beds: [], taken: [], keeps: [] });
    expect(clearGround(checked(plan), "p")?.ground).toEqual([]);
  });

  test("of what is no planting there is none", () => {
    expect(groundProblem(checked(withOther(4)), "nothing")).toBeNull();
  });
});
