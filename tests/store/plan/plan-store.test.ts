/** The store: gestures, undo, selection, layouts, what is announced. */
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { copyLayout, renameLayout } from "../../../src/core/edits/layout-edits.ts";
import { moveObjects } from "../../../src/core/edits/move-objects.ts";
import {
  changePlan,
  changePlantings,
  removeObjects,
} from "../../../src/core/edits/object-edits.ts";
import type { Plan } from "../../../src/core/model/plan.ts";
import { HISTORY_DEPTH, usePlanStore } from "../../../src/store/plan/plan-store.ts";
import { useWindowStore } from "../../../src/store/window/window-store.ts";
import { LAYOUT, gardenPlan } from "../../support/garden-plan.ts";

const store = () => usePlanStore.getState();
const inWindow = () => useWindowStore.getState();
const move = (dx: number, id = "planting-1") =>
  moveObjects(LAYOUT, [id], dx, 0, `Move ${id.replace("planting-", "no. ")}`);
const plantingAt = (plan: Plan, index: number) => plan.layouts[0]?.plantings[index];
const middleOf = (plan: Plan, index: number) => {
  const outline = plantingAt(plan, index)?.outline;
  return outline?.shape === "rectangle" ? outline.x : Number.NaN;
};

beforeEach(() => store().openPlan(gardenPlan()));

describe("a gesture", () => {
  test("of sixty frames is one undo step", () => {
    const { plan } = store();
    for (let frame = 1; frame <= 60; frame += 1) store().preview(move(frame / 10));
    expect(store().previewing?.by).toBe("gesture");
    expect(store().plan).toBe(plan);
    store().commit(move(6));
    expect(store().past.map(({ title }) => title)).toEqual(["Move no. 1"]);
    expect(store().previewing).toBeNull();
    expect(store().shown).toBe(store().plan);
    store().undo();
    expect(store().plan).toEqual(plan);
    expect(store().past).toEqual([]);
  });

  test("that is let go keeps what was shown: not edited, not checked again", () => {
    let runs = 0;
    const whole = move(4);
    const counted = { ...whole, apply: (plan: Plan) => ((runs += 1), whole.apply(plan)) };
    store().preview(counted);
    const { shown, result } = store();
    store().commit(counted);
    expect(runs).toBe(1);
    expect(store().plan).toBe(shown);
    expect(store().result).toBe(result);
    expect(store().kept).toMatchObject({ plan: shown, result });
    expect(store().past.map(({ title }) => title)).toEqual(["Move no. 1"]);
    // Another edit, even one that says the same, is worked out anew.
    store().preview(move(5));
    store().commit(counted);
    expect(runs).toBe(2);
    expect(middleOf(store().plan, 0)).toBe(middleOf(shown, 0) + 4);
  });

  test("edits the committed plan on every frame, so nothing adds up", () => {
    const { plan } = store();
    for (let frame = 0; frame < 1000; frame += 1) store().preview(move(0.1));
    expect(middleOf(store().shown, 0)).toBe(middleOf(plan, 0) + 0.1);
    store().commit(move(0.1));
    expect(middleOf(store().plan, 0)).toBe(middleOf(plan, 0) + 0.1);
  });

  test("called off restores the very same plan, and its findings", () => {
    const { plan, result } = store();
    store().preview(move(30));
    expect(store().result.findings).not.toEqual(result.findings);
    store().cancelPreview();
    expect(store().plan).toBe(plan);
    expect(store().shown).toBe(plan);
    expect(store().result.findings).toEqual(result.findings);
    expect(store().past).toEqual([]);
    expect(store().previewing).toBeNull();
  });

  test("updates the findings on every frame", () => {
    const conflicts = () =>
      store().result.findings.filter(({ severity }) => severity === "conflict").length;
    const before = conflicts();
    expect(before).toBeGreaterThan(0);
    store().preview(removeObjects(LAYOUT, ["bed-1", "bed-2", "bed-3"]));
    expect(conflicts()).toBe(0);
    store().preview(move(0));
    expect(conflicts()).toBe(before);
  });

  test("that ends where it began leaves no step", () => {
    const { plan } = store();
    store().preview(move(3));
    store().commit(move(0));
    expect(store().plan).toBe(plan);
    expect(store().shown).toBe(plan);
    expect(store().past).toEqual([]);
    expect(store().previewing).toBeNull();
  });

  test("holds undo, redo and other layouts off while it lasts", () => {
    store().commit(copyLayout(LAYOUT, "layout-2", "Layout 2"));
    store().commit(move(1));
    store().preview(move(2));
    const { shown } = store();
    store().undo();
    store().redo();
    store().showLayout("layout-2");
    expect(store().shown).toBe(shown);
    expect(store().layoutId).toBe(LAYOUT);
    expect(store().past).toHaveLength(2);
  });
});

