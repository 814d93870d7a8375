/** Placing a variety from the dialog: first answers a grower would give, and what they would bring. */
import { afterAll, beforeAll, expect, test } from "vitest";
import type { Browser, Page } from "playwright-core";
import { axeFaults } from "./axe.ts";
import { launchBrowser, siteUrl } from "./browser.ts";
import { conflictCount, openSample } from "./sheet.ts";

let browser: Browser;
let page: Page;
const dialog = () => page.getByRole("dialog", { name: "Place a variety" });

beforeAll(async () => {
  browser = await launchBrowser();
  page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  page.setDefaultTimeout(20_000);
  await openSample(page, siteUrl());
});
afterAll(() => browser.close());

test("begins with what is still to place, all its plants, a bed without a conflict and a day", async () => {
  await page.keyboard.press("Control+k");
  await page.getByRole("dialog").getByRole("combobox").fill("place a variety");
  await page.getByRole("option", { name: /^Place a variety/ }).click();
  await dialog().waitFor();
  const variety = dialog().getByLabel("Variety");
  await expect.poll(() => variety.locator("option:checked").innerText()).toBe("Quarry White");
  await expect.poll(() => variety.evaluate((field) => field === document.activeElement)).toBe(true);
  await expect.poll(() => dialog().getByLabel("Plants").inputValue()).toBe("60");
  await expect.poll(() => dialog().getByLabel("On").inputValue()).toMatch(/^2027-\d\d-\d\d$/);
  await expect.poll(() => dialog().innerText()).toContain("No new conflict there.");
  await expect.poll(() => axeFaults(page)).toEqual([]);
});

test("another bed tells at once which conflict it would bring", async () => {
  await dialog().getByLabel("Variety").selectOption({ label: "Old Ferry" });
  const beds = await dialog().getByLabel("In bed").locator("option").allInnerTexts();
  const beside = beds.find((label) => label.startsWith("B02"));
  await dialog()
    .getByLabel("In bed")
    .selectOption({ label: beside ?? "" });
  await dialog()
    .getByText(/✕ .*Amber Lantern/)
    .waitFor();
  await expect.poll(() => dialog().innerText()).toContain("in the row");
  // It lies on the sheet before it is placed, and the sheet is not covered.
  await expect.poll(() => conflictCount(page)).toBe(5);
  const sheet = await page.locator(".sheet[data-view]").boundingBox();
  const aside = await dialog().boundingBox();
  expect(aside?.x).toBeGreaterThanOrEqual((sheet?.x ?? 0) + (sheet?.width ?? 0) - 1);
});

test("placed with its day it is counted at once, and brings no conflict", async () => {
  await dialog().getByLabel("Variety").selectOption({ label: "Quarry White" });
  const before = await conflictCount(page);
  await dialog().getByRole("button", { name: "Place", exact: true }).click();
  await page
    .locator(".particulars")
    .getByRole("heading", { name: /^Planting / })
    .waitFor();
  await expect.poll(() => conflictCount(page)).toBe(before);
  await page.locator(".seed-row", { hasText: "Quarry White" }).getByText("60 of 60").waitFor();
  // With the focus nowhere Escape still belongs to the sheet.
  await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
  await page.keyboard.press("Escape");
  await page.locator(".particulars").getByText("nothing selected").waitFor();
});
