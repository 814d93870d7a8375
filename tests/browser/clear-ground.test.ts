/** Clear ground on the drawn sheet, and the ways out of a conflict, in a real browser. */
import { readFileSync } from "node:fs";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { axeFaults } from "./axe.ts";
import { launchBrowser, siteUrl } from "./browser.ts";
import { conflictCount, dragOnSheet, openSample, pagePlace } from "./sheet.ts";

interface SamplePlan {
  readonly layouts: readonly {
    readonly plantings: readonly {
      readonly code: string;
      readonly outline: { readonly x: number; readonly y: number };
    }[];
  }[];
}

const sample = JSON.parse(
  readFileSync(new URL("../../sample-plots/garden-to-solve.json", import.meta.url), "utf8"),
) as SamplePlan;

function middleOf(code: string): { readonly x: number; readonly y: number } {
  const found = sample.layouts[0]?.plantings.find((planting) => planting.code === code);
  if (!found) throw new Error(`no planting ${code} in the sample`);
  return found.outline;
}

describe("clear ground in Chromium", () => {
  let browser: Browser;
  let page: Page;
  const line = () => page.locator(".clear-ground-line").innerText();

  beforeAll(async () => {
    browser = await launchBrowser();
    page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
    await openSample(page, siteUrl());
    await page.getByRole("button", { name: /3 conflicts$/ }).waitFor();
  });
  afterAll(() => browser.close());

  test("is told while a planting is dragged, and goes when it is let go", async () => {
    const from = middleOf("B02-1");
    await dragOnSheet(page, from, { x: from.x + 1, y: from.y }, async () => {
      await expect.poll(line).toContain("can lie on the dotted ground without a conflict");
      await page.keyboard.press("Escape");
    });
    await expect.poll(line).toBe("");
  });

  test("is told without dragging when asked for", async () => {
    const at = await pagePlace(page, middleOf("B02-1"));
    await page.mouse.click(at.x, at.y);
    await page.getByRole("button", { name: "Clear ground" }).click();
    await expect.poll(line).toBe("B02-1 can lie on the dotted ground without a conflict.");
  });

  test("says plainly when there is none, and what forbids most of it", async () => {
    await page.getByLabel("Own distance").fill("400 m");
    await page.keyboard.press("Enter");
    await expect
      .poll(line)
      .toMatch(
        /^No clear ground for B02-1 .* forbids most of it: 400 m must be kept between them\.$/,
      );
    await page.keyboard.press("Control+z");
    await expect.poll(line).toContain("dotted ground");
    await page.getByRole("button", { name: "Clear ground" }).click();
    await expect.poll(line).toBe("");
  });

  test("ways out speak of the tangle, say what else they change, and can be accepted instead", async () => {
    const before = await conflictCount(page);
    await page
      .getByRole("button", { name: /^Ways out: B02-1/ })
      .first()
      .click();
    const ways = page.getByRole("region", { name: "Ways out" });
    await expect
      .poll(() => ways.innerText())
      .toContain("3 plantings are tangled in conflicts here");
    await expect.poll(() => ways.innerText()).toContain("Also clears:");
    await expect.poll(() => axeFaults(page)).toEqual([]);
    await ways.getByLabel("Or accept it, because").fill("only for the kitchen");
    await ways.getByRole("button", { name: "Accept with this reason" }).click();
    await expect.poll(() => conflictCount(page)).toBe(before - 1);
  });
});