describe("undo and redo", () => {
  test("are exact, and leave what an edit did not touch the same objects", () => {
    const first = store().plan;
    store().commit(move(1.1));
    const second = store().plan;
    store().commit(changePlantings(LAYOUT, ["planting-3"], { cover: "cage" }, "Cover"));
    const third = store().plan;
    store().undo();
    expect(store().plan).toEqual(second);
    store().undo();
    expect(store().plan).toEqual(first);
    expect(store().plan.varieties).toBe(first.varieties);
    expect(store().plan.surroundings).toBe(first.surroundings);
    expect(store().plan.layouts[0]?.beds).toBe(first.layouts[0]?.beds);
    for (const index of [1, 3, 4, 5]) {
      expect(plantingAt(store().plan, index)).toBe(plantingAt(first, index));
    }
    store().redo();
    store().redo();
    expect(store().plan).toEqual(third);
    expect(plantingAt(store().plan, 1)).toBe(plantingAt(first, 1));
    expect(store().future).toEqual([]);
  });

  test("restore what was deleted, in its place", () => {
    const { plan } = store();
    store().commit(removeObjects(LAYOUT, ["bed-2"]));
    expect(store().plan.layouts[0]?.plantings).toHaveLength(4);
    store().undo();
    expect(store().plan).toEqual(plan);
    expect(plantingAt(store().plan, 2)).toBe(plantingAt(plan, 2));
  });

  test("do nothing when there is nothing to undo or redo", () => {
    const before = store();
    before.undo();
    before.redo();
    expect(store()).toBe(before);
  });

  test("a new edit ends what could be redone", () => {
    store().commit(move(1));
    store().undo();
    store().commit(move(2));
    expect(store().future).toEqual([]);
    store().redo();
    expect(store().past).toHaveLength(1);
  });

  test("bring the layout into view the step happened on", () => {
    store().commit(copyLayout(LAYOUT, "layout-2", "Layout 2"));
    store().showLayout("layout-2");
    store().commit(renameLayout("layout-2", "Sunny side"));
    store().showLayout(LAYOUT);
    store().undo();
    expect(store().layoutId).toBe("layout-2");
  });

  test("of a layout's making fall back to one that is there", () => {
    store().commit(copyLayout(LAYOUT, "layout-2", "Layout 2"));
    store().showLayout("layout-2");
    store().undo();
    expect(store().layoutId).toBe(LAYOUT);
  });

  test("go back as many steps as are kept, and no more are kept", () => {
    for (let step = 1; step <= HISTORY_DEPTH + 20; step += 1) {
      store().commit(changePlan({ title: `Step ${step}` }, `Step ${step}`));
    }
    expect(store().past).toHaveLength(HISTORY_DEPTH);
    for (let step = 0; step < HISTORY_DEPTH + 20; step += 1) store().undo();
    expect(store().plan.title).toBe("Step 20");
    for (let step = 0; step < HISTORY_DEPTH; step += 1) store().redo();
    expect(store().plan.title).toBe(`Step ${HISTORY_DEPTH + 20}`);
  });
});

describe("a plan that may only be looked at", () => {
  afterEach(() => store().setLookOnly(null));

  test("refuses edits with the reason, also through an action taken before", () => {
    const { commit, preview, undo, redo } = store();
    commit(move(1));
    preview(move(2));
    const { plan, past } = store();
    store().setLookOnly("It is open elsewhere.");
    expect(store().previewing).toBeNull();
    for (const edit of [() => commit(move(3)), undo, redo]) {
      inWindow().announce("");
      edit();
      expect(inWindow().announcement).toBe("It is open elsewhere.");
    }
    inWindow().announce("");
    preview(move(4));
    expect(inWindow().announcement).toBe("");
    expect([store().plan, store().shown, store().past]).toEqual([plan, plan, past]);
  });

  test("still follows what is stored, and another layout can be looked at", () => {
    store().commit(copyLayout(LAYOUT, "layout-2", "Second"));
    store().setLookOnly("It is open elsewhere.");
    store().showLayout("layout-2");
    expect(store().layoutId).toBe("layout-2");
    store().follow(changePlan({ title: "Stored elsewhere" }, "Changed in another tab"));
    expect(store().plan.title).toBe("Stored elsewhere");
    store().setLookOnly(null);
    store().undo();
    expect(store().plan.title).not.toBe("Stored elsewhere");
  });
});

