/** The log of what went wrong: bounded, outlives a reload, survives anything found in its place. */
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { layPage } from "../../support/fake-page.ts";
import { breakRequest } from "../../support/storage-breaker.ts";
import { killAllTabs, openTab, startTab } from "../../support/tab.ts";

beforeEach(() => {
  layPage();
});
afterEach(async () => {
  vi.restoreAllMocks();
  await killAllTabs();
  vi.unstubAllGlobals();
});

const log = () => import("../../../src/store/keeping/diagnostics.ts");
const texts = async () => (await log()).useDiagnostics.getState().entries.map(({ text }) => text);

test("a save that fails and a notice are written down, and are there after a reload", async () => {
  const tab = await startTab();
  breakRequest("add", "QuotaExceededError");
  tab.retitle("Too much");
  await tab.flush();
  expect(await texts()).toContainEqual(expect.stringMatching(/^Not saved: .*storage is full/));
  await tab.kill();
  await openTab({ notes: tab.notes });
  expect(await texts()).toContainEqual(expect.stringMatching(/storage is full/));
});

test("the newest hundred stay, repeats and long texts are cut short", async () => {
  await openTab();
  const { MAX_ENTRIES, note } = await log();
  for (let number = 1; number <= MAX_ENTRIES + 5; number += 1) note("program", `fault ${number}`);
  note("program", `fault ${MAX_ENTRIES + 5}`);
  note("program", "x".repeat(5000));
  const kept = await texts();
  expect(kept).toHaveLength(MAX_ENTRIES);
  expect(kept[0]).toBe("fault 7");
  expect(kept.at(-1)).toHaveLength(500);
});

test("faults nobody caught are heard, until that is stopped", async () => {
  await openTab();
  const { listenForFaults } = await log();
  const page = Object.assign(new EventTarget(), { document: new EventTarget() });
  const stop = listenForFaults(page as unknown as Window);
  const fault = { message: "broke", filename: "a.js", lineno: 3 };
  page.dispatchEvent(Object.assign(new Event("error"), fault));
  page.dispatchEvent(Object.assign(new Event("unhandledrejection"), { reason: "no" }));
  page.document.dispatchEvent(
    Object.assign(new Event("securitypolicyviolation"), {
      effectiveDirective: "img-src",
      blockedURI: "elsewhere",
    }),
  );
  stop();
  page.dispatchEvent(Object.assign(new Event("error"), fault));
  expect(await texts()).toEqual(["broke (a.js:3)", "no", "img-src refused elsewhere"]);
});

test("the log as text, and cleared", async () => {
  await openTab();
  const { clearDiagnostics, note, useDiagnostics } = await log();
  note("notice", "Something");
  expect(useDiagnostics.getState().entries).toMatchObject([{ topic: "notice", text: "Something" }]);
  clearDiagnostics();
  expect(await texts()).toEqual([]);
  expect(localStorage.getItem("wideberth.diagnostics")).toBeNull();
});

test.each(["{", "null", "{}", '[1,{"at":2}]'])("%s in its place is passed over", async (text) => {
  localStorage.setItem("wideberth.diagnostics", text);
  await openTab();
  expect(await texts()).toEqual([]);
});
