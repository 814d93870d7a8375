/** Nothing lost on reload; what is opened at the start; nothing saved before. */
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { type FakePage, layPage } from "../support/fake-page.ts";
import { LAYOUT, gardenPlan } from "../support/garden-plan.ts";
import { moveObjects } from "../../src/core/edits/move-objects.ts";
import { killAllTabs, openTab, reload, startTab } from "../support/tab.ts";

let page: FakePage;
beforeEach(() => {
  page = layPage();
});
afterEach(async () => {
  await killAllTabs();
  vi.unstubAllGlobals();
});

test("the first visit opens the sample and stores it", async () => {
  const tab = await openTab();
  expect(tab.status().kind).toBe("loading");
  await tab.start();
  await tab.flush();
  expect(tab.plan()).toEqual(gardenPlan());
  expect(tab.status()).toEqual({ kind: "saved", at: expect.stringMatching(/^\d\d:\d\d$/) });
  expect((await tab.stored.listPlans()).map(({ planId }) => planId)).toEqual(["garden"]);
});

test("after a reload the plan is the one last saved", async () => {
  const tab = await startTab();
  tab.store.getState().commit(moveObjects(LAYOUT, ["planting-2"], 1.25, -0.5));
  await tab.flush();
  const saved = tab.plan();
  const next = await reload(tab);
  expect(next.plan()).toEqual(saved);
  expect(next.status().kind).toBe("saved");
  expect(next.isReadOnly()).toBe(false);
});

test("hiding the page saves at once", async () => {
  const tab = await startTab();
  tab.retitle("Changed in the last moment");
  page.document.become("hidden");
  await vi.waitFor(() => expect(tab.status().kind).toBe("saved"));
  expect((await reload(tab)).title()).toBe("Changed in the last moment");
});

test("nothing is edited or saved before the plan is open", async () => {
  const first = await startTab();
  first.retitle("Winter's work");
  await first.flush();
  await first.kill();
  const tab = await openTab({ notes: first.notes });
  const starting = tab.start();
  tab.retitle("Typed into the void");
  tab.store.getState().undo();
  await starting;
  await tab.flush();
  expect(tab.title()).toBe("Winter's work");
  expect(await tab.stored.listGenerations("garden")).toHaveLength(2);
});

test("each tab brings back its own plan, a new tab the one saved last", async () => {
  const one = await startTab();
  const two = await openTab({});
  await two.start();
  void two.file.newPlan();
  await vi.waitFor(() => expect(two.title()).toBe("New plan"));
  two.retitle("Second field");
  await two.flush();
  expect((await reload(one)).title()).toBe("Garden");
  expect((await reload(two)).title()).toBe("Second field");
  await killAllTabs();
  expect((await startTab()).title()).toBe("Second field");
});

test("a plan the storage no longer has is not shown empty: the sample opens", async () => {
  const tab = await startTab();
  await tab.kill();
  page = layPage();
  const next = await startTab({ notes: tab.notes });
  expect(next.plan()).toEqual(gardenPlan());
  expect(next.notice()).toBeNull();
});

test("a faulty sample is reported and an empty plan opens", async () => {
  const tab = await startTab({ sample: "{}" });
  expect(tab.problems()[0]).toMatchObject({ file: "sample plan", field: "format" });
  expect(tab.plan().layouts[0]?.plantings).toEqual([]);
  tab.retitle("Still works");
  await tab.flush();
  expect(tab.status().kind).toBe("saved");
});

test("starting twice is starting once", async () => {
  const tab = await openTab();
  await Promise.all([tab.start(), tab.start()]);
  await tab.flush();
  expect(await tab.stored.listGenerations("garden")).toHaveLength(1);
});

describe("damaged copies", () => {
  test("the newest good copy opens, and the damaged one is kept", async () => {
    const tab = await startTab();
    for (const title of ["One", "Two", "Three"]) {
      tab.retitle(title);
      await tab.flush();
    }
    await damage("garden", 4);
    const next = await reload(tab);
    expect(next.title()).toBe("Two");
    expect(next.notice()).toMatch(/"Two" is damaged.*has been opened; the damaged one is kept/);
    // The good copy is stored again, on top; the damaged one is still there.
    const copies = await next.stored.listGenerations("garden");
    expect(copies.map(({ revision, title }) => [revision, title])).toEqual([
      [5, "Two"],
      [4, "Three"],
      [3, "Two"],
      [2, "One"],
      [1, "Garden"],
    ]);
    expect((await reload(next)).title()).toBe("Two");
  });

  test("when every copy is damaged the sample opens, nothing is deleted, and that is said", async () => {
    const tab = await startTab();
    tab.retitle("Lost");
    await tab.flush();
    await damage("garden", 1);
    await damage("garden", 2);
    const next = await reload(tab);
    expect(next.title()).toBe("Garden");
    expect(next.plan().id).not.toBe("garden");
    expect(next.notice()).toMatch(/cannot be read. Nothing was deleted/);
    expect(await next.stored.listGenerations("garden")).toHaveLength(2);
    expect(await next.stored.openGenerationAsCopy("garden", 2)).toBe("unreadable");
  });

  /** Flips one letter of a stored copy behind the program's back. */
  async function damage(planId: string, revision: number): Promise<void> {
    const { openDB } = await import("idb");
    const db = await openDB("wideberth", 1);
    const generation = (await db.get("generations", [planId, revision])) as { text: string };
    await db.put("generations", {
      ...generation,
      text: generation.text.replace("Amber Lantern", "Amber Lantern."),
    });
    db.close();
  }
});
