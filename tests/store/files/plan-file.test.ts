/** Plans from files: whatever comes in, nothing harms the open plan. */
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { problemText } from "../../../src/core/model/problem.ts";
import { writePlan } from "../../../src/core/model/read-plan.ts";
import { MAX_FILE_BYTES } from "../../../src/store/files/decode-file.ts";
import { FakeFile } from "../../support/fake-file.ts";
import { type FakePage, layPage } from "../../support/fake-page.ts";
import { gardenPlan } from "../../support/garden-plan.ts";
import { breakRequest } from "../../support/storage-breaker.ts";
import { type Tab, killAllTabs, openTab, reload, startTab } from "../../support/tab.ts";

const dialogs = vi.hoisted(() => ({ fileOpen: vi.fn(), fileSave: vi.fn() }));
vi.mock("browser-fs-access", () => dialogs);

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

const otherPlan = { ...gardenPlan(2), id: "other", title: "Other field" };
const file = (content: BlobPart, name = "plan.json") => new File([content], name);
const saidProblems = () => tab.problems().map(problemText).join("\n");

describe("opening", () => {
  test("a plan file opens, is stored, and comes back after a reload", async () => {
    await tab.file.openPlanFromFile(file(writePlan(otherPlan)));
    expect(tab.plan()).toEqual(otherPlan);
    // Nothing that has to be put away, and that pushes the sheet down until it is.
    expect([tab.announced(), tab.notice()]).toEqual(["Opened plan.json.", null]);
    await tab.flush();
    expect(tab.status().kind).toBe("saved");
    expect((await reload(tab)).plan()).toEqual(otherPlan);
  });

  test("the plan before is saved first", async () => {
    tab.retitle("Unsaved a moment ago");
    await tab.file.openPlanFromFile(file(writePlan(otherPlan)));
    await tab.flush();
    const titles = (await tab.stored.listPlans()).map(({ title }) => title).sort();
    expect(titles).toEqual(["Other field", "Unsaved a moment ago"]);
  });

  test("when the plan before cannot be saved the grower decides", async () => {
    const mend = breakRequest("add", "QuotaExceededError");
    tab.retitle("Precious");
    await tab.file.openPlanFromFile(file(writePlan(otherPlan)));
    expect(page.window.confirm).toHaveBeenCalledTimes(1);
    expect(tab.title()).toBe("Precious");
    page.window.confirm.mockReturnValue(true);
    await tab.file.openPlanFromFile(file(writePlan(otherPlan)));
    expect(tab.title()).toBe("Other field");
    mend();
  });

  test("an older file of a stored plan goes on top; what it covers is kept", async () => {
    const old = file(writePlan(tab.plan()));
    for (let step = 1; step <= 3; step += 1) {
      tab.retitle(`Newer ${step}`);
      await tab.flush();
    }
    dialogs.fileSave.mockImplementation((blob) => new FakeFile("kept.json").write(blob));
    await tab.file.savePlanFile();
    await tab.file.openPlanFromFile(old);
    expect(tab.title()).toBe("Garden");
    expect(tab.notice()).toMatch(/The version saved here at .* is kept among its earlier copies/);
    for (let step = 1; step <= 30; step += 1) {
      tab.retitle(`After ${step}`);
      await tab.flush();
    }
    const copies = await tab.stored.listGenerations("garden");
    expect(copies.map(({ title }) => title)).toContain("Newer 3");
    expect(copies.map(({ title }) => title)).not.toContain("Newer 2");
  });

  test("two files of one plan are told apart: changes in no file are never covered unasked", async () => {
    const copied = file(writePlan({ ...tab.plan(), title: "Garden 2028" }), "garden-2028.json");
    tab.retitle("Thought of today");
    await tab.file.openPlanFromFile(copied);
    expect(page.window.confirm).toHaveBeenCalledTimes(1);
    expect(page.window.confirm.mock.calls[0]?.[0]).toMatch(
      /garden-2028\.json and "Thought of today" .* two versions of one plan/,
    );
    expect(tab.title()).toBe("Thought of today");
    page.window.confirm.mockReturnValue(true);
    await tab.file.openPlanFromFile(copied);
    expect(tab.title()).toBe("Garden 2028");
    expect(tab.plan().id).not.toBe("garden");
    await tab.flush();
    const titles = (await tab.stored.listPlans()).map(({ title }) => title).sort();
    expect(titles).toEqual(["Garden 2028", "Thought of today"]);
    // The same file once more: nothing of the plan it covers is in no file.
    await tab.file.openPlanFromFile(file(writePlan(tab.plan()), "garden-2028.json"));
    expect(page.window.confirm).toHaveBeenCalledTimes(2);
  });

  test("what is being typed belongs to the plan it is typed in", async () => {
    const blur = vi.fn(() => tab.retitle("Typed to the end"));
    Object.assign(page.document, { activeElement: { getAttribute: () => "typed", blur } });
    await tab.file.openPlanFromFile(file(writePlan(otherPlan)));
    expect(blur).toHaveBeenCalledTimes(1);
    expect(tab.title()).toBe("Other field");
    await tab.flush();
    const titles = (await tab.stored.listPlans()).map(({ title }) => title).sort();
    expect(titles).toEqual(["Other field", "Typed to the end"]);
  });

  test("a file of the plan another tab has open becomes a plan of its own", async () => {
    const second = await openTab();
    await second.start();
    void second.file.newPlan();
    await vi.waitFor(() => expect(second.title()).toBe("New plan"));
    await second.file.openPlanFromFile(file(writePlan({ ...gardenPlan(), title: "From file" })));
    expect(second.title()).toBe("From file");
    expect(second.plan().id).not.toBe("garden");
    expect(second.isReadOnly()).toBe(false);
    expect(second.notice()).toMatch(/"From file" is open in another tab/);
  });

  test("GeoJSON makes a new plan each time", async () => {
    const geojson = JSON.stringify({
      type: "FeatureCollection",
      features: [
        {
          type: "Feature",
          properties: { kind: "tomato", variety: "Old Ferry" },
          geometry: {
            type: "Polygon",
            coordinates: [
              [
                [8, 50],
                [8.0001, 50],
                [8.0001, 50.0001],
                [8, 50.0001],
                [8, 50],
              ],
            ],
          },
        },
      ],
    });
    const ids = new Set([tab.plan().id]);
    for (let round = 0; round < 2; round += 1) {
      await tab.file.openPlanFromFile(file(geojson, "field.geojson"));
      expect(tab.plan().layouts[0]?.plantings).toHaveLength(1);
      ids.add(tab.plan().id);
    }
    expect(ids.size).toBe(3);
  });

  test("a dialog closed without a choice changes nothing and says nothing", async () => {
    const before = tab.plan();
    dialogs.fileOpen.mockRejectedValueOnce(new DOMException("closed", "AbortError"));
    await tab.file.openPlanFile();
    expect([tab.plan(), tab.notice(), tab.problems()]).toEqual([before, null, []]);
  });

  test("a file chosen in the dialog opens", async () => {
    dialogs.fileOpen.mockResolvedValueOnce(file(writePlan(otherPlan), "chosen.json"));
    await tab.file.openPlanFile();
    expect(tab.title()).toBe("Other field");
  });

  test("a file dropped on the page opens, and the page stays", async () => {
    const drop = new Event("drop", { cancelable: true });
    const files = [file(writePlan(otherPlan))];
    Object.assign(drop, { dataTransfer: { types: ["Files"], files } });
    page.window.dispatchEvent(drop);
    expect(drop.defaultPrevented).toBe(true);
    await vi.waitFor(() => expect(tab.title()).toBe("Other field"));
  });
});

