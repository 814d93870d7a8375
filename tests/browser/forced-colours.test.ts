/**
 * The system's own colours and more contrast, on the painted sheet: a canvas does not follow forced
 * colours by itself (CSS Color Adjustment 1, forced colors mode), so the program must.
 */
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { axeFaults } from "./axe.ts";
import { launchBrowser, siteUrl } from "./browser.ts";
import { openSample, restingView } from "./sheet.ts";

describe("the sheet", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launchBrowser();
  });
  afterAll(() => browser.close());

  test.each(["light", "dark"] as const)(
    "is painted in the system's colours where they are forced, %s",
    async (colorScheme) => {
      const page = await browser.newPage({ colorScheme, forcedColors: "active" });
      await openSample(page, siteUrl());
      await restingView(page);
      const found = await page.evaluate(() => {
        const probe = document.createElement("span");
        document.body.append(probe);
        const named = (name: string) => {
          probe.style.color = name;
          return getComputedStyle(probe).color;
        };
        const [ground, ink] = [named("Canvas"), named("CanvasText")];
        const sheet = document.querySelector(".sheet");
        const background = sheet ? getComputedStyle(sheet).backgroundColor : "";
        let inked = 0;
        let other = 0;
        for (const canvas of document.querySelectorAll<HTMLCanvasElement>(".sheet canvas")) {
          // Nothing to draw, no room.
          if (canvas.width === 0) continue;
          const { width, height } = canvas;
          const dots = canvas.getContext("2d")?.getImageData(0, 0, width, height).data ?? [];
          for (let at = 0; at < dots.length; at += 4) {
            if ((dots[at + 3] ?? 0) < 255) continue;
            const [red = 0, green = 0, blue = 0] = [dots[at], dots[at + 1], dots[at + 2]];
            if (`rgb(${red}, ${green}, ${blue})` === ink) inked += 1;
            if (Math.max(red, green, blue) - Math.min(red, green, blue) > 40) other += 1;
          }
        }
        return { ground, ink, background, inked, other };
      });
      expect(found.background).toBe(found.ground);
      expect(found.ink).not.toBe(found.ground);
      expect(found.inked).toBeGreaterThan(1200);
      // No tint or warning colour of ours is left: nothing is selected.
      expect(found.other).toBe(0);
      await expect.poll(() => axeFaults(page)).toEqual([]);
      await page.close();
    },
  );

  test("with more contrast its ink is black on paper, white on slate", async () => {
    for (const [colorScheme, ink] of [
      ["light", "#000"],
      ["dark", "#fff"],
    ] as const) {
      const page = await browser.newPage({ colorScheme, contrast: "more" });
      await openSample(page, siteUrl());
      const read = await page.evaluate(() =>
        getComputedStyle(document.documentElement).getPropertyValue("--ink").trim(),
      );
      expect(read).toBe(ink);
      await expect.poll(() => axeFaults(page)).toEqual([]);
      await page.close();
    }
  });

  test("with less motion asked for nothing in the window moves by itself", async () => {
    const page = await browser.newPage({ reducedMotion: "reduce" });
    await openSample(page, siteUrl());
    const moving = await page.evaluate(() =>
      [...document.querySelectorAll("*")]
        .filter((element) => {
          const { animationName, transitionDuration } = getComputedStyle(element);
          return animationName !== "none" || /[1-9]/.test(transitionDuration);
        })
        .map((element) => element.className),
    );
    expect(moving).toEqual([]);
    await page.close();
  });
});
