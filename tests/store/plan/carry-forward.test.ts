/**
 * The heart of the store under any sequence of edits: what is carried forward equals a fresh run,
 * undo and redo are exact, and a preview leaves no trace.
 */
import * as fc from "fast-check";
import { beforeEach, expect, test } from "vitest";
import { runChecks } from "../../../src/core/checks/run-checks.ts";
import { writePlan } from "../../../src/core/model/read-plan.ts";
import { usePlanStore } from "../../../src/store/plan/plan-store.ts";
import { layoutOf } from "../../../src/core/model/layouts.ts";
import { validText } from "../../../src/store/keeping/plan-text.ts";
import { gardenPlan } from "../../support/garden-plan.ts";
import { anyCommits, anySteps } from "../../support/random-edits.ts";

const open = () => usePlanStore.getState().openPlan(gardenPlan(8));
beforeEach(open);

function expectFreshResult(): void {
  const { shown, layoutId, book, result } = usePlanStore.getState();
  const fresh = runChecks(shown, layoutOf(shown, layoutId), book);
  expect(result.findings).toEqual(fresh.findings);
  expect(result.accepted).toEqual(fresh.accepted);
  expect(result.pairs).toEqual(fresh.pairs);
  expect(result.stands).toEqual(fresh.stands);
  expect([...result.standById.keys()]).toEqual([...fresh.standById.keys()]);
  expect([...result.standById]).toEqual([...fresh.standById]);
  expect([...result.bedOutlines]).toEqual([...fresh.bedOutlines]);
}

test("what the store carries forward equals a fresh run of every check", () => {
  fc.assert(
    fc.property(anySteps, (steps) => {
      open();
      for (const step of steps) {
        step.run(usePlanStore);
        expectFreshResult();
      }
    }),
    { numRuns: 120 },
  );
});

test("undoing everything gives the first plan back, redoing everything the last", () => {
  fc.assert(
    fc.property(anyCommits, (steps) => {
      open();
      const first = usePlanStore.getState().plan;
      for (const step of steps) step.run(usePlanStore);
      const last = usePlanStore.getState().plan;
      const count = usePlanStore.getState().past.length;
      for (let step = 0; step < count; step += 1) usePlanStore.getState().undo();
      expect(usePlanStore.getState().plan).toEqual(first);
      expect(writePlan(usePlanStore.getState().plan)).toBe(writePlan(first));
      expect(usePlanStore.getState().past).toEqual([]);
      for (let step = 0; step < count; step += 1) usePlanStore.getState().redo();
      expect(usePlanStore.getState().plan).toEqual(last);
      expect(writePlan(usePlanStore.getState().plan)).toBe(writePlan(last));
      expect(usePlanStore.getState().future).toEqual([]);
    }),
    { numRuns: 120 },
  );
});

test("every plan the edits can make could be saved and opened again", () => {
  fc.assert(
    fc.property(anyCommits, (steps) => {
      open();
      for (const step of steps) {
        step.run(usePlanStore);
        expect(validText(usePlanStore.getState().plan)).toMatchObject({ ok: true });
      }
    }),
    { numRuns: 60 },
  );
});

test("previews never touch the committed plan or the history", () => {
  let previews = 0;
  fc.assert(
    fc.property(anySteps, (steps) => {
      open();
      for (const step of steps) {
        const before = usePlanStore.getState();
        if (!step.does.startsWith("preview")) continue;
        previews += 1;
        step.run(usePlanStore);
        const after = usePlanStore.getState();
        expect(after.plan).toBe(before.plan);
        expect(after.past).toBe(before.past);
        expect(after.future).toBe(before.future);
        after.cancelPreview();
        expect(usePlanStore.getState().shown).toBe(before.plan);
      }
    }),
    { numRuns: 60 },
  );
  expect(previews).toBeGreaterThan(15);
});
