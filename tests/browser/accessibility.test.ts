/**
 * axe-core (WCAG 2.2 A and AA, best practice) over the states a person meets, in light, dark and
 * at phone width. What is painted on the canvas has the tables as its accessible twin.
 */
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { axeFaults } from "./axe.ts";
import { launchBrowser, siteUrl } from "./browser.ts";
import { openSample } from "./sheet.ts";

/** Each state is reached from the open sample. */
const states: Readonly<Record<string, (page: Page) => Promise<void>>> = {
  "the sheet at rest": async () => {},
  "the tables": (page) => page.getByRole("button", { name: "Tables", exact: true }).click(),
  "a planting selected": async (page) => {
    await page.getByRole("button", { name: "Tables", exact: true }).click();
    await page.getByRole("button", { name: /B02-1/ }).first().click();
  },
  "ways out of a conflict": async (page) => {
    await page
      .getByRole("button", { name: /^Ways out/ })
      .first()
      .click();
    await page.getByRole("heading", { name: "Ways out" }).waitFor();
  },
  "the settings": (page) => page.getByRole("button", { name: /^season 2027/ }).click(),
  "the variety dialog": (page) => page.getByRole("button", { name: "Add a variety" }).click(),
  "the dialog that prints": (page) =>
    page.getByRole("button", { name: "Paper", exact: true }).click(),
};

describe.each([
  { look: "light", colorScheme: "light", viewport: { width: 1440, height: 900 } },
  { look: "dark", colorScheme: "dark", viewport: { width: 1440, height: 900 } },
] as const)("in the $look theme", ({ colorScheme, viewport }) => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launchBrowser();
  });
  afterAll(() => browser.close());

  test.each(Object.keys(states))("axe finds nothing in %s", async (name) => {
    const page = await browser.newPage({ colorScheme, viewport });
    page.setDefaultTimeout(20_000);
    await page.goto(siteUrl());
    await page.getByRole("heading", { name: "Findings" }).waitFor();
    await page.locator(".finding").first().waitFor();
    await states[name]?.(page);
    await expect.poll(() => axeFaults(page)).toEqual([]);
    await page.close();
  });
});

test("axe finds nothing on a phone, whichever drawer is open", async () => {
  const browser = await launchBrowser();
  const page = await browser.newPage({ viewport: { width: 390, height: 844 } });
  await openSample(page, siteUrl());
  await expect.poll(() => axeFaults(page)).toEqual([]);
  for (const drawer of ["Seed list", "Findings", "Particulars", "Bloom"]) {
    await page.getByRole("button", { name: drawer }).last().click();
    await expect.poll(() => axeFaults(page)).toEqual([]);
  }
  await expect
    .poll(() => page.evaluate(() => document.documentElement.scrollWidth))
    .toBeLessThanOrEqual(390);
  await browser.close();
});
