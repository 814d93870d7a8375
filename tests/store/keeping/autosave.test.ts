/** What autosave hears, when it saves, what it says, and when leaving is warned of. */
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { moveObjects } from "../../../src/core/edits/move-objects.ts";
import { type FakePage, layPage } from "../../support/fake-page.ts";
import { LAYOUT } from "../../support/garden-plan.ts";
import { type Tab, killAllTabs, startTab } from "../../support/tab.ts";

let page: FakePage;
let tab: Tab;

beforeEach(async () => {
  page = layPage();
  tab = await startTab();
  // The database is driven by immediates, which stay real.
  vi.useFakeTimers({ toFake: ["setTimeout", "clearTimeout", "Date"] });
  vi.setSystemTime(new Date(2026, 10, 3, 10, 2));
});
afterEach(async () => {
  vi.useRealTimers();
  await killAllTabs();
  vi.unstubAllGlobals();
});

const revisions = async () => (await tab.stored.listGenerations("garden")).length;
const move = (dx: number) => moveObjects(LAYOUT, ["planting-1"], dx, 0);

/**
 * Lets a save under way come to its end, without any time passing: turns of the loop, in which the
 * database works and sums are made on other threads, until the state says it is over. Some turns
 * go before, for what would begin a save that should not be.
 */
async function settled(): Promise<void> {
  do {
    for (let turn = 0; turn < 20; turn += 1) {
      await new Promise((resolve) => setImmediate(resolve));
    }
  } while (tab.status().kind === "saving");
}

test("a commit is saved after a pause, and the state says so truthfully all along", async () => {
  tab.store.getState().commit(move(1));
  expect(tab.status()).toEqual({ kind: "unsaved" });
  vi.advanceTimersByTime(399);
  await settled();
  expect(await revisions()).toBe(1);
  expect(tab.status()).toEqual({ kind: "unsaved" });
  vi.advanceTimersByTime(1);
  expect(tab.status()).toEqual({ kind: "saving" });
  await settled();
  expect(tab.status()).toEqual({ kind: "saved", at: "10:02" });
  expect(await revisions()).toBe(2);
});

test("commits without a pause are saved within two seconds", async () => {
  for (let step = 0; step < 20; step += 1) {
    tab.store.getState().commit(move(0.1));
    vi.advanceTimersByTime(100);
  }
  await settled();
  expect(await revisions()).toBe(2);
});

test("a gesture under way is not saved, nor is one called off", async () => {
  for (let step = 1; step <= 5; step += 1) {
    tab.store.getState().preview(move(step));
    vi.advanceTimersByTime(3000);
    await settled();
  }
  expect(tab.status().kind).toBe("saved");
  page.document.become("hidden");
  tab.store.getState().cancelPreview();
  vi.advanceTimersByTime(3000);
  await settled();
  expect(await revisions()).toBe(1);
});

test("selecting, announcing, tools and layouts save nothing", async () => {
  tab.window.getState().select(["planting-1"]);
  tab.window.getState().announce("hello");
  tab.window.getState().bringIntoView("all");
  tab.store.getState().showLayout(LAYOUT);
  vi.advanceTimersByTime(3000);
  await settled();
  expect(tab.status().kind).toBe("saved");
  expect(await revisions()).toBe(1);
});

test("an edit undone before it is saved leaves no copy behind", async () => {
  tab.store.getState().commit(move(1));
  tab.store.getState().undo();
  vi.advanceTimersByTime(400);
  await settled();
  expect(tab.status().kind).toBe("saved");
  expect(await revisions()).toBe(1);
});

test("saves follow each other in order, and the last one is what stays", async () => {
  for (let step = 1; step <= 12; step += 1) {
    tab.retitle(`Version ${step}`);
    void tab.flush();
    if (step % 3 === 0) await new Promise((resolve) => setImmediate(resolve));
  }
  await tab.flush();
  const copies = await tab.stored.listGenerations("garden");
  expect(copies[0]?.title).toBe("Version 12");
  const numbers = copies.map(({ title }) => Number(title.replace(/\D/g, "")));
  expect(numbers).toEqual([...numbers].sort((a, b) => b - a));
  expect(copies.map(({ revision }) => revision)).toEqual(
    copies.map((_, index) => copies.length - index),
  );
});

