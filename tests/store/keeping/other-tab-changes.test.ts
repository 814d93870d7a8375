/** One plan in several tabs, and several plans in several tabs: nobody overwrites anybody. */
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import type { Plan } from "../../../src/core/model/plan.ts";
import { layPage } from "../../support/fake-page.ts";
import { breakRequest } from "../../support/storage-breaker.ts";
import { type Tab, killAllTabs, openTab, startTab } from "../../support/tab.ts";

beforeEach(() => {
  layPage();
});
afterEach(async () => {
  vi.restoreAllMocks();
  await killAllTabs();
  vi.unstubAllGlobals();
});

async function titles(tab: Tab): Promise<readonly string[]> {
  return (await tab.stored.listPlans()).map(({ title }) => title).sort();
}

describe("a second tab with the same plan", () => {
  test("only looks, says so, and follows what the first one saves", async () => {
    const writer = await startTab();
    const looker = await startTab();
    expect(writer.isReadOnly()).toBe(false);
    expect(looker.isReadOnly()).toBe(true);
    expect(looker.notice()).toMatch(/open in another tab/);
    const before = looker.plan();
    looker.retitle("Not allowed");
    looker.store.getState().preview({ title: "x", apply: (plan) => ({ ...plan, title: "x" }) });
    looker.store.getState().undo();
    expect(looker.plan()).toBe(before);
    expect(looker.store.getState().shown).toBe(before);
    expect(looker.window.getState().announcement).toMatch(/open in another tab/);
    writer.retitle("Written");
    await writer.flush();
    await vi.waitFor(() => expect(looker.title()).toBe("Written"));
    expect(looker.status().kind).toBe("saved");
    expect(await looker.stored.listGenerations("garden")).toHaveLength(2);
  });

  test("writes no entry, and follows those that the first one writes", async () => {
    const writer = await startTab();
    const looker = await startTab();
    const known = writer.plan().entries.length;
    const written = (id: string) => ({
      title: "Write down",
      apply: (plan: Plan): Plan => ({
        ...plan,
        entries: [...plan.entries, { id, of: "p1", on: 20_600, what: "looked at" }],
      }),
    });
    looker.store.getState().commit(written("not-allowed"));
    expect(looker.plan().entries).toHaveLength(known);
    expect(looker.window.getState().announcement).toMatch(/open in another tab/);
    writer.store.getState().commit(written("e-1"));
    await writer.flush();
    await vi.waitFor(() => expect(looker.plan().entries).toHaveLength(known + 1));
    // Taken over, the record goes on from there, and none is lost.
    await looker.takeOver();
    looker.store.getState().commit(written("e-2"));
    await looker.flush();
    await vi.waitFor(() =>
      expect(
        writer
          .plan()
          .entries.slice(known)
          .map(({ id }) => id),
      ).toEqual(["e-1", "e-2"]),
    );
  });

  test("gets its turn when the first one closes", async () => {
    const writer = await startTab();
    const looker = await startTab();
    writer.retitle("Last words");
    await writer.flush();
    await writer.kill();
    await vi.waitFor(() => expect(looker.isReadOnly()).toBe(false));
    expect(looker.title()).toBe("Last words");
    looker.retitle("My turn");
    await looker.flush();
    expect(await titles(looker)).toEqual(["My turn"]);
  });

  test("takes over: the first one saves what it has and looks from then on", async () => {
    const first = await startTab();
    const second = await startTab();
    first.retitle("Unsaved in the first");
    await second.takeOver();
    await vi.waitFor(() => expect(first.isReadOnly()).toBe(true));
    expect(second.isReadOnly()).toBe(false);
    expect(second.title()).toBe("Unsaved in the first");
    second.retitle("Edited in the second");
    await second.flush();
    await vi.waitFor(() => expect(first.title()).toBe("Edited in the second"));
    expect(await titles(second)).toEqual(["Edited in the second"]);
    // And back again.
    await first.takeOver();
    expect(first.isReadOnly()).toBe(false);
    await vi.waitFor(() => expect(second.isReadOnly()).toBe(true));
  });

  test("takes over from one that is frozen, whose unsaved changes become a plan of their own", async () => {
    const first = await startTab();
    const second = await startTab();
    freezeMessages();
    const mend = breakRequest("add", "NotReadableError");
    first.retitle("Unsaved when frozen");
    // Asks, and gets no answer.
    const taking = second.takeOver();
    await vi.waitFor(() => expect(first.status().kind).toBe("failed"));
    mend();
    await taking;
    expect(second.title()).toBe("Garden");
    await vi.waitFor(() => expect(first.isReadOnly()).toBe(true));
    await vi.waitFor(() => expect(first.title()).toBe("Garden"));
    expect(first.notice()).toMatch(/kept as "Unsaved when frozen \(copy\)"/);
    expect(await titles(second)).toEqual(["Garden", "Unsaved when frozen (copy)"]);
  });

  /** No tab hears another: as when the one asked is asleep. */
  function freezeMessages(): void {
    vi.spyOn(BroadcastChannel.prototype, "postMessage").mockReturnValue();
  }
});