describe("a file that is no plan is refused with its reason, and the open plan stays", () => {
  const text = writePlan(gardenPlan());
  const bytes = (...values: number[]) => new Uint8Array(values);
  const utf16 = new Uint8Array(Array.from(text).flatMap((char) => [char.charCodeAt(0), 0]));
  const tooLarge = Object.defineProperty(file("{}"), "size", { value: 20_000_001 });
  const unreadable = Object.assign(file("{}"), {
    arrayBuffer: () => Promise.reject(new DOMException("gone", "NotFoundError")),
  });

  test.each<[string, File, RegExp]>([
    ["empty", file(""), /an empty file/],
    ["only spaces", file(" \n\t "), /an empty file/],
    ["one letter", file("x"), /got .*expected/],
    ["cut off", file(text.slice(0, -40)), /got .*expected/],
    ["of another program", file('{"name":"package"}'), /an object, expected a Wideberth plan/],
    ["from a newer version", file(text.replace('"version": 3', '"version": 99')), /newer/],
    ["with an infinite size", file(text.replace('"widthM": 1.2', '"widthM": 1e999')), /finite/],
    ["with a 30th of February", file(text.replace("2027-05-10", "2027-02-30")), /real date/],
    ["with a forbidden key", file('{"__proto__":{"polluted":1}}'), /__proto__/],
    ["nested a million deep", file("[".repeat(1_000_000)), /nested deeper than 64/],
    ["a picture", file(bytes(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a)), /a PNG picture/],
    ["an archive", file(bytes(0x50, 0x4b, 3, 4, 0)), /a ZIP archive/],
    ["a web page", file("<!doctype html><p>404"), /a web page/],
    ["in UTF-16 with its mark", file(new Uint8Array([0xff, 0xfe, ...utf16])), /UTF-16/],
    ["in UTF-16 without a mark", file(utf16), /got .*expected/],
    ["in Latin-1", file(bytes(0x7b, 0x22, 0xfc, 0x22, 0x7d)), /not UTF-8/],
    ["too large", tooLarge, /20000001 bytes, expected at most 20000000/],
    ["no longer there", unreadable, /cannot be read/],
  ])("%s", async (_, broken, reason) => {
    const before = tab.plan();
    await tab.file.openPlanFromFile(broken);
    expect(saidProblems()).toMatch(reason);
    expect(tab.plan()).toBe(before);
    await tab.flush();
    expect(await tab.stored.listPlans()).toHaveLength(1);
    expect(({} as { polluted?: number }).polluted).toBeUndefined();
  });

  test("a byte order mark before a good plan is no fault", async () => {
    await tab.file.openPlanFromFile(file(`\uFEFF${writePlan(otherPlan)}`));
    expect(tab.plan()).toEqual(otherPlan);
    expect(tab.problems()).toEqual([]);
  });

  test("a file just as large as is read opens", async () => {
    const whole = writePlan(otherPlan);
    const padding = " ".repeat(MAX_FILE_BYTES - new TextEncoder().encode(whole).length);
    await tab.file.openPlanFromFile(file(`${whole}${padding}`));
    expect(tab.problems()).toEqual([]);
    expect(tab.plan()).toEqual(otherPlan);
  });

  test("the next file that opens takes the problems away", async () => {
    await tab.file.openPlanFromFile(file(""));
    expect(tab.problems()).toHaveLength(1);
    await tab.file.openPlanFromFile(file(writePlan(otherPlan)));
    expect(tab.problems()).toEqual([]);
  });
});

