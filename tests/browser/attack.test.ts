/** Attacks on keeping plans, each in a real browser: what the storage, the clock and other tabs may do. */
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Browser, type BrowserContext, type Page, chromium } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from "vitest";
import { findChromium } from "../../.config/find-chromium.mjs";
import type { Plan } from "../../src/core/model/plan.ts";
import { CHROMIUM_ARGS, launchBrowser, siteUrl } from "./browser.ts";
import { dropFile } from "./drop-file.ts";
import { startSecondServer } from "./second-server.ts";
import { dragOnSheet, openSample, pagePlace } from "./sheet.ts";

const VIEW = { viewport: { width: 1280, height: 900 } };
const sample = readFileSync("sample-plots/garden-to-solve.json", "utf8");
const samplePlan = JSON.parse(sample) as Plan;

let browser: Browser;
let context: BrowserContext;
let faults: string[] = [];

beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());
beforeEach(async () => {
  faults = [];
  context = await browser.newContext(VIEW);
});
afterEach(async () => {
  await context.close();
  expect(faults).toEqual([]);
});

async function newPage(url = siteUrl()): Promise<Page> {
  const page = await context.newPage();
  page.setDefaultTimeout(20_000);
  page.on("pageerror", (error) => faults.push(error.message));
  await openSample(page, url);
  return page;
}

async function retitle(page: Page, title: string): Promise<void> {
  const field = page.getByLabel("Plan title");
  await field.fill(title);
  await field.press("Enter");
}

const saved = (page: Page) => page.locator(".save-state.saved").waitFor();
const titleOf = (page: Page) => page.getByLabel("Plan title").inputValue();

/** Titles of the stored plans, each with its newest copy. */
function storedTitles(page: Page): Promise<readonly string[]> {
  return page.evaluate(
    () =>
      new Promise<string[]>((resolve, reject) => {
        const opening = indexedDB.open("wideberth");
        opening.addEventListener("error", () => reject(new Error("refused")));
        opening.addEventListener("success", () => {
          const db = opening.result;
          const all = db.transaction("generations").objectStore("generations").getAll();
          all.addEventListener("success", () => {
            db.close();
            const newest = new Map<string, { revision: number; title: string }>();
            for (const { planId, revision, text } of all.result) {
              if ((newest.get(planId)?.revision ?? -1) < revision) {
                newest.set(planId, { revision, title: JSON.parse(text).title });
              }
            }
            resolve([...newest.values()].map(({ title }) => title).sort());
          });
        });
      }),
  );
}

/** Writes until there is no room for a kilobyte more; the name of the fault that ended it. */
function fillStorage(page: Page): Promise<string> {
  return page.evaluate(async () => {
    const db = await new Promise<IDBDatabase>((resolve) => {
      const opening = indexedDB.open("filler");
      opening.addEventListener("upgradeneeded", () => {
        opening.result.createObjectStore("all", { autoIncrement: true });
      });
      opening.addEventListener("success", () => resolve(opening.result));
    });
    const put = (bytes: number) =>
      new Promise<string>((resolve) => {
        const writing = db.transaction("all", "readwrite", { durability: "strict" });
        writing.objectStore("all").add(crypto.getRandomValues(new Uint8Array(bytes)));
        writing.addEventListener("complete", () => resolve(""));
        writing.addEventListener("abort", () => resolve(writing.error?.name ?? "aborted"));
      });
    let fault = "";
    // Room comes and goes in pieces: it is full when a kilobyte finds none right after the rest.
    for (let tries = 0; tries < 5; tries += 1) {
      for (let bytes = 65_536; bytes >= 1024; bytes /= 4) {
        fault = "";
        for (let count = 0; fault === "" && count < 2000; count += 1) fault = await put(bytes);
      }
      if (fault !== "") break;
    }
    db.close();
    return fault;
  });
}

test("a storage that is really full: said, nothing lost, saved when there is room", async () => {
  const page = await newPage();
  await retitle(page, "Before it was full");
  await saved(page);
  const session = await context.newCDPSession(page);
  const { origin } = new URL(siteUrl());
  const { usage } = await session.send("Storage.getUsageAndQuota", { origin });
  const quotaSize = Math.round(usage) + 8_000_000;
  await session.send("Storage.overrideQuotaForOrigin", { origin, quotaSize });
  expect(await fillStorage(page)).toContain("Quota");
  await retitle(page, "Planned on a full disk");
  await page
    .getByText(/Not saved: /)
    .first()
    .waitFor();
  // The earlier copy stands; the plan lives on and can be edited.
  await expect.poll(() => storedTitles(page)).toEqual(["Before it was full"]);
  await retitle(page, "And once more");
  await session.send("Storage.overrideQuotaForOrigin", { origin });
  await page.evaluate(() => indexedDB.deleteDatabase("filler"));
  await retitle(page, "With room again");
  await saved(page);
  await page.reload();
  await expect.poll(() => titleOf(page)).toBe("With room again");
});

