/**
 * Storage that refuses, fills up, drops the connection, dies in the middle, is wiped, or belongs
 * to another version. Always: the plan stays in memory, the state is honest, good copies stay.
 */
import { openDB } from "idb";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { type FakePage, layPage } from "../../support/fake-page.ts";
import {
  breakRequest,
  breakTransaction,
  cutAfter,
  requestsOfOneSave,
} from "../../support/storage-breaker.ts";
import { type Tab, killAllTabs, openTab, reload, startTab } from "../../support/tab.ts";

let page: FakePage;
beforeEach(() => {
  page = layPage();
});
afterEach(async () => {
  vi.restoreAllMocks();
  await killAllTabs();
  vi.unstubAllGlobals();
});

async function savedTitle(tab: Tab): Promise<string | undefined> {
  return (await tab.stored.listPlans())[0]?.title;
}

describe("no storage at all", () => {
  test.each([
    ["is missing", undefined],
    [
      "is refused",
      {
        open: () => {
          throw new DOMException("denied", "SecurityError");
        },
      },
    ],
  ])("when it %s the program works in memory and says so", async (_, indexedDB) => {
    vi.stubGlobal("indexedDB", indexedDB);
    const tab = await startTab();
    expect(tab.title()).toBe("Garden");
    expect(tab.status()).toMatchObject({ kind: "failed", reason: /lets the page store nothing/ });
    // A visitor who changed nothing is not held back.
    expect(page.warnsOnLeaving()).toBe(false);
    tab.retitle("In memory");
    await tab.flush();
    expect(tab.title()).toBe("In memory");
    expect(tab.status()).toMatchObject({ kind: "failed", reason: /save the plan to a file/ });
    expect(page.warnsOnLeaving()).toBe(true);
  });

  test("when it never answers the program goes on in memory, and says so", async () => {
    vi.stubGlobal("indexedDB", { open: () => new IDBOpenDBRequest() });
    const tab = await openTab();
    vi.useFakeTimers({ toFake: ["setTimeout", "clearTimeout"] });
    const starting = tab.start();
    await vi.advanceTimersByTimeAsync(9_000);
    expect(tab.status().kind).toBe("loading");
    await vi.advanceTimersByTimeAsync(30_000);
    vi.useRealTimers();
    await starting;
    expect(tab.title()).toBe("Garden");
    expect(tab.status()).toMatchObject({ kind: "failed", reason: /does not answer/ });
  });

  test("notes that cannot be kept do no harm", async () => {
    const refuse = () => {
      throw new DOMException("denied", "SecurityError");
    };
    const tab = await openTab();
    vi.stubGlobal("sessionStorage", { getItem: refuse, setItem: refuse });
    await tab.start();
    tab.retitle("Kept all the same");
    await tab.flush();
    await tab.kill();
    const next = await openTab();
    vi.stubGlobal("sessionStorage", { getItem: refuse, setItem: refuse });
    await next.start();
    expect(next.title()).toBe("Kept all the same");
  });
});

describe("a full storage", () => {
  test.each([
    ["when writing", () => breakRequest("add", "QuotaExceededError")],
    ["only at the very end", () => breakTransaction("QuotaExceededError")],
  ])(
    "met %s: not called saved, the good copy stays, and saving goes on when there is room",
    async (_, fill) => {
      const tab = await startTab();
      const mend = fill();
      tab.retitle("Too much");
      await tab.flush();
      expect(tab.status()).toMatchObject({ kind: "failed", reason: /storage is full/ });
      expect(page.warnsOnLeaving()).toBe(true);
      mend();
      expect(await savedTitle(tab)).toBe("Garden");
      tab.retitle("Room again");
      await tab.flush();
      expect(tab.status().kind).toBe("saved");
      expect(await savedTitle(tab)).toBe("Room again");
    },
  );

  test("makes room by the written rule and tries again", async () => {
    const tab = await startTab();
    for (let step = 1; step <= 10; step += 1) {
      tab.retitle(`Version ${step}`);
      await tab.flush();
    }
    breakRequest("add", "QuotaExceededError", 1);
    tab.retitle("Fits now");
    await tab.flush();
    expect(tab.status().kind).toBe("saved");
    const titles = (await tab.stored.listGenerations("garden")).map(({ title }) => title);
    expect(titles).toEqual(["Fits now", "Version 10", "Version 9", "Version 8", "Garden"]);
  });
});

describe("a lost connection", () => {
  test("is opened once more, unnoticed", async () => {
    const tab = await startTab();
    breakRequest("add", "UnknownError", 1);
    tab.retitle("Over the second connection");
    await tab.flush();
    expect(tab.status().kind).toBe("saved");
    expect(await savedTitle(tab)).toBe("Over the second connection");
  });

  test("that stays lost is said, and saving is tried again by itself", async () => {
    const tab = await startTab();
    vi.useFakeTimers({ toFake: ["setTimeout", "clearTimeout"] });
    const mend = breakRequest("add", "UnknownError");
    tab.retitle("Patience");
    await tab.flush();
    expect(tab.status()).toMatchObject({ kind: "failed", reason: /connection .* is lost/ });
    mend();
    vi.advanceTimersByTime(31_000);
    vi.useRealTimers();
    await vi.waitFor(() => expect(tab.status().kind).toBe("saved"));
    expect(await savedTitle(tab)).toBe("Patience");
  });
});

