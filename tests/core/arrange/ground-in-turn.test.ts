/** Plantings that have one ground in turn are no overlap to the arranger, nor a reason to move. */
import { expect, test } from "vitest";
import { arrangeProblem } from "../../../src/core/arrange/arrange-problem.ts";
import { startState, wholeTrouble } from "../../../src/core/arrange/arrange-state.ts";
import { slotClashes } from "../../../src/core/arrange/slot-clashes.ts";
import { slotsOf } from "../../../src/core/arrange/slots.ts";
import { dayFromIso } from "../../../src/core/model/day.ts";
import type { Planting } from "../../../src/core/model/plan.ts";
import {
  bed,
  checkedLayout,
  gardenPlan,
  planting,
  square,
  variety,
} from "../../support/arrange-garden.ts";

const on = (iso: string) => dayFromIso(iso) ?? 0;

function problemOf(peas: Partial<Planting>) {
  const start = { method: "sown" as const, date: on("2027-07-06") };
  const plan = gardenPlan(
    [variety("a", "pea"), variety("b", "carrot")],
    [bed("b1", 0, 0, 2, 10)],
    [
      planting("p1", "a", { outline: square(0, 0, 1), bed: "b1", ...peas }),
      planting("p2", "b", { outline: square(0, 0, 1), bed: "b1", start }),
    ],
  );
  return arrangeProblem(checkedLayout(plan));
}

const sown = { method: "sown" as const, date: on("2027-03-10") };

test("cleared before the other starts, two may lie on one ground", () => {
  const inTurn = problemOf({ start: sown, end: on("2027-07-06") });
  expect(wholeTrouble(inTurn, startState(inTurn)).overlaps).toBe(0);
  const slots = slotsOf(inTurn, [null, null]);
  expect(slotClashes(inTurn, slots).between(0, 0, 1, 0)).toBe("none");
});

test("cleared later, or never, they may not", () => {
  for (const more of [{ start: sown, end: on("2027-07-07") }, { start: sown }]) {
    const together = problemOf(more);
    expect(wholeTrouble(together, startState(together)).overlaps).toBe(1);
    const slots = slotsOf(together, [null, null]);
    expect(slotClashes(together, slots).between(0, 0, 1, 0)).toBe("over");
  }
});
