/** The line of a variety in a real browser: found from seed list, lot and packet, read and mended. */
import type { Browser, Locator, Page } from "playwright-core";
import { afterAll, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { axeFaults } from "./axe.ts";
import { launchBrowser, siteUrl } from "./browser.ts";
import { openSample } from "./sheet.ts";

describe("the line of a variety in Chromium", () => {
  let browser: Browser;
  let page: Page;

  beforeAll(async () => {
    browser = await launchBrowser();
  });
  afterAll(() => browser.close());

  beforeEach(async () => {
    await page?.context().close();
    const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
    page = await context.newPage();
    page.setDefaultTimeout(20_000);
    await openSample(page, siteUrl());
    await page.getByRole("button", { name: "Plan", exact: true }).click();
    await page.getByRole("button", { name: /^Two-acre/ }).click();
    await page.locator(".seed-row").filter({ hasText: "Gatepost Flint" }).waitFor();
  });

  const dialog = (): Locator => page.getByRole("dialog");
  const row = (code: string): Locator => dialog().getByRole("row").filter({ hasText: code });

  async function openFromSeedList(): Promise<void> {
    await page.locator(".seed-row").filter({ hasText: "Gatepost Flint" }).hover();
    await page.getByRole("button", { name: "Line of Gatepost Flint through the years" }).click();
    await dialog().getByRole("heading", { name: "Line of Gatepost Flint" }).waitFor();
  }

  test("from the seed list: years, numbers, and a crossing that is not forgotten", async () => {
    await openFromSeedList();
    await expect.poll(() => dialog().locator(".line-box").count()).toBe(5);
    await expect.poll(() => row("GF-23").nth(0).innerText()).toMatch(/24\s+180\s+68\s/);
    await expect.poll(() => row("GF-25").first().innerText()).toContain("after a crossing");
    await expect.poll(() => dialog().innerText()).toContain("GF-23 was not kept apart");
    await dialog().getByRole("button", { name: "GF-21", exact: true }).click();
    await dialog().getByRole("heading", { name: "What GF-21 has behind it" }).waitFor();
    await expect.poll(() => dialog().innerText()).not.toContain("was not kept apart: crosses");
    await expect.poll(() => axeFaults(page)).toEqual([]);
  });

  test("from a lot: a number that is mended there moves the line", async () => {
    await page.getByRole("button", { name: "Lots", exact: true }).click();
    await page.getByRole("option").filter({ hasText: "GF-25" }).click();
    const particulars = page.getByRole("region", { name: "Particulars" });
    const pollen = particulars.getByLabel("Plants that shed pollen");
    await pollen.fill("20");
    await pollen.press("Enter");
    await particulars.getByRole("button", { name: "Its line through the years" }).click();
    await expect.poll(() => row("GF-25").first().innerText()).toMatch(/420\s+20\s+7[0-9]\s/);
    await dialog().getByRole("button", { name: "Open lot GF-25" }).click();
    const grownFrom = particulars.getByLabel("Grown from");
    await grownFrom.fill("GF-99");
    await grownFrom.press("Enter");
    await particulars.getByText("No lot on the shelf has the code GF-99").waitFor();
    await grownFrom.fill("GF-25");
    await grownFrom.press("Enter");
    await particulars.getByText(/Grown from: got/).waitFor();
  });

  test("from a scanned packet", async () => {
    await page.getByRole("button", { name: "Lots", exact: true }).click();
    await page.getByRole("button", { name: /^Scan/ }).click();
    await dialog().getByLabel("Or type the code").fill("GF-21");
    await dialog().getByRole("button", { name: "Open", exact: true }).click();
    const particulars = page.getByRole("region", { name: "Particulars" });
    await particulars.getByText("GF-21").first().waitFor();
    await particulars.getByRole("button", { name: "Its line through the years" }).click();
    await dialog().getByRole("heading", { name: "What GF-21 has behind it" }).waitFor();
  });

  test("on a phone the drawing is scrolled in its place", async () => {
    await openFromSeedList();
    await page.setViewportSize({ width: 390, height: 800 });
    const width = await dialog().evaluate((element) => element.scrollWidth - element.clientWidth);
    expect(width).toBeLessThanOrEqual(1);
  });
});