test("a change during a save is not called saved", async () => {
  tab.retitle("First");
  const saving = tab.flush();
  tab.retitle("Second");
  expect(tab.status().kind).not.toBe("saved");
  await saving;
  expect(tab.status().kind).not.toBe("saved");
  vi.advanceTimersByTime(400);
  await settled();
  expect(tab.status().kind).toBe("saved");
  expect((await tab.stored.listPlans())[0]?.title).toBe("Second");
});

describe("leaving the page", () => {
  test("is warned of only while there is work to lose", async () => {
    expect(page.warnsOnLeaving()).toBe(false);
    tab.store.getState().preview(move(1));
    expect(page.warnsOnLeaving()).toBe(false);
    tab.store.getState().commit(move(1));
    expect(page.warnsOnLeaving()).toBe(true);
    await tab.flush();
    expect(page.warnsOnLeaving()).toBe(false);
  });

  test("saves at once when the page is hidden", async () => {
    tab.retitle("Phone put away");
    page.document.become("hidden");
    await settled();
    expect((await tab.stored.listPlans())[0]?.title).toBe("Phone put away");
  });

  test("saves at once when the page goes", async () => {
    tab.retitle("Window shut");
    window.dispatchEvent(new Event("pagehide"));
    await settled();
    expect((await tab.stored.listPlans())[0]?.title).toBe("Window shut");
  });
});

describe("a fault of ours", () => {
  test("that empties the plan without an edit does not reach the storage", async () => {
    const { plan } = tab.store.getState();
    const layouts = plan.layouts.map((layout) => ({ ...layout, beds: [], plantings: [] }));
    const empty = { ...plan, varieties: [], layouts };
    tab.store.setState({ plan: empty, shown: empty });
    vi.advanceTimersByTime(400);
    await settled();
    expect(tab.status()).toMatchObject({ kind: "failed", reason: /lost most of its content/ });
    expect(await revisions()).toBe(1);
    expect(page.warnsOnLeaving()).toBe(true);
  });

  test("that makes a plan which would not open again does not reach the storage", async () => {
    tab.retitle("Good");
    await tab.flush();
    tab.store.getState().commit({
      title: "Break",
      apply: (plan) => ({ ...plan, site: { ...plan.site, upBearingDeg: Number.NaN } }),
    });
    await tab.flush();
    expect(tab.status()).toMatchObject({ kind: "failed", reason: /the plan has a fault/ });
    expect((await tab.stored.listPlans())[0]).toMatchObject({ title: "Good", revision: 2 });
    tab.store.getState().undo();
    await tab.flush();
    expect(tab.status().kind).toBe("saved");
  });

  test("a grower who deletes everything means it", async () => {
    tab.store.getState().commit({
      title: "Delete everything",
      apply: (plan) => ({
        ...plan,
        surroundings: [],
        varieties: [],
        layouts: plan.layouts.map((layout) => ({ ...layout, beds: [], plantings: [] })),
      }),
    });
    await tab.flush();
    expect(tab.status().kind).toBe("saved");
    expect(await revisions()).toBe(2);
  });
});

test.each<[string, () => Promise<boolean>]>([
  ["refuses", () => Promise.resolve(false)],
  ["breaks", () => Promise.reject(new Error("no"))],
  ["never answers", () => new Promise(() => undefined)],
])(
  "the browser is asked to keep the storage once, after the first change, and %s",
  async (_, answer) => {
    const persist = vi.fn(answer);
    vi.stubGlobal("navigator", { storage: { persisted: () => Promise.resolve(false), persist } });
    await tab.flush();
    expect(persist).not.toHaveBeenCalled();
    tab.retitle("One");
    await tab.flush();
    tab.retitle("Two");
    await tab.flush();
    expect(persist).toHaveBeenCalledTimes(1);
    expect(tab.status().kind).toBe("saved");
  },
);

test("a clock that jumps back does not disturb the order of copies", async () => {
  tab.retitle("Before the jump");
  await tab.flush();
  vi.setSystemTime(new Date(2019, 0, 1, 8, 0));
  tab.retitle("After the jump");
  await tab.flush();
  const copies = await tab.stored.listGenerations("garden");
  expect(copies.map(({ title }) => title)).toEqual(["After the jump", "Before the jump", "Garden"]);
  expect(copies[0]?.savedAt.slice(0, 4)).toMatch(/2018|2019/);
});
