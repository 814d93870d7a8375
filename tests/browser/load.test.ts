/** What must be loaded before the sheet can be used, against the budget of 250 KiB of gzipped script. */
import { gzipSync } from "node:zlib";
import { expect, test } from "vitest";
import { launchBrowser, namedByPage, siteUrl } from "./browser.ts";
import { conflictCount, openSample } from "./sheet.ts";

const BUDGET_KIB = 250;

const isSample = (pathname: string) => pathname.includes("first-sample");

test("the sheet works with the scripts of the first load alone, and they stay within their budget", async () => {
  const named = await namedByPage(siteUrl());
  const browser = await launchBrowser();
  const page = await browser.newPage({ serviceWorkers: "block" });
  const scripts = new Map<string, Promise<Buffer>>();
  page.on("response", (response) => {
    const { pathname } = new URL(response.url());
    // The sample is what is opened, not what opens it.
    if (response.request().resourceType() === "script" && !isSample(pathname)) {
      scripts.set(pathname, response.body());
    }
  });
  // What comes later never comes here, and is not missed.
  await page.route("**/*.js", (route) => {
    const { pathname } = new URL(route.request().url());
    return named.has(pathname) || isSample(pathname) ? route.continue() : route.abort();
  });
  await openSample(page, siteUrl());
  await expect.poll(() => conflictCount(page)).toBe(3);
  await expect.poll(() => page.locator(".finding").count()).toBe(5);
  let bytes = 0;
  for (const body of scripts.values()) bytes += gzipSync(await body, { level: 9 }).length;
  expect(scripts.size).toBeGreaterThanOrEqual(2);
  expect(bytes / 1024).toBeGreaterThan(BUDGET_KIB / 2);
  expect(bytes / 1024).toBeLessThanOrEqual(BUDGET_KIB);
  const names = [...scripts.keys()].join(" ");
  for (const late of ["pdf-writer", "papaparse", "clear-ground"]) expect(names).not.toContain(late);
  await browser.close();
});
