/** Getting back what was kept: the list of plans, earlier copies, damaged ones, the log. */
import { readFileSync } from "node:fs";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from "vitest";
import { launchBrowser, siteUrl } from "./browser.ts";
import { openSample } from "./sheet.ts";
import { dropFile } from "./drop-file.ts";

let browser: Browser;
let context: BrowserContext;
let page: Page;

beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());
beforeEach(async () => {
  context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
  page = await context.newPage();
  await openSample(page, siteUrl());
  await page.getByText(/^Saved /).waitFor();
});
afterEach(() => context.close());

const title = () => page.getByLabel("Plan title").inputValue();

async function retitle(text: string): Promise<void> {
  const field = page.getByLabel("Plan title");
  await field.fill(text);
  await field.press("Enter");
  await page
    .getByText("Not saved yet")
    .or(page.getByText("Saving ..."))
    .waitFor({ state: "hidden" });
  await page.getByText(/^Saved /).waitFor();
}

async function pickFromMenu(item: string): Promise<void> {
  await page.getByRole("button", { name: "Plan", exact: true }).click();
  await page.getByText(item).click();
}

test("an earlier copy opens as a plan of its own, and the plan it came from opens again", async () => {
  const before = await title();
  await retitle("Second thoughts");
  await pickFromMenu("Kept plans ...");
  await page.getByRole("button", { name: "Earlier copies of Second thoughts" }).click();
  await page.getByRole("button", { name: "Open as a copy: number 1" }).click();
  await expect.poll(title).toContain(`${before} (copy of `);
  await page.getByText(/^Saved /).waitFor();
  await pickFromMenu("Kept plans ...");
  const other = page.getByRole("listitem").filter({ hasText: "Second thoughts" });
  await other.getByRole("button", { name: "Open", exact: true }).click();
  await expect.poll(title).toBe("Second thoughts");
});

test("a damaged copy is told from a whole one, and what is left of it goes into a file", async () => {
  await retitle("Whole");
  await page.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open("wideberth");
        opening.addEventListener("success", () => {
          const db = opening.result;
          const store = db.transaction("generations", "readwrite").objectStore("generations");
          const looking = store.openCursor();
          looking.addEventListener("success", () => {
            const value = looking.result?.value as { text: string };
            const writing = store.put({ ...value, text: value.text.replace("2", "3") });
            writing.addEventListener("error", () => reject(new Error("refused")));
            writing.addEventListener("success", () => {
              db.close();
              resolve();
            });
          });
        });
      }),
  );
  await pickFromMenu("Kept plans ...");
  await page.getByRole("button", { name: "Earlier copies of Whole" }).click();
  await page.getByRole("button", { name: "Open as a copy: number 1" }).click();
  await page.getByText("Copy 1 is damaged.").waitFor();
  await expect.poll(() => title()).toBe("Whole");
  const download = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save as a file: number 1" }).click();
  const text = readFileSync(await (await download).path(), "utf8");
  expect(text).toContain('"wideberth-plan"');
});

test("a plan long in no file is reminded of", async () => {
  await retitle("On the workbench only");
  await expect.poll(() => page.getByRole("button", { name: /^No file for/ }).count()).toBe(0);
  await page.evaluate(() => {
    const notes = JSON.parse(localStorage.getItem("wideberth.files") ?? "{}") as Record<
      string,
      { inFile: string | null; changed: string | null }
    >;
    for (const note of Object.values(notes)) note.changed = "2026-01-05T10:00:00.000Z";
    localStorage.setItem("wideberth.files", JSON.stringify(notes));
  });
  await page.reload();
  await page.getByRole("button", { name: /^No file for \d+ days$/ }).waitFor();
});

test("what went wrong can be read, copied and cleared", async () => {
  await dropFile(page, "broken.json", "{");
  await page.getByRole("alert").getByText("The file was not opened").waitFor();
  await page.evaluate(() => {
    setTimeout(() => {
      throw new Error("A fault of this test");
    });
  });
  await pickFromMenu("Trouble report");
  await page.getByText("A fault of this test").waitFor();
  await context.grantPermissions(["clipboard-read", "clipboard-write"]);
  await page.getByRole("button", { name: "Copy", exact: true }).click();
  await page.getByText("Copied.").waitFor();
  await expect
    .poll(() => page.evaluate(() => navigator.clipboard.readText()))
    .toContain("A fault of this test");
  await page.getByRole("button", { name: "Clear", exact: true }).click();
  await page.getByText("Nothing has gone wrong.").waitFor();
});

test("a fault while drawing leaves the plan, its keeping and the other regions working", async () => {
  await page.evaluate(() => {
    const pen = CanvasRenderingContext2D.prototype;
    const right = Object.getOwnPropertyDescriptor(pen, "fillText") ?? {};
    Object.defineProperty(pen, "fillText", {
      configurable: true,
      value: () => {
        throw new Error("The drawing broke");
      },
    });
    Reflect.set(window, "mend", () => Object.defineProperty(pen, "fillText", right));
  });
  await page.setViewportSize({ width: 1300, height: 800 });
  await retitle("Kept all the same");
  await pickFromMenu("Trouble report");
  await page.getByText("The drawing broke").waitFor();
  await page.keyboard.press("Escape");
  await page.evaluate(() => (Reflect.get(window, "mend") as () => void)());
  await page.setViewportSize({ width: 1440, height: 900 });
  await page.reload();
  await expect.poll(title).toBe("Kept all the same");
});
