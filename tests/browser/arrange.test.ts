/** The arranger in a real browser: it works beside the window and brings a layout of its own. */
import { readFileSync } from "node:fs";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { axeFaults } from "./axe.ts";
import { launchBrowser, siteUrl } from "./browser.ts";
import { dropFile } from "./drop-file.ts";
import { conflictCount, openSample } from "./sheet.ts";

describe("arranging in Chromium", () => {
  let browser: Browser;
  let page: Page;

  beforeAll(async () => {
    browser = await launchBrowser();
    page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
    await openSample(page, siteUrl());
    await page
      .getByText(/3 conflicts/)
      .first()
      .waitFor();
  });
  afterAll(() => browser.close());

  const open = async () => {
    await page.getByRole("button", { name: "Layout", exact: true }).click();
    await page.getByRole("button", { name: /^Arrange .* for me/ }).click();
    await page.getByRole("button", { name: "Arrange", exact: true }).click();
  };

  test("a search that is cancelled changes nothing", async () => {
    await expect.poll(() => conflictCount(page)).toBe(3);
    await open();
    await page.getByRole("button", { name: "Cancel" }).click();
    await page.getByRole("button", { name: "Arrange", exact: true }).waitFor();
    await page.getByRole("dialog").getByRole("button", { name: "Close", exact: true }).click();
    await expect.poll(() => page.locator(".layout-tab").count()).toBe(1);
  });

  test("the answer is said, and comes as a new layout without conflicts", async () => {
    await open();
    await page.getByText("3 conflicts before, no conflict after").waitFor();
    await expect.poll(() => axeFaults(page)).toEqual([]);
    await page.getByRole("button", { name: "Add as a new layout" }).click();
    await expect.poll(() => page.locator(".layout-tab").count()).toBe(2);
    await expect.poll(() => conflictCount(page)).toBe(0);
  });

  test("the old layout is as it was, and one undo takes the new one away", async () => {
    await page.getByRole("button", { name: "First thoughts" }).click();
    await expect.poll(() => conflictCount(page)).toBe(3);
    await page.keyboard.press("Control+z");
    await expect.poll(() => page.locator(".layout-tab").count()).toBe(1);
  });

  test("what the seed list still wants is placed as well, when asked", async () => {
    await page.getByRole("button", { name: "Layout", exact: true }).click();
    await page.getByRole("button", { name: /^Arrange .* for me/ }).click();
    await page.getByLabel("Also place what the seed list still wants: Quarry White (60)").check();
    await page.getByRole("button", { name: "Arrange", exact: true }).click();
    await page.getByText("60 plants together").waitFor();
    await page.getByText("3 conflicts before, no conflict after").waitFor();
    await page.getByRole("button", { name: "Add as a new layout" }).click();
    await expect.poll(() => page.locator(".layout-tab").count()).toBe(2);
    await expect.poll(() => conflictCount(page)).toBe(0);
    await page.keyboard.press("Control+z");
    await expect.poll(() => page.locator(".layout-tab").count()).toBe(1);
  });

  test("where conflicts must remain, a proof says so, and may be stopped", async () => {
    const file = new URL("../../sample-plots/garden-to-solve.json", import.meta.url);
    const plan: unknown = JSON.parse(readFileSync(file, "utf8"), (key, inner: unknown) =>
      key === "varieties" && Array.isArray(inner)
        ? inner.map((variety: object) => ({ ...variety, isolationM: 500 }))
        : inner,
    );
    // A plan of its own: a file with the id of the open one would be asked about first.
    const copy = JSON.stringify(Object.assign(Object(plan), { id: "too-near" }));
    await dropFile(page, "too-near.json", copy);
    await expect.poll(() => conflictCount(page)).toBeGreaterThan(3);
    await page.getByRole("button", { name: "Layout", exact: true }).click();
    await page.getByRole("button", { name: /^Arrange .* for me/ }).click();
    await page.getByLabel("Time limit, seconds").fill("3");
    await page.getByRole("button", { name: "Arrange", exact: true }).click();
    const ask = page.getByRole("button", { name: "Can any layout do better?" });
    await ask.click();
    await page.getByRole("button", { name: "Stop the proof" }).click();
    await ask.click();
    await page.getByText("no layout with these places can do better").waitFor();
    await page.getByText("What lies between them is not covered").waitFor();
    await expect.poll(() => axeFaults(page)).toEqual([]);
    await page.getByRole("dialog").getByRole("button", { name: "Close", exact: true }).click();
  });
});
