/** Plans into files: nothing is claimed that was not done, nothing harms the file before. */
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { problemText } from "../../../src/core/model/problem.ts";
import { writePlan } from "../../../src/core/model/read-plan.ts";
import { FakeFile } from "../../support/fake-file.ts";
import { type FakePage, layPage } from "../../support/fake-page.ts";
import { breakRequest } from "../../support/storage-breaker.ts";
import { type Tab, killAllTabs, startTab } from "../../support/tab.ts";

const dialogs = vi.hoisted(() => ({ fileOpen: vi.fn(), fileSave: vi.fn() }));
vi.mock("browser-fs-access", () => dialogs);

let page: FakePage;
let tab: Tab;
beforeEach(async () => {
  page = layPage();
  tab = await startTab();
});
afterEach(async () => {
  vi.useRealTimers();
  vi.restoreAllMocks();
  await killAllTabs();
  vi.unstubAllGlobals();
});

describe("saving to a file", () => {
  test("asks for a place once, then writes the same file", async () => {
    const place = new FakeFile("kept.json");
    dialogs.fileSave.mockImplementation((blob, _options, handle) => (handle ?? place).write(blob));
    await tab.file.savePlanFile();
    expect(place.text).toBe(writePlan(tab.plan()));
    expect(tab.notice()).toBe("Saved to kept.json.");
    tab.retitle("Second save");
    await tab.file.savePlanFile();
    expect(dialogs.fileSave.mock.calls.map((call) => call[2])).toEqual([null, place]);
    expect(place.text).toContain("Second save");
  });

  test("saving as another file asks for a place, and that file is the plan's own from then on", async () => {
    const places = [new FakeFile("first.json"), new FakeFile("second.json")];
    let asked = 0;
    dialogs.fileSave.mockImplementation((blob, _options, handle) => {
      if (handle) return handle.write(blob);
      asked += 1;
      return places[asked - 1]?.write(blob);
    });
    await tab.file.savePlanFile();
    await tab.file.savePlanFile("new file");
    expect(asked).toBe(2);
    tab.retitle("Only in the second");
    await tab.file.savePlanFile();
    expect(asked).toBe(2);
    expect(places[0]?.text).not.toContain("Only in the second");
    expect(places[1]?.text).toContain("Only in the second");
  });

  test("another file is another plan: both are kept, undo goes on, and neither covers the other", async () => {
    const places = [new FakeFile("farm-2027.json"), new FakeFile("farm-2028.json")];
    let asked = 0;
    dialogs.fileSave.mockImplementation((blob, _options, handle) => {
      if (handle) return handle.write(blob);
      asked += 1;
      return places[asked - 1]?.write(blob);
    });
    await tab.file.savePlanFile();
    tab.retitle("Farm 2027");
    await tab.file.savePlanFile();
    const first = tab.plan();
    await tab.file.savePlanFile("new file");
    expect(tab.plan().id).not.toBe(first.id);
    expect(JSON.parse(places[1]?.text ?? "")).toMatchObject({ id: tab.plan().id });
    expect({ ...tab.plan(), id: first.id }).toEqual(first);
    expect(page.warnsOnLeaving()).toBe(false);
    tab.retitle("Farm 2028");
    await tab.file.savePlanFile();
    tab.store.getState().undo();
    tab.store.getState().undo();
    expect(tab.title()).toBe("Garden");
    tab.store.getState().redo();
    tab.store.getState().redo();
    await tab.flush();
    const listed = await tab.stored.listPlans();
    const isFirst = new Map(listed.map(({ title, planId }) => [title, planId === first.id]));
    expect([isFirst.size, isFirst.get("Farm 2027"), isFirst.get("Farm 2028")]).toEqual([
      2,
      true,
      false,
    ]);
    // The first one again: it is no version of the second.
    await tab.file.openPlanFromFile(new File([places[0]?.text ?? ""], "farm-2027.json"));
    expect(page.window.confirm).not.toHaveBeenCalled();
    expect(tab.plan()).toEqual(first);
  });

  test("a file changed by somebody else since is not written over", async () => {
    const place = new FakeFile("kept.json");
    const elsewhere = new FakeFile("mine.json");
    dialogs.fileSave.mockImplementation((blob, _options, handle) => (handle ?? place).write(blob));
    await tab.file.savePlanFile();
    place.changeOutside("somebody's work");
    dialogs.fileSave.mockImplementation((blob, _options, handle) =>
      (handle ?? elsewhere).write(blob),
    );
    await tab.file.savePlanFile();
    expect(place.text).toBe("somebody's work");
    expect(elsewhere.text).toBe(writePlan(tab.plan()));
    expect(tab.notice()).toMatch(/Saved to mine.json.*changed elsewhere and was left alone/);
  });

  test("where the browser only downloads, that is all that is claimed", async () => {
    vi.useFakeTimers({ toFake: ["Date"], now: new Date(2026, 10, 3, 10, 2) });
    dialogs.fileSave.mockResolvedValue(null);
    await tab.file.savePlanFile();
    expect(tab.notice()).toBe("Download started: fallow-end-2027-layout-1-2026-11-03.json.");
    vi.useRealTimers();
  });

  test("a write that fails, or writes something else, is reported and claims nothing", async () => {
    dialogs.fileSave.mockRejectedValueOnce(new DOMException("disk full", "NotReadableError"));
    await tab.file.savePlanFile();
    expect(tab.notice()).toMatch(/could not be written/);
    const liar = new FakeFile("liar.json");
    dialogs.fileSave.mockImplementationOnce(() => Promise.resolve(liar));
    await tab.file.savePlanFile();
    expect(tab.notice()).toMatch(/could not be written/);
  });

  test("a dialog closed without a choice says nothing", async () => {
    dialogs.fileSave.mockRejectedValueOnce(new DOMException("closed", "AbortError"));
    await tab.file.savePlanFile();
    expect(tab.notice()).toBeNull();
  });

  test("work that lies in a file is not warned of, though the browser stores nothing", async () => {
    const mend = breakRequest("add", "QuotaExceededError");
    const place = new FakeFile("kept.json");
    dialogs.fileSave.mockImplementation((blob, _options, handle) => (handle ?? place).write(blob));
    tab.retitle("In a file");
    await tab.flush();
    expect(page.warnsOnLeaving()).toBe(true);
    await tab.file.savePlanFile();
    expect(page.warnsOnLeaving()).toBe(false);
    mend();
  });

  test("a plan that would not open again is not written", async () => {
    dialogs.fileSave.mockClear();
    tab.store.getState().commit({
      title: "Break",
      apply: (plan) => ({ ...plan, site: { ...plan.site, upBearingDeg: Number.NaN } }),
    });
    await tab.file.savePlanFile();
    expect(tab.problems().map(problemText).join()).toMatch(/a plan with a fault/);
    expect(dialogs.fileSave).not.toHaveBeenCalled();
  });
});

describe("the emergency download", () => {
  test.each([
    ["a good plan", 0],
    ["a plan too broken for a plan file", Number.NaN],
  ])("gives out %s", async (_, upBearingDeg) => {
    vi.useFakeTimers({ toFake: ["setTimeout", "Date"], now: new Date(2026, 10, 3) });
    const blobs: Blob[] = [];
    vi.stubGlobal("URL", {
      createObjectURL: (blob: Blob) => `blob:${blobs.push(blob)}`,
      revokeObjectURL: vi.fn(),
    });
    tab.store.getState().commit({
      title: "Turn",
      apply: (plan) => ({ ...plan, site: { ...plan.site, upBearingDeg } }),
    });
    await tab.download();
    expect(page.document.links).toEqual([
      { href: "blob:1", download: "fallow-end-2027-layout-1-2026-11-03.json", clicks: 1 },
    ]);
    expect(JSON.parse((await blobs[0]?.text()) ?? "")).toMatchObject({ title: "Garden" });
    vi.useRealTimers();
  });
});