describe("samples and new plans", () => {
  test("a sample opened again leaves alone what was made of it", async () => {
    tab.retitle("My version");
    await tab.flush();
    tab.file.openSample(writePlan(gardenPlan()), "Garden");
    await vi.waitFor(() => expect(tab.title()).toBe("Garden"));
    await tab.flush();
    expect(tab.plan().id).not.toBe("garden");
    const titles = (await tab.stored.listPlans()).map(({ title }) => title).sort();
    expect(titles).toEqual(["Garden", "My version"]);
  });

  test("an untouched sample opened again is the same plan", async () => {
    void tab.file.newPlan();
    await vi.waitFor(() => expect(tab.title()).toBe("New plan"));
    tab.file.openSample(writePlan(gardenPlan()), "Garden");
    await vi.waitFor(() => expect(tab.plan().id).toBe("garden"));
    await tab.flush();
    expect(await tab.stored.listGenerations("garden")).toHaveLength(1);
  });

  test("a new plan is empty and for the season that is planned now", async () => {
    vi.useFakeTimers({ toFake: ["Date"], now: new Date(2026, 10, 3) });
    void tab.file.newPlan();
    await vi.waitFor(() => expect(tab.title()).toBe("New plan"));
    expect(tab.plan().season.name).toBe("2027");
    vi.setSystemTime(new Date(2027, 1, 3));
    void tab.file.newPlan();
    await vi.waitFor(() => expect(tab.store.getState().plan.season.name).toBe("2027"));
    vi.useRealTimers();
  });
});
