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

  const dialog = () => page.getByRole("dialog");
  const openPaper = () => page.getByRole("button", { name: "Paper", exact: true }).first().click();

  test("the pages stand on the screen before they are printed, counted, with what to look at", async () => {
    await openPaper();
    const picture = dialog().locator("img");
    await picture.waitFor();
    await expect.poll(() => picture.getAttribute("alt")).toBe("Map");
    await expect
      .poll(() => picture.evaluate((image) => (image as HTMLImageElement).naturalWidth))
      .toBeGreaterThan(500);
    await expect.poll(() => dialog().innerText()).toMatch(/\d+ conflicts? (?:is|are) open\./);
    for (const words of [
      /^Plot map, with notes and plot list: \d+ pages$/,
      /^Season calendar by week: \d+ pages?$/,
      /^Stake labels, one for each planting: 1 page$/,
      /^Packet labels, for the lots on the shelf: \d+ pages?$/,
    ]) {
      await dialog().getByLabel(words).waitFor();
    }
    for (let turned = 0; turned < 60; turned += 1) {
      const next = dialog().getByRole("button", { name: "Next page" });
      if (await next.isDisabled()) break;
      await next.click();
    }
    await expect.poll(() => picture.getAttribute("alt")).toContain("Before use");
    await expect.poll(() => axeFaults(page)).toEqual([]);
  });

  test("each sort of labels is a PDF of its own, the rest is one, named by revision", async () => {
    const names: string[] = [];
    const take = (download: Download) => names.push(download.suggestedFilename());
    page.on("download", take);
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      dialog()
        .getByRole("button", { name: /^Save as PDF/ })
        .click(),
    ]);
    expect((await contents(download)).subarray(0, 5).toString()).toBe("%PDF-");
    await expect.poll(() => names.length).toBe(4);
    page.off("download", take);
    for (const [index, what] of ["a4-paper", "stakes", "packets", "shelf-packets"].entries()) {
      expect(names[index]).toMatch(new RegExp(`-2027-.*-${what}-rev-[0-9a-z]{5}\\.pdf$`));
    }
  });

  test("the map alone is named a plot map; nothing ticked cannot be saved", async () => {
    const boxes = dialog().getByRole("group", { name: "What is printed" }).getByRole("checkbox");
    for (const box of await boxes.all()) await box.uncheck();
    await expect
      .poll(() =>
        dialog()
          .getByRole("button", { name: /^Save as PDF/ })
          .isDisabled(),
      )
      .toBe(true);
    await boxes.first().check();
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      dialog()
        .getByRole("button", { name: /^Save as PDF/ })
        .click(),
    ]);
    expect(download.suggestedFilename()).toMatch(/-a4-plot-map-rev-[0-9a-z]{5}\.pdf$/);
    await dialog()
      .getByText(/^Made /)
      .waitFor();
  });

  test("a map of more than 200 sheets is asked about first", async () => {
    await dialog().getByRole("combobox", { name: "Scale" }).selectOption("custom");
    await dialog().getByLabel("Scale 1 :").fill("1:5");
    await dialog().getByLabel("Scale 1 :").press("Enter");
    const asked = dialog().getByLabel(/^Yes, print all \d+ sheets of the map$/);
    await asked.waitFor();
    const save = dialog().getByRole("button", { name: /^Save as PDF/ });
    await expect.poll(() => save.isDisabled()).toBe(true);
    await asked.check();
    await expect.poll(() => save.isEnabled()).toBe(true);
    await dialog().getByRole("combobox", { name: "Scale" }).selectOption("suggested");
  });

  test("a bought sheet is measured field by field, refused by name, and remembered with the printer", async () => {
    await dialog().getByText("Stake labels: sheet and printer").click();
    const group = dialog()
      .locator("details")
      .filter({ hasText: "Stake labels: sheet and printer" });
    await group.getByRole("combobox", { name: "Labels", exact: true }).selectOption("measured");
    const field = (name: string) => group.getByLabel(name, { exact: true });
    await field("Pitch across").fill("50");
    await field("Pitch across").press("Tab");
    await group.getByText(/^Pitch across: got 50 mm/).waitFor();
    await expect
      .poll(() =>
        dialog()
          .getByRole("button", { name: /^Save as PDF/ })
          .isDisabled(),
      )
      .toBe(true);
    await field("Pitch across").fill("66,5");
    await field("Pitch across").press("Tab");
    await expect.poll(() => group.getByText(/^Pitch across: got/).count()).toBe(0);
    await field("First label to print on").fill("4");
    await field("First label to print on").press("Tab");
    await group.getByRole("img", { name: "A sheet of 3 x 7 labels, the first 3 used" }).waitFor();
    await field("Printer is off to the right, mm").fill("1,5");
    await field("Printer is off to the right, mm").press("Tab");
    await expect.poll(() => axeFaults(page)).toEqual([]);
    await dialog().getByRole("button", { name: "Close" }).click();
    await openPaper();
    await dialog().getByText("Stake labels: sheet and printer").click();
    await expect.poll(() => field("Printer is off to the right, mm").inputValue()).toBe("1.5");
    await group.getByRole("combobox", { name: "Labels", exact: true }).selectOption("measured");
    await expect.poll(() => field("Pitch across").inputValue()).toBe("66.5");
    await field("Printer is off to the right, mm").fill("0");
    await field("Printer is off to the right, mm").press("Tab");
    await dialog().getByRole("button", { name: "Close" }).click();
  });

  test("every file of the list is made", async () => {
    // It takes two layouts to compare.
    await page.getByRole("button", { name: "Compare", exact: true }).click();
    await page.getByRole("button", { name: "Copy First thoughts" }).click();
    await page.getByRole("button", { name: "Plan", exact: true }).click();
    await page.getByText("Files for others ...").click();
    const list = dialog().getByRole("combobox", { name: "File", exact: true });
    await list.waitFor();
    const ids = await list
      .locator("option")
      .evaluateAll((all) => all.map((one) => (one as HTMLOptionElement).value));
    expect(ids).toContain("png");
    for (const id of ids) {
      await list.selectOption(id);
      const [download] = await Promise.all([
        page.waitForEvent("download"),
        dialog().getByRole("button", { name: "Save the file" }).click(),
      ]);
      const bytes = await contents(download);
      expect(bytes.length).toBeGreaterThan(100);
      await expect
        .poll(() => dialog().getByRole("status").innerText())
        .toContain(download.suggestedFilename());
      if (id !== "png") continue;
      // A4 lying at 150 dots an inch: width and height stand in the first chunk.
      expect(bytes.subarray(1, 4).toString()).toBe("PNG");
      expect(bytes.readUInt32BE(16)).toBe(1754);
      // The notes stand below the page.
      expect(bytes.readUInt32BE(20)).toBeGreaterThan(1240);
    }
    await expect.poll(() => axeFaults(page)).toEqual([]);
  });
});
