/**
 * Where the numbers come from, in a real browser: the figures behind a finding, another figure
 * picked, own kinds, and the seed list out to a spreadsheet and back.
 */
import { readFileSync, writeFileSync, mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, Locator, Page } from "playwright-core";
import { afterAll, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { axeFaults } from "./axe.ts";
import { launchBrowser, siteUrl } from "./browser.ts";
import { openSample } from "./sheet.ts";

describe("figures in Chromium", () => {
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
    await openSample(page, siteUrl());
    await page.locator(".seed-row").first().waitFor();
  });

  function firstFinding(): Locator {
    return page.locator(".finding").filter({ hasText: "Amber Lantern" }).first();
  }

  async function fromPlanMenu(item: string): Promise<void> {
    await page.getByRole("button", { name: "Plan", exact: true }).click();
    await page.getByRole("button", { name: item, exact: true }).click();
  }

  test("another figure picked from a finding changes the number the finding asks for", async () => {
    await firstFinding().locator(".finding-open").click();
    await expect.poll(() => firstFinding().innerText()).toContain("needs 7.6 m");
    await firstFinding()
      .getByRole("button", { name: /^Figures/ })
      .click();
    const dialog = page.getByRole("dialog", { name: "Figures" });
    await dialog.getByRole("heading", { name: "tomato", exact: true }).waitFor();
    await expect.poll(() => dialog.innerText()).toContain("Organic Seed Grower");
    await expect.poll(() => axeFaults(page)).toEqual([]);
    await dialog.getByRole("button", { name: /^Use for Amber Lantern: US certified seed/ }).click();
    await dialog.getByText("US certified seed, 30 ft; picked for this variety").waitFor();
    await dialog.getByRole("button", { name: "Close" }).click();
    await expect.poll(() => firstFinding().innerText()).toContain("needs 9.1 m");
    await expect.poll(() => firstFinding().innerText()).toContain("US certified seed as picked");
    await page.getByRole("button", { name: /^Undo/ }).click();
    await expect.poll(() => firstFinding().innerText()).toContain("needs 7.6 m");
  });

  test("a kind is found by its botanical name, with all that is known of it", async () => {
    await fromPlanMenu("Figures");
    const dialog = page.getByRole("dialog", { name: "Figures" });
    await dialog.getByText("The seed parent decides").waitFor();
    await dialog.getByRole("searchbox").fill("daucus");
    await dialog.getByRole("button", { name: /^carrot/ }).click();
    const text = await dialog.innerText();
    for (const words of ["Seed keeps", "Germination standard", "Seeds per gram", "biennial"]) {
      expect(text).toContain(words);
    }
    await expect.poll(() => axeFaults(page)).toEqual([]);
  });

  test("a variety takes a figure from its own window, and a kind that was missing", async () => {
    await page.getByRole("button", { name: "Add a variety" }).click();
    const dialog = page.getByRole("dialog", { name: "Add a variety" });
    await dialog.getByRole("textbox", { name: "Name", exact: true }).fill("Pale Lamp");
    await dialog.getByRole("searchbox").fill("moonfruit");
    await dialog.getByRole("button", { name: /as a kind of your own/ }).click();
    const own = page.getByRole("dialog", { name: "Add a kind" });
    await own.getByLabel("At home level").fill("300 ft");
    await expect.poll(() => axeFaults(page)).toEqual([]);
    await own.getByRole("button", { name: "Add to the plan" }).click();
    await dialog.getByRole("button", { name: "All figures of moonfruit" }).click();
    const figures = page.getByRole("dialog", { name: "Figures" });
    await figures.getByRole("button", { name: /^Use for Pale Lamp: own figure/ }).click();
    await figures.getByRole("button", { name: "Close" }).click();
    await dialog.getByRole("button", { name: "Add to the seed list" }).click();
    await page.locator(".seed-row").filter({ hasText: "Pale Lamp" }).waitFor();
    await fromPlanMenu("Own kinds and figures");
    const kinds = page.getByRole("dialog", { name: "Own kinds and figures" });
    await kinds.getByText("91.4 m home").waitFor();
    await kinds.getByRole("button", { name: "Delete moonfruit" }).click();
    await kinds.getByText("moonfruit stays while Pale Lamp is of that kind").waitFor();
    await expect.poll(() => axeFaults(page)).toEqual([]);
  });

  test("the seed list goes out as CSV and comes back changed, once it was seen", async () => {
    await fromPlanMenu("Seed list as CSV");
    const dialog = page.getByRole("dialog", { name: "Seed list as CSV" });
    const started = page.waitForEvent("download");
    await dialog.getByRole("button", { name: "Save the list" }).click();
    const folder = mkdtempSync(join(tmpdir(), "seed-list-"));
    const saved = join(folder, "list.csv");
    await (await started).saveAs(saved);
    const text = readFileSync(saved, "utf8");
    expect(text).toContain("Amber Lantern,tomato,Solanum lycopersicum");
    writeFileSync(saved, `${text}Copper Kite,pea\r\nBrass Kite,moonfruit\r\n`);
    await dialog.getByLabel("CSV file").setInputFiles(saved);
    await dialog.getByText("1 new, 10 as they are; 1 row cannot be used.").waitFor();
    await dialog.getByText('got "moonfruit", expected the common name').waitFor();
    await expect.poll(() => axeFaults(page)).toEqual([]);
    await expect.poll(() => page.locator(".seed-row").filter({ hasText: "Kite" }).count()).toBe(0);
    await dialog.getByRole("button", { name: "Add 1 variety" }).click();
    await page.locator(".seed-row").filter({ hasText: "Copper Kite" }).waitFor();
    await page.getByRole("button", { name: /^Undo/ }).click();
    await expect.poll(() => page.locator(".seed-row").filter({ hasText: "Kite" }).count()).toBe(0);
  });

  test("on a phone the figures are read one page at a time", async () => {
    await page.setViewportSize({ width: 390, height: 844 });
    await page.getByRole("button", { name: "Menu" }).click();
    await fromPlanMenu("Figures");
    const dialog = page.getByRole("dialog", { name: "Figures" });
    await dialog.getByRole("button", { name: /^beet/ }).click();
    await dialog.getByRole("heading", { name: "beet", exact: true }).waitFor();
    await expect.poll(() => dialog.getByRole("searchbox").isVisible()).toBe(false);
    const overflow = await dialog.evaluate((element) => element.scrollWidth - element.clientWidth);
    expect(overflow).toBe(0);
    await expect.poll(() => axeFaults(page)).toEqual([]);
    await dialog.getByRole("button", { name: "All kinds" }).click();
    await dialog.getByRole("searchbox").waitFor();
  });
});
