/** The arranger in a real browser: it works beside the window and brings a layout of its own. */
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { axeFaults } from "./axe.ts";
import { launchBrowser, siteUrl } from "./browser.ts";
import { conflictCount } from "./sheet.ts";

describe("arranging in Chromium", () => {
  let browser: Browser;
  let page: Page;

  beforeAll(async () => {
    browser = await launchBrowser();
    page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
    await page.goto(siteUrl());
    await page.locator(".sheet[data-view]").waitFor();
    await page
      .getByText(/^3 conflicts/)
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
    await page.getByRole("button", { name: "Close", exact: true }).click();
    expect(await page.locator(".layout-tab").count()).toBe(1);
  });

  test("the answer is said, and comes as a new layout without conflicts", async () => {
    await open();
    await page.getByText("3 conflicts before, no conflict after").waitFor();
    expect(await axeFaults(page)).toEqual([]);
    await page.getByRole("button", { name: "Keep as a new layout" }).click();
    await expect.poll(() => page.locator(".layout-tab").count()).toBe(2);
    await expect.poll(() => conflictCount(page)).toBe(0);
  });

  test("the old layout is as it was, and one undo takes the new one away", async () => {
    await page.getByRole("button", { name: "First thoughts" }).click();
    await expect.poll(() => conflictCount(page)).toBe(3);
    await page.keyboard.press("Control+z");
    await expect.poll(() => page.locator(".layout-tab").count()).toBe(1);
  });
});
