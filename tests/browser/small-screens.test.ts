/** The window on small screens, lying on their side, and at 400 % of a desktop (WCAG 2.2, 1.4.10 Reflow). */
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { Browser, Page } from "playwright-core";
import { axeFaults } from "./axe.ts";
import { launchBrowser, siteUrl } from "./browser.ts";
import { openSample, restingView } from "./sheet.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

async function openAt(width: number, height: number): Promise<Page> {
  const page = await browser.newPage({ viewport: { width, height } });
  page.setDefaultTimeout(20_000);
  await openSample(page, siteUrl());
  return page;
}

const regions = ["Seed list", "Findings", "Particulars", "Bloom"] as const;

/** Whether a press on the middle of a region's button reaches the button. */
function isReached(page: Page, name: string): Promise<boolean> {
  return page
    .getByRole("navigation", { name: "Regions" })
    .getByRole("button", { name: new RegExp(`^${name}`) })
    .evaluate((button) => {
      const { left, top, width, height } = button.getBoundingClientRect();
      const hit = document.elementFromPoint(left + width / 2, top + height / 2);
      return hit !== null && button.contains(hit);
    });
}

describe.each([
  ["a phone", 390, 844],
  ["a phone on its side", 844, 390],
  ["a tablet", 820, 1180],
  ["a desktop of 1280 x 1024 at 400 %", 320, 256],
  ["a desktop of 1280 x 720 at 400 %", 320, 180],
] as const)("%s, %i x %i", (_, width, height) => {
  test("every region can be pulled up and put away, whichever is up", async () => {
    const page = await openAt(width, height);
    for (const name of regions) {
      expect(await isReached(page, name), name).toBe(true);
      await page
        .getByRole("navigation", { name: "Regions" })
        .getByRole("button", { name: new RegExp(`^${name}`) })
        .click();
      await page.getByRole("heading", { name, exact: true }).waitFor();
      expect(await isReached(page, name), `${name} up`).toBe(true);
    }
    await expect
      .poll(() => page.evaluate(() => document.documentElement.scrollWidth))
      .toBeLessThanOrEqual(width);
    await expect.poll(() => axeFaults(page)).toEqual([]);
    await page.close();
  });
});

test.each([
  [844, 390],
  [820, 1180],
])("at %i x %i the sheet has at least half the window", async (width, height) => {
  const page = await openAt(width, height);
  const box = await page.locator(".sheet[data-view]").boundingBox();
  expect(((box?.width ?? 0) * (box?.height ?? 0)) / (width * height)).toBeGreaterThan(0.5);
  await page.close();
});

test.each([
  [390, 844],
  [844, 390],
])(
  "at %i x %i menus lie over the sheet, which stays, and name every tool",
  async (width, height) => {
    const context = await browser.newContext({
      viewport: { width, height },
      hasTouch: true,
      isMobile: true,
    });
    const page = await context.newPage();
    page.setDefaultTimeout(20_000);
    await openSample(page, siteUrl());
    const view = await restingView(page);
    const more = page.locator(".plan-head-more");
    await page.getByRole("button", { name: "Menu", exact: true }).tap();
    await more.waitFor();
    expect(await restingView(page)).toEqual(view);
    await page.touchscreen.tap(width / 4, height - 90);
    await more.waitFor({ state: "hidden" });
    await page.getByRole("button", { name: "More", exact: true }).tap();
    const items = page.locator(".tool-more .menu-item");
    await items.first().waitFor();
    const heights = await items.evaluateAll((all) =>
      all.map((item) => item.getBoundingClientRect().height),
    );
    expect(heights.length).toBe(9);
    expect(Math.min(...heights)).toBeGreaterThanOrEqual(44);
    await items.filter({ hasText: "Measure" }).tap();
    await page.locator('[data-tool="measure"][aria-pressed="true"]').waitFor();
    // What is picked in a menu of the folded head is done, though the head folds at once.
    await page.getByRole("button", { name: "Menu", exact: true }).tap();
    await more.getByRole("button", { name: "Plan", exact: true }).tap();
    await more.getByRole("button", { name: "Keys", exact: true }).tap();
    await page.getByRole("dialog", { name: "Keys" }).waitFor();
    await more.waitFor({ state: "hidden" });
    await context.close();
  },
);

test("the line about what happened goes after some seconds, also where motion is not wanted", async () => {
  const page = await browser.newPage({
    viewport: { width: 390, height: 844 },
    reducedMotion: "reduce",
  });
  await openSample(page, siteUrl());
  await page.locator(".sheet[data-view]").focus();
  await page.keyboard.press("n");
  const line = page.locator(".status-line");
  await line.waitFor();
  await line.evaluate((element) => {
    for (const animation of element.getAnimations()) animation.finish();
    if (element.getAnimations().length === 0) throw new Error("Nothing ends it.");
  });
  await line.waitFor({ state: "hidden" });
  await page.close();
});

test("on a wide screen the line about what happened lies on the sheet, and on no row of the bloom strip", async () => {
  const page = await openAt(1280, 800);
  await page.locator(".sheet[data-view]").focus();
  await page.keyboard.press("n");
  await page.locator(".status-line").waitFor();
  const edges = () =>
    page.evaluate(() => {
      const box = (selector: string) => document.querySelector(selector)?.getBoundingClientRect();
      const [line, sheet] = [box(".status-line"), box(".sheet")];
      if (!line || !sheet) return null;
      return [line.left - sheet.left, sheet.right - line.right, sheet.bottom - line.bottom];
    });
  // Its scale bar to the left and its buttons to the right stay in sight.
  await expect
    .poll(async () => (await edges())?.every((px, at) => px > (at < 2 ? 100 : 0)))
    .toBe(true);
  await page.close();
});

test("over a list the line about what happened has a strip of its own, which goes with it", async () => {
  const page = await openAt(1440, 900);
  await page.locator(".sheet[data-view]").focus();
  await page.keyboard.press("n");
  await page.getByRole("button", { name: "Tables", exact: true }).click();
  const line = page.locator(".status-line");
  await line.waitFor();
  const list = page.locator(".tables");
  await list.waitFor();
  const feet = async () => {
    const [above, below] = [await list.boundingBox(), await line.boundingBox()];
    return [(above?.y ?? 0) + (above?.height ?? 0), below?.y ?? 0, below?.height ?? 0] as const;
  };
  const [foot, top, height] = await feet();
  expect(foot).toBeLessThanOrEqual(top);
  await line.evaluate((element) => {
    for (const animation of element.getAnimations()) animation.finish();
  });
  await expect.poll(async () => (await feet())[0]).toBe(foot + height);
  await page.close();
});

test("a menu taller than the window scrolls within it", async () => {
  const page = await openAt(1280, 600);
  await page.getByRole("button", { name: "Plan", exact: true }).click();
  const last = page.locator(".menu-list:not([hidden]) .menu-item").last();
  await last.scrollIntoViewIfNeeded();
  const box = await last.boundingBox();
  expect((box?.y ?? 9999) + (box?.height ?? 0)).toBeLessThanOrEqual(600);
  await expect.poll(() => page.evaluate(() => document.scrollingElement?.scrollTop)).toBe(0);
  await page.close();
});
