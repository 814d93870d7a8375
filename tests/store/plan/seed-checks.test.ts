/** Checks of lots are loaded once a plan has lots; from then on nothing of theirs is silent. */
import { expect, test, vi } from "vitest";
import { watchSeedLots } from "../../../src/store/plan/seed-checks.ts";
import { usePlanStore } from "../../../src/store/plan/plan-store.ts";
import { addLots } from "../../../src/core/edits/lot-edits.ts";
import { dayFromCivil } from "../../../src/core/model/day.ts";
import { gardenPlan } from "../../support/garden-plan.ts";

// Not the trial plan: its file joins the checks, and this is about who does.
const plan = gardenPlan();
const dying = {
  id: "lot-1",
  code: "OLD-1",
  variety: "v1",
  state: "in stock" as const,
  amount: { unit: "seeds" as const, value: 3 },
  tests: [
    { id: "t1", date: dayFromCivil({ year: 2027, month: 3, day: 1 }), sown: 100, sprouted: 5 },
  ],
};
const ofLots = () =>
  usePlanStore
    .getState()
    .result.findings.map(({ check }) => check)
    .filter((check) => check === "old-seed" || check === "short-of-seed")
    .sort();

test("a plan that gets its first lot is checked anew once the checks are here", async () => {
  usePlanStore.getState().openPlan(plan);
  watchSeedLots();
  await Promise.resolve();
  expect(ofLots()).toEqual([]);
  usePlanStore.getState().commit(addLots([dying]));
  await vi.waitFor(() => expect(ofLots()).toEqual(["old-seed", "short-of-seed"]));

  // Another plan with lots, opened later: said at once, without waiting.
  usePlanStore.getState().openPlan(plan);
  expect(ofLots()).toEqual([]);
  usePlanStore.getState().openPlan({ ...plan, lots: [dying] });
  expect(ofLots()).toEqual(["old-seed", "short-of-seed"]);
  usePlanStore.getState().undo();
  expect(ofLots()).toEqual(["old-seed", "short-of-seed"]);
});
