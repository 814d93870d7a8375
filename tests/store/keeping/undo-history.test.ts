/** Undo goes on after a reload, with the copy it belongs to and no other. */
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import type { Plan } from "../../../src/core/model/plan.ts";
import type { HistoryStep } from "../../../src/store/plan/plan-store.ts";
import {
  KEPT_CHARACTERS,
  KEPT_STEPS,
  NO_HISTORY,
  historyText,
  readHistory,
} from "../../../src/store/keeping/undo-history.ts";
import { type FakePage, layPage } from "../../support/fake-page.ts";
import { gardenPlan } from "../../support/garden-plan.ts";
import { breakRequest } from "../../support/storage-breaker.ts";
import { type Tab, killAllTabs, reload, startTab } from "../../support/tab.ts";

let page: FakePage;
let tab: Tab;
beforeEach(async () => {
  page = layPage();
  tab = await startTab();
});
afterEach(async () => {
  vi.restoreAllMocks();
  await killAllTabs();
  vi.unstubAllGlobals();
});

const undo = () => tab.store.getState().undo();
const redo = () => tab.store.getState().redo();

test("after a reload every step can be undone and done again", async () => {
  const before = tab.plan();
  tab.retitle("One");
  tab.store.getState().commit({
    title: "Remove a planting and note something",
    apply: (plan): Plan => ({
      ...plan,
      chosenLayout: plan.layouts[0]?.id,
      layouts: plan.layouts.map((layout) => ({ ...layout, plantings: layout.plantings.slice(1) })),
    }),
  });
  tab.retitle("Two");
  undo();
  const left = tab.plan();
  await tab.flush();
  tab = await reload(tab);
  expect(tab.plan()).toEqual(left);
  redo();
  expect(tab.title()).toBe("Two");
  for (let step = 0; step < 3; step += 1) undo();
  expect(tab.plan()).toEqual(before);
  await tab.flush();
  tab = await reload(tab);
  for (let step = 0; step < 3; step += 1) redo();
  expect(tab.title()).toBe("Two");
});

test("what was unsaved when the page went is one more step", async () => {
  tab.retitle("Stored");
  await tab.flush();
  const mend = breakRequest("add", "AbortError");
  tab.retitle("Noted at the last moment");
  page.document.become("hidden");
  await tab.kill();
  mend();
  page.document.become("visible");
  tab = await startTab({ notes: tab.notes });
  expect(tab.title()).toBe("Noted at the last moment");
  undo();
  expect(tab.title()).toBe("Stored");
  undo();
  expect(tab.title()).toBe("Garden");
});

test("each plan has its own steps, and another plan has none of them", async () => {
  tab.retitle("Mine");
  await tab.flush();
  void tab.file.newPlan();
  await expect.poll(() => tab.title()).not.toBe("Mine");
  undo();
  expect(tab.store.getState().past).toEqual([]);
  tab.retitle("The other");
  await tab.flush();
  tab = await reload(tab);
  undo();
  expect(tab.store.getState().past).toEqual([]);
  expect(tab.title()).not.toBe("Garden");
});

const step = (from: string, to: string): HistoryStep => ({
  title: to,
  layoutId: "layout-1",
  patch: { op: "fields", fields: [["title", { op: "set", before: from, after: to }]] },
});
const plan = gardenPlan();

test("the newest steps that fit are kept", () => {
  const many = Array.from({ length: 900 }, (_, index) => step(`${index}`, `${index + 1}`));
  const kept = readHistory(historyText({ past: many, future: [] }, "sum"), "sum", {
    ...plan,
    title: "900",
  });
  expect(kept.past).toHaveLength(KEPT_STEPS);
  expect(kept.past.at(-1)?.title).toBe("900");
  const heavy = step("x".repeat(KEPT_CHARACTERS), plan.title);
  const light = step(plan.title, "light");
  const text = historyText({ past: [heavy, light], future: [] }, "sum");
  expect(text.length).toBeLessThan(KEPT_CHARACTERS);
  expect(readHistory(text, "sum", { ...plan, title: "light" }).past).toEqual([light]);
});

test.each([
  ["another copy's", historyText({ past: [step("a", plan.title)], future: [] }, "other")],
  ["no JSON", "{"],
  ["of another shape", '{"checksum":"sum","past":[{"title":1}],"future":[]}'],
  ["leading to another plan", historyText({ past: [step("a", "elsewhere")], future: [] }, "sum")],
  [
    "reaching where nothing is",
    '{"checksum":"sum","past":[{"title":"x","layoutId":"l","patch":{"op":"fields","fields":[["nowhere",{"op":"items","items":[[3,{"op":"set"}]]}]]}}],"future":[]}',
  ],
  [
    "meaning harm",
    '{"checksum":"sum","past":[{"title":"x","layoutId":"l","patch":{"op":"fields","fields":[["__proto__",{"op":"set","after":{"polluted":1}}]]}}],"future":[]}',
  ],
])("steps that are %s are passed over", (_what, text) => {
  expect(readHistory(text, "sum", plan)).toEqual(NO_HISTORY);
  expect(Reflect.get({}, "polluted")).toBeUndefined();
});
