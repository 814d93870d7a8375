/** Paper and files in a real browser: pages on screen, the PDF, every file of the list. */
import { readFileSync } from "node:fs";
import type { Browser, Download, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { axeFaults } from "./axe.ts";
import { launchBrowser, siteUrl } from "./browser.ts";
import { openSample } from "./sheet.ts";

async function contents(download: Download): Promise<Buffer> {
  return readFileSync(await download.path());
}

describe("paper and files in Chromium", () => {
  let browser: Browser;
  let page: Page;

  beforeAll(async () => {
    browser = await launchBrowser();
    page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
    await openSample(page, siteUrl());
  });
  afterAll(() => browser.close());

  test("the pages stand on the screen before they are printed, with what to look at", async () => {
    await page.getByRole("button", { name: "Plot map" }).first().click();
    const dialog = page.getByRole("dialog");
    await dialog.getByLabel("Season calendar by week").check();
    await dialog.getByRole("button", { name: "Show the pages" }).click();
    const picture = dialog.getByRole("img");
    await picture.waitFor();
    expect(await picture.getAttribute("alt")).toBe("Map");
    await expect
      .poll(() => picture.evaluate((image) => (image as HTMLImageElement).naturalWidth))
      .toBeGreaterThan(500);
    expect(await dialog.innerText()).toMatch(/\d+ conflicts? (?:is|are) open\./);
    for (let turned = 0; turned < 20; turned += 1) {
      const next = dialog.getByRole("button", { name: "Next page" });
      if (await next.isDisabled()) break;
      await next.click();
    }
    expect(await picture.getAttribute("alt")).toContain("Season calendar");
    expect(await axeFaults(page)).toEqual([]);
  });

  test("the PDF is named after place, season, layout and revision", async () => {
    const dialog = page.getByRole("dialog");
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      dialog.getByRole("button", { name: "Make the PDF" }).click(),
    ]);
    expect(download.suggestedFilename()).toMatch(/-2027-.*-plot-map-rev-[0-9a-z]{5}\.pdf$/);
    expect((await contents(download)).subarray(0, 5).toString()).toBe("%PDF-");
    await dialog.getByRole("button", { name: "Close" }).click();
  });

  test("every file of the list is made", async () => {
    // It takes two layouts to compare.
    await page.getByRole("button", { name: "Compare", exact: true }).click();
    await page.getByRole("button", { name: "Copy First thoughts" }).click();
    await page.getByRole("button", { name: "Plan", exact: true }).click();
    await page.getByText("Files for others ...").click();
    const dialog = page.getByRole("dialog");
    const list = dialog.getByRole("combobox", { name: "File", exact: true });
    await list.waitFor();
    const ids = await list
      .locator("option")
      .evaluateAll((all) => all.map((one) => (one as HTMLOptionElement).value));
    expect(ids).toContain("png");
    for (const id of ids) {
      await list.selectOption(id);
      const [download] = await Promise.all([
        page.waitForEvent("download"),
        dialog.getByRole("button", { name: "Save the file" }).click(),
      ]);
      const bytes = await contents(download);
      expect(bytes.length).toBeGreaterThan(100);
      expect(await dialog.getByRole("status").innerText()).toContain(download.suggestedFilename());
      if (id !== "png") continue;
      // A4 lying at 150 dots an inch: width and height stand in the first chunk.
      expect(bytes.subarray(1, 4).toString()).toBe("PNG");
      expect(bytes.readUInt32BE(16)).toBe(1754);
      // The notes stand below the page.
      expect(bytes.readUInt32BE(20)).toBeGreaterThan(1240);
    }
    expect(await axeFaults(page)).toEqual([]);
  });
});
