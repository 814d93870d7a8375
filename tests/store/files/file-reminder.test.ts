/** The file is the archive: when changes have been in no file for too long, that is said. */
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { FakeNotes, layPage } from "../../support/fake-page.ts";
import { killAllTabs, openTab, startTab } from "../../support/tab.ts";

beforeEach(() => {
  layPage();
});
afterEach(async () => {
  await killAllTabs();
  vi.unstubAllGlobals();
});

const reminder = () => import("../../../src/store/files/file-reminder.ts");
const inDays = (days: number) => new Date(Date.now() + days * 86_400_000 + 1000);

async function daysShown(planId: string, later: number): Promise<number | null> {
  const { daysWithoutFile, useFileNotes } = await reminder();
  return daysWithoutFile(useFileNotes.getState().notes, planId, inDays(later));
}

test("an edit without a file is reminded of after a week, looking alone never", async () => {
  const tab = await startTab();
  expect(await daysShown("garden", 30)).toBeNull();
  tab.retitle("Changed");
  await tab.flush();
  expect(await daysShown("garden", 6)).toBeNull();
  expect(await daysShown("garden", 7)).toBe(7);
  expect(await daysShown("garden", 12)).toBe(12);
});

test("a browser that promises to keep its storage is trusted for two", async () => {
  vi.stubGlobal("navigator", {
    storage: { persisted: () => Promise.resolve(false), persist: () => Promise.resolve(true) },
  });
  const tab = await startTab();
  tab.retitle("Changed");
  await tab.flush();
  expect(await daysShown("garden", 13)).toBeNull();
  expect(await daysShown("garden", 14)).toBe(14);
});

test.each<[string, () => Promise<boolean>]>([
  ["refuses", () => Promise.resolve(false)],
  ["fails", () => Promise.reject(new TypeError("no"))],
  ["never answers", () => new Promise<boolean>(() => undefined)],
])("a browser that %s to keep it holds nothing up", async (_, persist) => {
  vi.stubGlobal("navigator", { storage: { persisted: () => Promise.resolve(false), persist } });
  const tab = await startTab();
  tab.retitle("Changed");
  await tab.flush();
  expect(tab.status().kind).toBe("saved");
  expect(await daysShown("garden", 7)).toBe(7);
});

test("a file puts it to rest, the next change begins anew, and a reload remembers", async () => {
  const tab = await startTab();
  tab.retitle("Changed");
  await tab.flush();
  const { noteInFile } = await reminder();
  noteInFile("garden");
  expect(await daysShown("garden", 30)).toBeNull();
  tab.retitle("Changed again");
  await tab.flush();
  await tab.kill();
  await openTab({ notes: tab.notes });
  expect(await daysShown("garden", 8)).toBe(8);
  const { lastFileOf, useFileNotes } = await reminder();
  expect(lastFileOf(useFileNotes.getState().notes, "garden")).toMatch(/^\d{4}-/);
  expect(lastFileOf(useFileNotes.getState().notes, "other")).toBeNull();
});

test.each(["{", "null", "[]", '{"garden":{"inFile":3}}'])(
  "notes of %s are passed over",
  async (text) => {
    localStorage.setItem("wideberth.files", text);
    await openTab({ notes: new FakeNotes() });
    expect(await daysShown("garden", 30)).toBeNull();
  },
);
