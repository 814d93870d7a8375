/** Layouts compared in a real browser: drawings that move together, measures, a file, no faults for axe. */
import { readFileSync } from "node:fs";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { textOf } from "../support/printed.ts";
import { axeFaults } from "./axe.ts";
import { launchBrowser, siteUrl } from "./browser.ts";
import { openSample } from "./sheet.ts";

describe("comparing layouts in Chromium", () => {
  let browser: Browser;
  let page: Page;
  const views = () =>
    page.locator(".compare-sheet").evaluateAll((all) => all.map((one) => one.dataset["view"]));

  beforeAll(async () => {
    browser = await launchBrowser();
    page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
    await openSample(page, siteUrl());
    await page
      .getByText(/3 conflicts/)
      .first()
      .waitFor();
    await page.getByRole("button", { name: "Compare", exact: true }).click();
  });
  afterAll(() => browser.close());

  test("with one layout it offers a copy, and the copy differs in nothing", async () => {
    await page.getByRole("button", { name: "Copy First thoughts" }).click();
    await expect.poll(() => page.locator(".compare-sheet").count()).toBe(2);
    await expect.poll(() => page.getByText("In nothing.").count()).toBe(1);
  });

  test("the drawings pan and zoom together", async () => {
    const before = await views();
    expect(before[0]).toBe(before[1]);
    await page.locator(".compare-sheet").nth(1).hover();
    await page.mouse.wheel(0, -240);
    await page.mouse.down();
    await page.mouse.move(900, 300, { steps: 5 });
    await page.mouse.up();
    const after = await views();
    expect(after[0]).not.toBe(before[0]);
    expect(after[0]).toBe(after[1]);
  });

  test("a planting taken out of the copy is named, and the plants missing are measured", async () => {
    await page.getByRole("button", { name: "Tables" }).click();
    await page.getByRole("button", { name: /^Actions for A01-1/ }).click();
    await page.getByRole("menuitem", { name: /^Delete/ }).click();
    await page.getByRole("button", { name: "Compare", exact: true }).click();
    await expect.poll(() => page.locator(".differences").innerText()).toMatch(/A01-1 .*: removed/);
    const row = page.getByRole("row", { name: /^Plants missing/ });
    await expect.poll(() => row.locator("td.better").count()).toBe(1);
    await expect.poll(() => row.locator("td").first().innerText()).toContain("✓");
  });

  test("overlaid shows one drawing of both", async () => {
    await page.getByRole("button", { name: "Overlaid" }).click();
    await expect.poll(() => page.locator(".compare-sheet").count()).toBe(1);
    await expect
      .poll(() => page.locator("figcaption").innerText())
      .toContain("First thoughts, then");
  });

  test("the measures are saved as CSV with a column for each layout", async () => {
    const download = page.waitForEvent("download");
    await page.getByRole("button", { name: "Save measures as CSV" }).click();
    const text = readFileSync(await (await download).path(), "utf8");
    expect(text.split("\r\n")[0]).toMatch(/^\uFEFF?Measure,Unit,Better,First thoughts,Layout 2$/);
    expect(text).toContain("Conflicts,count,less,");
  });

  test("the pages to print are saved, overlaid as they are seen", async () => {
    await page.getByLabel("Paper").selectOption("Letter");
    const download = page.waitForEvent("download");
    await page.getByRole("button", { name: "Save to print (PDF)" }).click();
    const file = await download;
    expect(file.suggestedFilename()).toMatch(/-layouts-compared-rev-[0-9a-z]{5}\.pdf$/);
    const words = textOf(readFileSync(await file.path()));
    expect(words).toContain("First thoughts, then Layout 2");
    expect(words).toMatch(/\(1\) A01-1 .*: removed/);
    await expect.poll(() => page.getByText(/^Made .*2 pages on Letter/).count()).toBe(1);
  });

  test("nothing for axe to hold against it", async () => {
    await expect.poll(() => axeFaults(page)).toEqual([]);
  });
});