test("a clock that goes back three years: the newest edit stays the newest", async () => {
  await context.addInitScript(() => {
    const Real = Date;
    const now = () => Real.now() + Number(sessionStorage.getItem("clock") ?? 0);
    class Shifted extends Real {
      constructor(...parts: [] | [number]) {
        if (parts.length === 0) super(now());
        else super(...parts);
      }
      static override now() {
        return now();
      }
    }
    globalThis.Date = Shifted as DateConstructor;
  });
  const page = await newPage();
  await retitle(page, "Before the clock went back");
  await saved(page);
  const threeYears = String(-3 * 365 * 86_400_000);
  await page.evaluate((shift) => sessionStorage.setItem("clock", shift), threeYears);
  await retitle(page, "After the clock went back");
  await saved(page);
  await page.reload();
  await expect.poll(() => titleOf(page)).toBe("After the clock went back");
  await page.evaluate(() => sessionStorage.removeItem("clock"));
  await page.reload();
  await expect.poll(() => titleOf(page)).toBe("After the clock went back");
  await page.getByRole("button", { name: /^Undo/ }).first().click();
  await expect.poll(() => titleOf(page)).toBe("Before the clock went back");
});

test("a browser that keeps nothing for any site: the program works and says so", async () => {
  const profile = mkdtempSync(join(tmpdir(), "wideberth-blocked-"));
  mkdirSync(join(profile, "Default"));
  const preferences = { profile: { default_content_setting_values: { cookies: 2 } } };
  writeFileSync(join(profile, "Default/Preferences"), JSON.stringify(preferences));
  const executablePath = findChromium() ?? "";
  const blocked = await chromium.launchPersistentContext(profile, {
    executablePath,
    args: CHROMIUM_ARGS,
    ...VIEW,
  });
  try {
    const page = await blocked.newPage();
    page.setDefaultTimeout(20_000);
    page.on("pageerror", (error) => faults.push(error.message));
    // Opening another plan asks first: this one is stored nowhere.
    const asked: string[] = [];
    page.on("dialog", (dialog) => {
      asked.push(dialog.message());
      void dialog.accept();
    });
    await openSample(page, siteUrl());
    const isBlocked = await page.evaluate(() => {
      try {
        return localStorage.length < 0;
      } catch {
        return true;
      }
    });
    expect(isBlocked).toBe(true);
    await page
      .getByText(/Not saved: /)
      .first()
      .waitFor();
    await retitle(page, "Kept in memory");
    await expect.poll(() => page.title()).toBe("Kept in memory");
    await page.getByRole("button", { name: /^Undo/ }).first().click();
    await page.getByRole("button", { name: /^Redo/ }).first().click();
    await dropFile(page, "other.json", JSON.stringify({ ...samplePlan, id: "o", title: "Other" }));
    await expect.poll(() => page.title()).toBe("Other");
    expect(asked).toHaveLength(1);
    await page.getByRole("button", { name: "Plan", exact: true }).click();
    await page.getByText("Kept plans ...").click();
    await page.getByRole("dialog").waitFor();
  } finally {
    await blocked.close();
    rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
  }
});

test("two plans of one id in two tabs: neither covers the other", async () => {
  const one = { ...samplePlan, id: "twin", title: "First twin" };
  const two = { ...samplePlan, id: "twin", title: "Second twin" };
  const first = await newPage();
  const second = await newPage();
  await Promise.all([
    dropFile(first, "one.json", JSON.stringify(one)),
    dropFile(second, "two.json", JSON.stringify(two)),
  ]);
  await expect.poll(() => first.title()).toBe("First twin");
  await expect.poll(() => second.title()).toBe("Second twin");
  await retitle(first, "First twin, edited");
  await retitle(second, "Second twin, edited");
  await saved(first);
  await saved(second);
  const titles = await storedTitles(first);
  expect(titles).toContain("First twin, edited");
  expect(titles).toContain("Second twin, edited");
  await first.reload();
  await second.reload();
  await expect.poll(() => first.title()).toBe("First twin, edited");
  await expect.poll(() => second.title()).toBe("Second twin, edited");
});

