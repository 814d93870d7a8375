/** What counts as a loss that no edit explains. */
import { expect, test } from "vitest";
import type { Plan } from "../../../src/core/model/plan.ts";
import { isUnexplainedLoss } from "../../../src/store/keeping/unexplained-loss.ts";
import { usePlanStore } from "../../../src/store/plan/plan-store.ts";
import { trialPlan } from "../../support/trial-plan.ts";

const drawn = trialPlan({ p: { at: 0, kind: "tomato" }, q: { at: 9, kind: "tomato" } });
const [variety = ""] = drawn.varieties.map(({ id }) => id);
const ids = [1, 2, 3, 4];
const full: Plan = {
  ...drawn,
  lots: ids.map((n) => ({ id: `lot-${n}`, code: `L${n}`, variety, state: "in stock" as const })),
  storagePlaces: ids.map((n) => ({ id: `place-${n}`, name: `Tin ${n}` })),
  entries: ids.map((n) => ({ id: `entry-${n}`, on: 20_000 + n, of: "p", what: "rogued" as const })),
};

function isRefused(after: Plan, isEdit = false): boolean {
  const state = usePlanStore.getState();
  return isUnexplainedLoss(
    { ...state, plan: full },
    { ...state, plan: after, past: isEdit ? [...state.past] : state.past },
  );
}

test.each(["lots", "entries", "storagePlaces"] as const)(
  "%s lost without an edit, all else there",
  (list) => {
    expect(isRefused({ ...full, [list]: [] })).toBe(true);
    expect(isRefused({ ...full, [list]: full[list].slice(0, 1) })).toBe(true);
    expect(isRefused({ ...full, [list]: full[list].slice(0, 2) })).toBe(false);
    expect(isRefused({ ...full, [list]: [] }, true)).toBe(false);
  },
);

test("what is drawn counts together, and a long shelf does not hide its loss", () => {
  const layouts = full.layouts.map((layout) => ({ ...layout, beds: [], plantings: [] }));
  expect(isRefused({ ...full, layouts, varieties: [] })).toBe(true);
  expect(isRefused({ ...full, layouts })).toBe(false);
});
