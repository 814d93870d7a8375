/** Lists of stored plans and earlier copies; opening one as a copy; storage bounded by the rule. */
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { moveObjects } from "../../../src/core/edits/move-objects.ts";
import { layPage } from "../../support/fake-page.ts";
import { LAYOUT } from "../../support/garden-plan.ts";
import { type Tab, killAllTabs, reload, startTab } from "../../support/tab.ts";

let tab: Tab;
beforeEach(async () => {
  layPage();
  tab = await startTab();
});
afterEach(async () => {
  vi.useRealTimers();
  await killAllTabs();
  vi.unstubAllGlobals();
});

test("plans are listed with the one saved last first", async () => {
  vi.useFakeTimers({ toFake: ["Date"] });
  void tab.file.newPlan();
  await vi.waitFor(() => expect(tab.title()).toBe("New plan"));
  tab.retitle("Second field");
  vi.setSystemTime(new Date(2030, 0, 1, 9, 0));
  await tab.flush();
  expect(await tab.stored.listPlans()).toEqual([
    {
      planId: tab.plan().id,
      title: "Second field",
      revision: expect.any(Number),
      savedAt: new Date(2030, 0, 1, 9, 0).toISOString(),
    },
    expect.objectContaining({ planId: "garden", title: "Garden", revision: 1 }),
  ]);
});

test("an earlier copy opens as a plan of its own; the plan it came from stays", async () => {
  const original = tab.plan();
  tab.store.getState().commit(moveObjects(LAYOUT, ["planting-1"], 2, 0));
  tab.retitle("Later");
  await tab.flush();
  expect(await tab.stored.openGenerationAsCopy("garden", 1)).toBe("opened");
  const copy = tab.plan();
  expect(copy).toEqual({ ...original, id: copy.id, title: copy.title });
  expect(copy.id).not.toBe("garden");
  expect(copy.title).toMatch(/^Garden \(copy of \d\d:\d\d\)$/);
  await tab.flush();
  const titles = (await tab.stored.listPlans()).map(({ title }) => title).sort();
  expect(titles).toEqual([copy.title, "Later"]);
  expect((await reload(tab)).title()).toBe(copy.title);
});

test("a copy that is not there opens nothing", async () => {
  const before = tab.plan();
  expect(await tab.stored.openGenerationAsCopy("garden", 77)).toBe("unreadable");
  expect(await tab.stored.openGenerationAsCopy("no-such-plan", 1)).toBe("unreadable");
  expect(tab.plan()).toBe(before);
});

test("a season's worth of saves stays within the rule, and the newest is there", async () => {
  vi.useFakeTimers({ toFake: ["Date"], now: new Date(2026, 10, 1, 9, 0) });
  for (let step = 1; step <= 240; step += 1) {
    vi.setSystemTime(Date.now() + 6 * 3_600_000);
    tab.retitle(`Step ${step}`);
    await tab.flush();
  }
  const copies = await tab.stored.listGenerations("garden");
  expect(copies[0]).toMatchObject({ revision: 241, title: "Step 240" });
  expect(copies.length).toBeLessThanOrEqual(60);
  expect(copies.length).toBeGreaterThan(40);
  expect(new Set(copies.map(({ savedAt }) => savedAt.slice(0, 10))).size).toBeGreaterThanOrEqual(
    30,
  );
  expect((await reload(tab)).title()).toBe("Step 240");
});