test("an update taken in the middle of typing takes what is typed along; other tabs go on", async () => {
  const server = await startSecondServer();
  try {
    const page = await newPage(server.url);
    await page.evaluate(async () => {
      await navigator.serviceWorker.ready;
    });
    await expect
      .poll(() => page.evaluate(() => navigator.serviceWorker.controller?.state))
      .toBe("activated");
    const other = await newPage(server.url);
    await dropFile(other, "o.json", JSON.stringify({ ...samplePlan, id: "o", title: "Other tab" }));
    await expect.poll(() => other.title()).toBe("Other tab");
    server.change("service-worker.js", (text) =>
      text.replace(/(version\\":\\")[0-9a-f]+/, "$1a-newer-version"),
    );
    await page.evaluate(async () => {
      await (await navigator.serviceWorker.getRegistration())?.update();
    });
    await page.getByText("A newer Wideberth is ready.").waitFor();
    const [bed] = samplePlan.layouts[0]?.beds ?? [];
    if (bed?.outline.shape !== "rectangle") throw new Error("no bed");
    const { x, y } = bed.outline;
    // The other tab drags while this one takes the update with a title half typed: a press that
    // moves no focus, as from a screen reader.
    await dragOnSheet(other, { x, y }, { x: x + 5, y: y + 3 }, async () => {
      await page.bringToFront();
      const field = page.getByLabel("Plan title");
      await field.click();
      await page.keyboard.press("Control+a");
      await page.keyboard.type("Half typed");
      await Promise.all([
        page.waitForEvent("load"),
        page.getByRole("button", { name: "Load it now" }).evaluate((one) => {
          (one as HTMLElement).click();
        }),
      ]);
      await page.locator(".sheet[data-view]").waitFor();
      await expect.poll(() => titleOf(page)).toBe("Half typed");
      await other.bringToFront();
    });
    await expect
      .poll(() => other.getByRole("button", { name: /^Undo/ }).first().isEnabled())
      .toBe(true);
    await saved(other);
    await other.getByRole("button", { name: "Paper", exact: true }).click();
    await other.getByRole("button", { name: /^Save as PDF/ }).waitFor();
    await expect.poll(() => other.title()).toBe("Other tab");
  } finally {
    await server.close();
  }
});

test("a page that is left in the middle of typing takes along what is typed", async () => {
  const page = await newPage();
  await saved(page);
  await page.getByLabel("Plan title").click();
  await page.keyboard.press("Control+a");
  await page.keyboard.type("Typed and left");
  await page.reload();
  await page.locator(".sheet[data-view]").waitFor();
  await expect.poll(() => titleOf(page)).toBe("Typed and left");
});

test("a finger whose touch is taken away by the system drops nothing and leaves nothing in hand", async () => {
  await context.close();
  context = await browser.newContext({ ...VIEW, hasTouch: true });
  const page = await newPage();
  const touch = await context.newCDPSession(page);
  const send = (
    type: "touchStart" | "touchMove" | "touchCancel" | "touchEnd",
    at?: { x: number; y: number },
  ) => touch.send("Input.dispatchTouchEvent", { type, touchPoints: at ? [{ ...at, id: 0 }] : [] });
  const [bed] = samplePlan.layouts[0]?.beds ?? [];
  if (bed?.outline.shape !== "rectangle") throw new Error("no bed");
  const undo = page.getByRole("button", { name: /^Undo/ }).first();
  for (const end of ["touchCancel", "another plan"] as const) {
    await dropFile(
      page,
      "a.json",
      JSON.stringify({ ...samplePlan, id: `a-${end.length}`, title: end }),
    );
    await expect.poll(() => page.title()).toBe(end);
    const at = await pagePlace(page, bed.outline);
    await page.touchscreen.tap(at.x, at.y);
    await send("touchStart", at);
    for (let step = 1; step <= 8; step += 1)
      await send("touchMove", { x: at.x + step * 8, y: at.y + step * 4 });
    if (end === "touchCancel") await send("touchCancel");
    else {
      await dropFile(
        page,
        "b.json",
        JSON.stringify({ ...samplePlan, id: "b", title: "Meanwhile" }),
      );
      await expect.poll(() => page.title()).toBe("Meanwhile");
      await send("touchMove", { x: at.x + 90, y: at.y + 50 });
      await send("touchEnd");
    }
    await page.waitForTimeout(600);
    await expect.poll(() => undo.isDisabled(), { message: end }).toBe(true);
  }
  // The next finger works as if nothing had been.
  await dragOnSheet(page, bed.outline, { x: bed.outline.x + 5, y: bed.outline.y + 3 });
  await expect.poll(() => undo.isEnabled()).toBe(true);
});
