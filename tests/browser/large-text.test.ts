/**
 * Text twice as large, and 320 px of width: nothing is cut off, nothing lies on another thing, and
 * only maps, tables and the row of tools scroll sideways (WCAG 2.2, 1.4.4 and 1.4.10).
 */
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { launchBrowser, siteUrl } from "./browser.ts";
import { openSample, twoFrames } from "./sheet.ts";

/**
 * Buttons, fields and headings in sight whose words are cut off, that lie over another one of
 * them, or that stick out of the window where nothing scrolls.
 */
async function faults(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const name = (element: Element) =>
      `${element.tagName.toLowerCase()} "${(element.getAttribute("aria-label") ?? element.textContent ?? "").trim().slice(0, 40)}"`;
    const root = document.querySelector("dialog[open]") ?? document.body;
    const shown = [...root.querySelectorAll("button, a, select, input, h2, h3, legend")].filter(
      (element) =>
        element.checkVisibility({ visibilityProperty: true }) &&
        element.closest(".visually-hidden, .skip-links, [inert]") === null &&
        !element.matches(".visually-hidden, [type=checkbox], [type=radio], [type=range]"),
    );
    const isClipped = (element: Element) => {
      const style = getComputedStyle(element);
      const isScroller = /auto|scroll/.test(`${style.overflowX} ${style.overflowY}`);
      // A name made short on purpose has its whole text as its title.
      const isShort = style.textOverflow === "ellipsis" && element.hasAttribute("title");
      return !isScroller && !isShort && style.overflow !== "visible";
    };
    const cut = shown
      .filter((element) => !element.matches("input, select"))
      .filter(
        (element) =>
          isClipped(element) &&
          (element.scrollWidth > element.clientWidth + 1 ||
            element.scrollHeight > element.clientHeight + 1),
      )
      .map((element) => `cut off: ${name(element)}`);
    const scrolls = (element: Element) => {
      for (let at: Element | null = element; at; at = at.parentElement) {
        if (at !== document.documentElement && at.scrollWidth > at.clientWidth + 1) {
          if (/auto|scroll/.test(getComputedStyle(at).overflowX)) return true;
        }
      }
      return false;
    };
    const outside = shown
      .filter((element) => {
        const { left, right, width } = element.getBoundingClientRect();
        return width > 0 && (left < -1 || right > innerWidth + 1) && !scrolls(element);
      })
      .map((element) => `outside: ${name(element)}`);
    const isScrolledAway = (element: Element, x: number, y: number) => {
      for (let at = element.parentElement; at; at = at.parentElement) {
        const box = at.getBoundingClientRect();
        const isVisible = getComputedStyle(at).overflow === "visible";
        const isInside = x >= box.left && x < box.right && y >= box.top && y < box.bottom;
        if (!isVisible && !isInside) return true;
      }
      return false;
    };
    // Whose middle is covered by something that is neither in it nor around it.
    const covered = shown.flatMap((element) => {
      const { left, top, width, height } = element.getBoundingClientRect();
      const [x, y] = [left + width / 2, top + height / 2];
      if (x < 0 || y < 0 || x >= innerWidth || y >= innerHeight || width === 0) return [];
      if (isScrolledAway(element, x, y)) return [];
      const found = document.elementFromPoint(x, y);
      if (!found || found.contains(element) || element.contains(found)) return [];
      const other = found.closest("button, a, select, input, h2, h3, legend");
      if (!other || !shown.includes(other) || found.closest("label")?.contains(element)) return [];
      return [`covered: ${name(element)} by ${name(other)}`];
    });
    return [...new Set([...cut, ...outside, ...covered])];
  });
}

const states: Readonly<Record<string, (page: Page) => Promise<void>>> = {
  "the sheet at rest": async () => {},
  "the tables": (page) => page.getByRole("button", { name: "Tables", exact: true }).click(),
  "the dialog that prints": async (page) => {
    await unfold(page);
    await page.getByRole("button", { name: "Paper", exact: true }).first().click();
  },
  "the settings": async (page) => {
    await unfold(page);
    await page.getByRole("button", { name: /^season 2027/ }).click();
  },
  "the list of keys": (page) => fromPlanMenu(page, "Keys"),
  "outlines from a file": (page) => fromPlanMenu(page, "Outlines from GPS or a map program"),
  "the picture's panel": (page) => fromPlanMenu(page, "Picture under the drawing"),
};

/** On a narrow window the header folds away. */
async function unfold(page: Page): Promise<void> {
  const fold = page.getByRole("button", { name: "Menu", exact: true });
  if (await fold.isVisible()) await fold.click();
}

async function fromPlanMenu(page: Page, item: string): Promise<void> {
  await unfold(page);
  await page.getByRole("button", { name: "Plan", exact: true }).click();
  await page.getByText(item, { exact: true }).click();
}

describe.each([
  { look: "text at 200 %", width: 1280, percent: 200 },
  { look: "320 px of width", width: 320, percent: 100 },
])("at $look nothing is cut off or covered in", ({ width, percent }) => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launchBrowser();
  });
  afterAll(() => browser.close());

  test.each(Object.keys(states))("%s", async (name) => {
    const page = await browser.newPage({ viewport: { width, height: 900 } });
    page.setDefaultTimeout(20_000);
    await openSample(page, siteUrl());
    await page.evaluate((size) => {
      document.documentElement.style.fontSize = `${size}%`;
    }, percent);
    await states[name]?.(page);
    await twoFrames(page);
    const isWider = await page.evaluate(
      () => document.documentElement.scrollWidth > innerWidth + 1,
    );
    expect(isWider).toBe(false);
    await expect.poll(() => faults(page)).toEqual([]);
    await page.close();
  });
});
