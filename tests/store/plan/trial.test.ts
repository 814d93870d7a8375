/** A change on trial: shown on the sheet, kept out of everything else, and put back first. */
import { beforeEach, describe, expect, test } from "vitest";
import { checkLayout } from "../../../src/core/checks/checked-layout.ts";
import { moveObjects } from "../../../src/core/edits/move-objects.ts";
import { copyLayout } from "../../../src/core/edits/layout-edits.ts";
import { usePlanStore } from "../../../src/store/plan/plan-store.ts";
import { useWindowStore } from "../../../src/store/window/window-store.ts";
import { trialPlan } from "../../support/trial-plan.ts";

const store = () => usePlanStore.getState();
const inWindow = () => useWindowStore.getState();
const moveAway = moveObjects("layout-1", ["q"], 900, 0);
const conflicts = () => store().result.findings.filter(({ severity }) => severity === "conflict");

beforeEach(() => {
  const plan = trialPlan({
    p: { at: 0, kind: "tomato", isolationM: 10 },
    q: { at: 3, kind: "tomato", isolationM: 10 },
  });
  store().openPlan(copyLayout("layout-1", "layout-2", "Second").apply(plan));
  store().commit(moveObjects("layout-1", ["p"], 0.5, 0));
  store().preview(moveAway, "trial");
});

describe("while a change is on trial", () => {
  test("it is on the sheet, and not in what files and comparisons are made from", () => {
    const { kept, plan } = store();
    expect(conflicts()).toEqual([]);
    expect(kept.plan).toBe(plan);
    expect(kept.result.findings).toEqual(checkLayout(plan, "layout-1").result.findings);
    expect(kept.result.findings.some(({ severity }) => severity === "conflict")).toBe(true);
  });

  test("the store says what is tried, until anything takes its place", () => {
    expect(store().previewing).toEqual({ edit: moveAway, by: "trial" });
    store().preview(moveObjects("layout-1", ["p"], 1, 0));
    expect(store().previewing?.by).toBe("gesture");
    store().preview(moveAway, "trial");
    store().commit(moveObjects("layout-1", ["p"], 1, 0));
    expect(store().previewing).toBeNull();
  });

  test("undo puts it back, says so, and leaves the steps before it", () => {
    store().undo();
    expect(store().previewing).toBeNull();
    expect(store().shown).toBe(store().plan);
    expect(store().past).toHaveLength(1);
    expect(inWindow().announcement).toBe(`Not applied: ${moveAway.title}.`);
    store().undo();
    expect(store().past).toHaveLength(0);
  });

  test("redo puts it back and goes on", () => {
    store().cancelPreview();
    store().undo();
    store().preview(moveAway, "trial");
    store().redo();
    expect(store().previewing).toBeNull();
    expect(store().past).toHaveLength(1);
    expect(store().shown).toBe(store().plan);
  });

  test("another layout puts it back and comes into view", () => {
    store().showLayout("layout-2");
    expect(store().layoutId).toBe("layout-2");
    expect(store().previewing).toBeNull();
    expect(store().shown).toBe(store().plan);
  });

  test("a drag that runs is not broken off by undo or another layout", () => {
    store().preview(moveObjects("layout-1", ["p"], 1, 0));
    store().undo();
    store().showLayout("layout-2");
    expect(store().previewing?.by).toBe("gesture");
    expect(store().layoutId).toBe("layout-1");
  });
});