test("different plans in different tabs do not disturb each other", async () => {
  const one = await startTab();
  const two = await startTab();
  void two.file.newPlan();
  await vi.waitFor(() => expect(two.title()).toBe("New plan"));
  expect(two.isReadOnly()).toBe(false);
  one.retitle("First");
  two.retitle("Second");
  await Promise.all([one.flush(), two.flush()]);
  expect(await titles(one)).toEqual(["First", "Second"]);
  expect([one.title(), two.title()]).toEqual(["First", "Second"]);
});

test("two tabs that make a plan at the same moment make two", async () => {
  const tabs = [await startTab(), await startTab()];
  for (const tab of tabs) void tab.file.newPlan();
  for (const tab of tabs) await vi.waitFor(() => expect(tab.title()).toBe("New plan"));
  for (const tab of tabs) await tab.flush();
  expect(await titles(tabs[0] as Tab)).toEqual(["Garden", "New plan", "New plan"]);
});

test("a duplicated tab, with the notes of the first, looks only", async () => {
  const first = await startTab();
  const duplicate = await startTab({ notes: first.notes });
  expect([first.isReadOnly(), duplicate.isReadOnly()]).toEqual([false, true]);
});

describe("without locks", () => {
  beforeEach(() => {
    layPage({ locks: false });
  });

  test("two versions made apart are both kept", async () => {
    const one = await startTab();
    const two = await startTab();
    one.retitle("Version one");
    two.retitle("Version two");
    await one.flush();
    await two.flush();
    await vi.waitFor(() => expect(two.title()).toBe("Version two (copy)"));
    await two.flush();
    expect(two.notice()).toMatch(/Both versions are kept/);
    expect(two.status().kind).toBe("saved");
    expect(await titles(one)).toEqual(["Version one", "Version two (copy)"]);
    // Each goes on with its own.
    one.retitle("One more");
    two.retitle("Two more");
    await Promise.all([one.flush(), two.flush()]);
    expect(await titles(one)).toEqual(["One more", "Two more"]);
  });

  test("a tab with nothing unsaved follows the other and keeps its undo steps", async () => {
    const one = await startTab();
    const two = await startTab();
    one.retitle("From one");
    await one.flush();
    await vi.waitFor(() => expect(two.title()).toBe("From one"));
    two.retitle("From two");
    await two.flush();
    await vi.waitFor(() => expect(one.title()).toBe("From two"));
    expect(one.store.getState().past.map(({ title }) => title)).toEqual([
      "Rename to From one",
      "Changed in another tab",
    ]);
    expect(await titles(one)).toEqual(["From two"]);
  });

  test("the same change made in both is no quarrel", async () => {
    const one = await startTab();
    const two = await startTab();
    one.retitle("Same");
    two.retitle("Same");
    await Promise.all([one.flush(), two.flush()]);
    expect(two.status().kind).toBe("saved");
    expect(await titles(one)).toEqual(["Same"]);
  });
});

test("locks that are kept from the page are as good as none", async () => {
  const refuse = () => Promise.reject(new DOMException("denied", "SecurityError"));
  vi.stubGlobal("navigator", { locks: { request: refuse } });
  const tab = await startTab();
  expect(tab.isReadOnly()).toBe(false);
  tab.retitle("Written all the same");
  await tab.flush();
  expect(tab.status().kind).toBe("saved");
});

test("a lock asked for early is given to whoever first requests it, once, and is nobody else's", async () => {
  const { askLock, requestLock } = await import("../../../src/store/keeping/writer-lock.ts");
  askLock("early");
  // As another tab would ask.
  expect(
    await new Promise(
      (tell) => void navigator.locks.request("early", { ifAvailable: true }, (lock) => tell(lock)),
    ),
  ).toBeNull();
  const hold = await requestLock("early", "if-free");
  expect(hold).not.toBeNull();
  expect(await requestLock("early", "if-free")).toBeNull();
  hold?.release();
  await vi.waitFor(async () => expect(await requestLock("early", "if-free")).not.toBeNull());
});

test("a tab that slept catches up when it is looked at again", async () => {
  const page = layPage({ locks: false });
  const awake = await startTab();
  const sleeper = await openTab();
  await sleeper.start();
  const spy = vi.spyOn(BroadcastChannel.prototype, "postMessage").mockReturnValue();
  awake.retitle("Meanwhile");
  await awake.flush();
  spy.mockRestore();
  expect(sleeper.title()).toBe("Garden");
  page.document.become("visible");
  await vi.waitFor(() => expect(sleeper.title()).toBe("Meanwhile"));
});
