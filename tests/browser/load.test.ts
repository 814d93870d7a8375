/** What must be loaded before the sheet can be used, against the budget of gzipped script. */
import { gzipSync } from "node:zlib";
import { expect, test } from "vitest";
import { isSample, launchBrowser, namedByPage, siteUrl } from "./browser.ts";
import { conflictCount, openSample } from "./sheet.ts";

const BUDGET_KIB = 238;
/** Share of the window that may move: less than one can see. */
const MOVED_MOST = 0.005;

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

test("nothing of the window moves once it is seen, and the strip and the ways of reading fill the room kept for them", async () => {
  const browser = await launchBrowser();
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await page.addInitScript(() => {
    const moved: number[] = [];
    Object.assign(window, { moved });
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries()) moved.push((entry as unknown as Moved).value);
    }).observe({ type: "layout-shift", buffered: true });
  });
  // Faces of type come when the network pleases; that they are asked for at once is read below.
  await page.route("**/*.woff2", (route) => route.abort());
  await openSample(page, siteUrl());
  await page.getByRole("slider", { name: "Day shown on the sheet" }).waitFor();
  await page.getByRole("button", { name: "As grown" }).waitFor();
  await page.getByText("1 accepted").waitFor();
  // Closed menus hold nothing that would follow every edit.
  expect(await page.locator(".menu-list").count()).toBeGreaterThan(2);
  expect(await page.locator(".menu-list *").count()).toBe(0);
  const moved = await page.evaluate(() => (window as unknown as { moved: number[] }).moved);
  expect(moved.reduce((sum, share) => sum + share, 0)).toBeLessThan(MOVED_MOST);
  await browser.close();
});

test("the page itself names the plan of a first visit and the four faces its first picture is set in", async () => {
  const html = await (await fetch(siteUrl())).text();
  const faces = html.matchAll(/<link rel="preload" as="font"[^>]* href="([^"]+)"/g);
  const sizes = await Promise.all(
    [...faces].map(
      async ([, path = ""]) =>
        (await (await fetch(new URL(path, siteUrl()))).arrayBuffer()).byteLength,
    ),
  );
  expect(sizes).toHaveLength(4);
  for (const bytes of sizes) expect(bytes).toBeGreaterThan(10_000);
  expect(html).toMatch(/<link rel="modulepreload"[^>]*first-sample/);
});

/** What a browser tells of a piece of the page that moved by itself. */
interface Moved {
  /** Share of the window that moved, times how far. */
  readonly value: number;
}
