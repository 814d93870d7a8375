/** What was not yet saved when the page went: killed in the middle of the save begun then. */
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import type { Plan } from "../../../src/core/model/plan.ts";
import { type FakePage, layPage } from "../../support/fake-page.ts";
import { breakRequest, cutAfter } from "../../support/storage-breaker.ts";
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

/** The page goes, and nothing reaches the database any more. */
async function goWithoutSaving(): Promise<void> {
  const mend = cutAfter(1);
  page.window.dispatchEvent(new Event("pagehide"));
  await tab.flush();
  mend();
}

const unsavedNote = () => localStorage.getItem("wideberth.unsaved.garden");

const titles = async (of: Tab) =>
  (await of.stored.listGenerations("garden")).map(({ title }) => title);

test("a reload right after an edit brings the edit back, and stores it", async () => {
  tab.retitle("In the last moment");
  await goWithoutSaving();
  expect(await titles(tab)).toEqual(["Garden"]);
  const next = await reload(tab);
  expect(next.title()).toBe("In the last moment");
  expect(next.status().kind).toBe("saved");
  expect(await titles(next)).toEqual(["In the last moment", "Garden"]);
  expect(unsavedNote()).toBeNull();
});

test("so does one in the middle of the save of an edit before", async () => {
  tab.retitle("First");
  const saving = tab.flush();
  tab.retitle("Second");
  page.window.dispatchEvent(new Event("pagehide"));
  // The first save comes to its end, the second never starts.
  const mend = breakRequest("add", "DataError", 2);
  mend();
  await tab.kill();
  await saving;
  const next = await startTab({ notes: tab.notes });
  expect(next.title()).toBe("Second");
  expect((await next.stored.listPlans()).map(({ title }) => title)).toEqual(["Second"]);
});

test("when the save was finished after all, nothing is left to do", async () => {
  tab.retitle("Saved in time");
  page.window.dispatchEvent(new Event("pagehide"));
  await tab.flush();
  expect(unsavedNote()).toBeNull();
  const next = await reload(tab);
  expect(next.title()).toBe("Saved in time");
  expect(await titles(next)).toEqual(["Saved in time", "Garden"]);
});

test("a last moment that another tab has overtaken becomes a plan of its own", async () => {
  const other = await startTab();
  tab.retitle("Left behind");
  await goWithoutSaving();
  await tab.kill();
  await vi.waitFor(() => expect(other.isReadOnly()).toBe(false));
  other.retitle("Went on");
  await other.flush();
  await other.kill();
  const next = await startTab({ notes: tab.notes });
  expect(next.title()).toBe("Went on");
  const plans = (await next.stored.listPlans()).map(({ title }) => title).sort();
  expect(plans).toEqual(["Left behind (copy)", "Went on"]);
  expect(unsavedNote()).toBeNull();
});

test("nothing is noted when nothing is unsaved, nor by a tab that only looks", async () => {
  const looker = await startTab();
  looker.retitle("Not allowed");
  page.document.become("hidden");
  page.window.dispatchEvent(new Event("pagehide"));
  expect(unsavedNote()).toBeNull();
});

test.each([
  ["no note", "{"],
  ["another shape", '{"revision":"1"}'],
  ["no plan", '{"revision":1,"upTo":1,"plan":{}}'],
  ["nothing in place of a plan", '{"revision":1,"upTo":1,"plan":null}'],
])("a damaged note (%s) is passed over", async (_, note) => {
  localStorage.setItem("wideberth.unsaved.garden", note);
  const next = await reload(tab);
  expect(next.title()).toBe("Garden");
  expect(next.status().kind).toBe("saved");
});

test("a browser that keeps no notes saves all the same", async () => {
  const refuse = () => {
    throw new DOMException("denied", "SecurityError");
  };
  vi.stubGlobal("localStorage", { getItem: refuse, setItem: refuse, removeItem: refuse });
  tab.retitle("Without notes");
  page.document.become("hidden");
  await tab.flush();
  expect((await reload(tab)).title()).toBe("Without notes");
});

/** The note as the page left it, changed as another build would have written it. */
function rewriteNote(change: (plan: Readonly<Record<string, unknown>>) => unknown): void {
  const { plan, ...rest } = JSON.parse(unsavedNote() ?? "{}");
  localStorage.setItem(
    "wideberth.unsaved.garden",
    JSON.stringify({ ...rest, ...Object(change(plan)) }),
  );
}

test("the note of a build before, which held the text of a plan file, brings the edit back", async () => {
  const { writePlan } = await import("../../../src/core/model/read-plan.ts");
  tab.retitle("Left by an older build");
  await goWithoutSaving();
  rewriteNote((plan) => ({ text: writePlan(plan as unknown as Plan) }));
  const next = await reload(tab);
  expect(next.title()).toBe("Left by an older build");
  expect(unsavedNote()).toBeNull();
});

test("a note this build cannot read is told and set aside, never passed over", async () => {
  tab.retitle("Written by another build");
  await goWithoutSaving();
  rewriteNote((plan) => ({ plan: { ...plan, layouts: "of another shape" } }));
  const next = await reload(tab);
  expect(next.title()).toBe("Garden");
  expect(next.notice()).toMatch(/newest saved copy .* is damaged.* is kept/);
  expect(localStorage.getItem("wideberth.unsaved.garden.unread")).toContain("of another shape");
  expect(unsavedNote()).toBeNull();
});
