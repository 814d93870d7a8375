/** Which year for which in a real browser: laid out, changed by hand, made the season's seed list. */
import { readFileSync } from "node:fs";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { axeFaults } from "./axe.ts";
import { launchBrowser, siteUrl } from "./browser.ts";
import { dropFile } from "./drop-file.ts";
import { openSample } from "./sheet.ts";

const sample = readFileSync(
  new URL("../../sample-plots/seed-collection.json", import.meta.url),
  "utf8",
);

describe("a collection of sixty varieties", () => {
  let browser: Browser;
  let page: Page;
  const dialog = () => page.getByRole("dialog");
  const season = (name: string, year: number) =>
    dialog().getByRole("button", { name: new RegExp(`^${name}, ${year}:`) });

  beforeAll(async () => {
    browser = await launchBrowser();
    page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
    page.setDefaultTimeout(20_000);
    await openSample(page, siteUrl());
    await dropFile(page, "seed-collection.json", sample);
    await page.waitForFunction(() =>
      [...document.querySelectorAll("input")].some(({ value }) =>
        value.includes("seed collection"),
      ),
    );
    await page.getByRole("button", { name: "Plan", exact: true }).click();
    await page
      .locator(".menu")
      .getByRole("button", { name: "Which year for which ...", exact: true })
      .click();
    await dialog().getByRole("table").waitFor();
  }, 60_000);

  afterAll(async () => browser.close());

  test("is laid out in a thread, with what is proven and who is not taken for alive", async () => {
    await expect.poll(() => season("Blue Cairn", 2027).getAttribute("aria-pressed")).toBe("false");
    await dialog().getByRole("button", { name: "Lay out the years" }).click();
    await dialog()
      .getByText(/^Proven: all could be renewed once within \d seasons/)
      .waitFor();
    await dialog()
      .getByText(/Nothing stands against these years/)
      .waitFor();
    await dialog()
      .getByText(/% better|^Proven: no lay-out/)
      .waitFor();
    await expect.poll(() => season("Blue Cairn", 2027).getAttribute("aria-pressed")).toBe("true");
    const unknown = dialog().getByText(/not taken for alive/);
    await unknown.click();
    await dialog().locator("details[open]", { hasText: "Marl Pit" }).waitFor();
    await expect.poll(() => axeFaults(page)).toEqual([]);
  }, 60_000);

  test("is judged at once when it is changed by hand, and undone like anything else", async () => {
    await season("Blue Cairn", 2027).click();
    await dialog()
      .getByText(/^Blue Cairn must be grown for seed by 2027/)
      .waitFor();
    await expect
      .poll(() => season("Blue Cairn", 2027).getAttribute("aria-label"))
      .toContain("not grown, by hand");
    await dialog().getByRole("button", { name: "Clear what was set by hand" }).click();
    await dialog().getByRole("button", { name: "Lay out anew" }).click();
    await dialog()
      .getByText(/Nothing stands against these years/)
      .waitFor();
    await dialog().getByRole("button", { name: "Lay out anew" }).waitFor();
  }, 60_000);

  test("fits a phone: nothing but the table scrolls sideways", async () => {
    await page.setViewportSize({ width: 390, height: 844 });
    const width = () => dialog().evaluate((element) => element.scrollWidth - element.clientWidth);
    await expect.poll(width).toBeLessThanOrEqual(0);
    await page.setViewportSize({ width: 1440, height: 900 });
  });

  test("gives the season's seed list in one press, one step to undo", async () => {
    await dialog().getByRole("button", { name: "Make the seed list of 2027" }).click();
    await dialog().getByText("✓ In the seed list of 2027").waitFor();
    await page.keyboard.press("Escape");
    const wanted = page.locator(".seed-row", { hasText: "its turn is" });
    await expect.poll(() => wanted.count()).toBeGreaterThan(10);
    await page.keyboard.press("Control+z");
    await expect.poll(() => wanted.count()).toBe(0);
  }, 60_000);
});
