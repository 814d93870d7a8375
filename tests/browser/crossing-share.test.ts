/**
 * How much would cross, asked by hand in a real browser: the particulars of a planting, the ways
 * out before and after, and the shade on the sheet, made on a thread of its own.
 */
import { readFileSync } from "node:fs";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { axeFaults } from "./axe.ts";
import { launchBrowser, siteUrl } from "./browser.ts";
import { dropFile } from "./drop-file.ts";
import { openSample } from "./sheet.ts";

const sample = new URL("../../sample-plots/lane-field.json", import.meta.url);

describe("how much would cross, in Chromium", () => {
  let browser: Browser;
  let page: Page;

  beforeAll(async () => {
    browser = await launchBrowser();
    page = await browser.newPage({
      viewport: { width: 1440, height: 900 },
      reducedMotion: "reduce",
    });
    await openSample(page, siteUrl());
    await dropFile(page, "lane-field.json", readFileSync(sample, "utf8"));
    await finding().waitFor();
  });
  afterAll(() => browser.close());

  const finding = () => page.locator(".finding").filter({ hasText: "Gatepost Flint" }).first();
  const fold = () => page.locator(".crossing-share");

  test("ways out tell the estimate, and what each makes of it", async () => {
    await finding()
      .getByRole("button", { name: /^Ways out/ })
      .click();
    const ways = page.locator(".ways-out");
    await ways.getByText("How much would cross at N1-1 Gatepost Flint").click();
    const words = await ways.innerText();
    expect(words.indexOf("The rule, of Maize across the lane")).toBeLessThan(
      words.indexOf("About 1 in"),
    );
    expect(words).toContain("Small gardens were seldom measured");
    expect(words).toMatch(/Crossed seed: now about 1 in [\d,]+ to 1 in [\d,]+; then /);
    await expect.poll(() => axeFaults(page)).toEqual([]);
    await ways.getByRole("button", { name: "Close" }).click();
  });

  test("the particulars tell the range, its bar, and what it means", async () => {
    await page.getByRole("button", { name: "Show plantings of Gatepost Flint" }).click();
    await fold().getByText("How much would cross").click();
    await fold()
      .getByRole("img", { name: /^Of all seeds, about 1 in/ })
      .waitFor();
    await expect.poll(() => fold().innerText()).toContain("Among 240 plants");
    await fold().getByLabel("Plants grown next year").fill("1000");
    await page.keyboard.press("Enter");
    await expect.poll(() => fold().innerText()).toContain("Among 1,000 plants");
    await fold().getByLabel("Crossed plants rogued, of 100").fill("100");
    await page.keyboard.press("Enter");
    await expect.poll(() => fold().innerText()).toContain("rogued before they flower, none");
    await expect.poll(() => axeFaults(page)).toEqual([]);
  });

  test("the sheet is shaded beside the rule's words, and cleared again", async () => {
    const line = page.locator(".clear-ground-line");
    const button = fold().getByRole("button", { name: "Shade the sheet" });
    const ink = () =>
      page.evaluate(() => {
        // How dark the sheet is on the whole, over all its layers.
        let sum = 0;
        for (const canvas of document.querySelectorAll<HTMLCanvasElement>(".sheet canvas")) {
          // Nothing to draw, no room.
          if (canvas.width === 0) continue;
          const data = canvas
            .getContext("2d")
            ?.getImageData(0, 0, canvas.width, canvas.height).data;
          data?.forEach((value, at) => {
            if (at % 4 === 3) sum += value;
          });
        }
        return sum;
      });
    const bare = await ink();
    await button.click();
    await expect.poll(() => line.innerText()).toContain("Shade: N1-1's seed crossed");
    await expect.poll(() => line.innerText()).toContain("536 m must be kept");
    await expect.poll(ink).toBeGreaterThan(1.05 * bare);
    expect(page.workers().length).toBeGreaterThan(0);
    await page.getByRole("button", { name: "Show plantings of Tarn Coral" }).click();
    await expect.poll(() => line.innerText()).toContain("none for N4-1");
    await page.getByRole("button", { name: "Show plantings of Gatepost Flint" }).click();
    await expect.poll(() => line.innerText()).toContain("N1-1's seed");
    await fold().getByText("How much would cross").click();
    await button.click();
    await expect.poll(() => line.innerText()).not.toContain("Shade");
  });
});