describe("selection", () => {
  test("keeps what is still there and drops what is gone", () => {
    inWindow().select(["planting-1", "planting-3", "wild-1"]);
    const { selection } = inWindow();
    store().commit(move(1));
    expect(inWindow().selection).toBe(selection);
    store().commit(removeObjects(LAYOUT, ["planting-3"]));
    expect(inWindow().selection).toEqual(["planting-1", "wild-1"]);
    store().undo();
    expect(inWindow().selection).toEqual(["planting-1", "wild-1"]);
  });

  test("and the open finding are put away with the layout", () => {
    store().commit(copyLayout(LAYOUT, "layout-2", "Layout 2"));
    inWindow().select(["planting-1"]);
    inWindow().showFinding(store().result.findings[0]?.id ?? null);
    store().showLayout("layout-2");
    expect({ ...store(), ...inWindow() }).toMatchObject({
      selection: [],
      openFinding: null,
      layoutId: "layout-2",
    });
  });
});

describe("announcements", () => {
  /** Findings of each severity, counted here. */
  const counted = () => {
    const { findings } = store().result;
    const count = (severity: string) =>
      findings.filter((each) => each.severity === severity).length;
    return ["conflict", "caution", "unknown"]
      .filter((severity) => severity === "conflict" || count(severity) > 0)
      .map((severity) => `${count(severity)} ${severity}${count(severity) === 1 ? "" : "s"}`)
      .join(", ");
  };

  test("say what happened, codes that changed with the bed, and how many findings there are now", () => {
    store().commit(move(4));
    expect(inWindow().announcement).toMatch(/^Moved no\. 1 by [\d.]+ m\. B01-1 is now B02-3\. /);
    expect(inWindow().announcement).toContain(` ${counted()}.`);
    store().undo();
    expect(inWindow().announcement).toBe(`Undone: Move no. 1. ${counted()}.`);
    store().redo();
    expect(inWindow().announcement).toBe(`Redone: Move no. 1. ${counted()}.`);
    store().commit(removeObjects(LAYOUT, ["bed-1", "bed-2", "bed-3"], "Clear the beds"));
    expect(inWindow().announcement).toBe(`Cleared the beds. ${counted()}.`);
    expect(inWindow().announcement).toContain("0 conflicts");
  });

  test("say what an edit leaves alone because it is locked", () => {
    const locked = { locked: true };
    store().commit(changePlantings(LAYOUT, ["planting-1"], locked, "Lock B01-1"));
    store().commit(removeObjects(LAYOUT, ["planting-1"], "Delete B01-1"));
    expect(inWindow().announcement).toBe("B01-1 is locked and stays as it is.");
    expect(store().past.at(-1)?.title).toBe("Lock B01-1");
  });

  test("are not made for every frame of a gesture", () => {
    const before = inWindow().announcement;
    store().preview(move(1));
    store().cancelPreview();
    expect(inWindow().announcement).toBe(before);
  });
});

describe("opening a plan", () => {
  test("starts everything anew, on the chosen layout", () => {
    store().commit(move(1));
    inWindow().select(["planting-1"]);
    inWindow().pickTool("measure");
    const plan = copyLayout(LAYOUT, "layout-2", "Layout 2").apply(gardenPlan());
    store().openPlan({ ...plan, chosenLayout: "layout-2" });
    expect(store()).toMatchObject({
      past: [],
      future: [],
      layoutId: "layout-2",
      previewing: null,
    });
    expect(inWindow()).toMatchObject({ selection: [], tool: "select" });
    expect(store().shown).toBe(store().plan);
  });

  test("during a gesture ends the gesture", () => {
    store().preview(move(3));
    const plan = gardenPlan(2);
    store().openPlan(plan);
    expect(store().shown).toBe(plan);
    expect(store().previewing).toBeNull();
  });
});
