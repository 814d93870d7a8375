/** The grower's own weights over the measures compared: none at first, then one total of their making. */
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { axeFaults } from "./axe.ts";
import { launchBrowser, siteUrl } from "./browser.ts";
import { openSample } from "./sheet.ts";

let browser: Browser;
let page: Page;

beforeAll(async () => {
  browser = await launchBrowser();
  page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await openSample(page, siteUrl());
  await page.getByRole("button", { name: "Compare", exact: true }).click();
  await page.getByRole("button", { name: "Copy First thoughts" }).click();
  await page.locator(".measures").waitFor();
});
afterAll(() => browser.close());

test("no total unless the grower weighs, and then theirs alone", async () => {
  const total = page.getByRole("row", { name: /^Your own total/ });
  await expect.poll(() => total.count()).toBe(0);
  await page.getByRole("button", { name: "Weigh measures" }).click();
  await expect.poll(() => total.innerText()).toContain("no weights");
  await page.getByLabel("Weight of: Conflicts").fill("2,5");
  await expect.poll(() => total.innerText()).toMatch(/7\.5\s+7\.5/);
  await expect.poll(() => axeFaults(page)).toEqual([]);
  await page.getByLabel("Weight of: Conflicts").fill("lots");
  await expect.poll(() => total.innerText()).toContain("no weights");
});

test("the weights outlast another view", async () => {
  await page.getByLabel("Weight of: Conflicts").fill("1");
  await page.getByRole("button", { name: "Sheet", exact: true }).click();
  await page.getByRole("button", { name: "Compare", exact: true }).click();
  await expect.poll(() => page.getByLabel("Weight of: Conflicts").inputValue()).toBe("1");
});