test("a save cut short at any point leaves the copy before or the new one, never a mixture", async () => {
  const counting = await startTab();
  const points = await requestsOfOneSave(async () => {
    counting.retitle("Counted");
    await counting.flush();
  });
  expect(points).toBeGreaterThan(4);
  await counting.kill();
  for (let point = 1; point <= points + 1; point += 1) {
    page = layPage();
    const tab = await startTab();
    tab.retitle("Before");
    await tab.flush();
    const mend = cutAfter(point);
    tab.retitle("After");
    await tab.flush();
    const claimed = tab.status().kind;
    mend();
    const next = await reload(tab);
    expect(["Before", "After"]).toContain(next.title());
    if (claimed === "saved") expect(next.title()).toBe("After");
    expect(next.plan().layouts[0]?.plantings).toHaveLength(6);
    expect(next.notice()).toBeNull();
    await next.kill();
  }
});

test("a storage wiped while the tab is open: the plan is stored again and the loss is told", async () => {
  const tab = await startTab();
  tab.retitle("Still here");
  await tab.flush();
  const db = await openDB("wideberth", 1);
  const wipe = db.transaction(["generations", "heads", "notes"], "readwrite");
  await Promise.all([
    wipe.objectStore("generations").clear(),
    wipe.objectStore("heads").clear(),
    wipe.objectStore("notes").clear(),
    wipe.done,
  ]);
  db.close();
  tab.retitle("After the wipe");
  await tab.flush();
  expect(tab.status().kind).toBe("saved");
  expect(tab.notice()).toMatch(/had deleted its stored plans/);
  expect((await reload(tab)).title()).toBe("After the wipe");
});

test("a database deleted by another page: a file is offered first, then the plan is stored again", async () => {
  const tab = await startTab();
  tab.retitle("Whole in memory");
  await tab.flush();
  const said: string[] = [];
  const stop = tab.saveState.subscribe(({ state }) => {
    if (state.kind === "failed") said.push(state.reason);
  });
  await new Promise<void>((resolve, reject) => {
    const request = indexedDB.deleteDatabase("wideberth");
    request.addEventListener("success", () => resolve());
    request.addEventListener("error", () => reject(new Error("not deleted")));
  });
  await expect.poll(() => said.length > 0 && tab.status().kind === "saved").toBe(true);
  stop();
  expect(said[0]).toMatch(/deleted from outside; .* save it to a file/);
  expect(tab.notice()).toMatch(/stored again/);
  tab.retitle("And goes on");
  expect(tab.title()).toBe("And goes on");
  await tab.flush();
  expect((await reload(tab)).title()).toBe("And goes on");
});

describe("another version of the program", () => {
  test("that is newer lets this tab save, then stops it", async () => {
    const tab = await startTab();
    tab.retitle("Just in time");
    const newer = await openDB("wideberth", 2);
    expect(await newer.get("heads", "garden")).toMatchObject({ title: "Just in time" });
    tab.retitle("Too late");
    expect(tab.title()).toBe("Just in time");
    expect(tab.notice()).toMatch(/newer Wideberth .* Reload this page/);
    newer.close();
  });

  test("that was newer and left its storage: nothing is touched, and that is said", async () => {
    (await openDB("wideberth", 7)).close();
    const tab = await startTab();
    expect(tab.status()).toMatchObject({ kind: "failed", reason: /newer Wideberth/ });
    tab.retitle("Kept in memory");
    await tab.flush();
    expect(tab.title()).toBe("Kept in memory");
    const db = await openDB("wideberth");
    expect(db.version).toBe(7);
    db.close();
  });
});

test("a stored plan that cannot be looked at is not covered by the sample standing in", async () => {
  const before = await startTab();
  before.retitle("Winter's work");
  await before.flush();
  await before.kill();
  const mend = breakRequest("getAllKeys", "NotReadableError");
  const tab = await startTab({ notes: before.notes });
  mend();
  expect(tab.title()).toBe("Garden");
  expect(tab.status().kind).toBe("failed");
  // Edits of the stand-in become a plan of their own.
  tab.retitle("Meanwhile");
  await tab.flush();
  expect(tab.status().kind).toBe("saved");
  const plans = await tab.stored.listPlans();
  expect(plans.map(({ title }) => title).sort()).toEqual(["Meanwhile", "Winter's work"]);
});

test("that another tab holds the storage is told also to who listens only afterwards", async () => {
  vi.resetModules();
  const request = new IDBOpenDBRequest();
  vi.stubGlobal("indexedDB", { open: () => request });
  const { askRememberedPlans } = await import("../../../src/store/keeping/last-plan.ts");
  const { watchPlanDb } = await import("../../../src/store/keeping/plan-db.ts");
  askRememberedPlans(async () => null);
  request.dispatchEvent(new IDBVersionChangeEvent("blocked"));
  const blocked = vi.fn<() => void>();
  watchPlanDb({ blocked, outdated: () => Promise.resolve(), cut: () => undefined });
  expect(blocked).toHaveBeenCalledOnce();
});
