/** What must be loaded before the sheet can be used, against the budget of 320 KiB of gzipped script. */
import { gzipSync } from "node:zlib";
import { expect, test } from "vitest";
import { launchBrowser, siteUrl } from "./browser.ts";
import { openSample } from "./sheet.ts";

const BUDGET_KIB = 320;

test("script before the sheet is usable stays within its budget; heavy parts load on demand", async () => {
  const browser = await launchBrowser();
  const page = await browser.newPage();
  const scripts = new Map<string, Promise<Buffer>>();
  page.on("response", (response) => {
    if (response.request().resourceType() === "script") {
      scripts.set(new URL(response.url()).pathname, response.body());
    }
  });
  await page.addInitScript(() => {
    const watch = new MutationObserver(() => {
      if (!document.querySelector(".finding")) return;
      performance.mark("first finding");
      watch.disconnect();
    });
    watch.observe(document, { childList: true, subtree: true });
  });
  await openSample(page, siteUrl());
  // Some parts come by themselves once the sheet is looked at; those are not waited for.
  const asked = await page.evaluate(() => {
    const [shown] = performance.getEntriesByName("first finding");
    const files = performance.getEntriesByType("resource");
    return files
      .filter(({ startTime }) => startTime <= (shown?.startTime ?? Infinity))
      .map(({ name }) => new URL(name).pathname);
  });
  const before = asked.filter((path) => scripts.has(path));
  expect(before.some((path) => path.includes("BloomStrip"))).toBe(true);
  let bytes = 0;
  for (const path of before)
    bytes += gzipSync((await scripts.get(path)) ?? "", { level: 9 }).length;
  expect(bytes / 1024).toBeGreaterThan(BUDGET_KIB / 2);
  expect(bytes / 1024).toBeLessThanOrEqual(BUDGET_KIB);
  const names = [...scripts.keys()].join(" ");
  for (const late of ["pdf-writer", "papaparse", "clear-ground"]) expect(names).not.toContain(late);
  await browser.close();
});
