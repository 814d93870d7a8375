/** What must be loaded before the sheet can be used, against the budget of 320 KiB of gzipped script. */
import { gzipSync } from "node:zlib";
import { expect, test } from "vitest";
import { launchBrowser, siteUrl } from "./browser.ts";
import { openSample } from "./sheet.ts";

const BUDGET_KIB = 320;

/** Fields of what is selected, and how seed on the shelf is reckoned. */
const LATER = /\/(SelectedParticulars|seed-reckoning|variety-index|germination|sowing)-[^/]*\.js$/;

test("script before the sheet is usable stays within its budget; heavy parts load on demand", async () => {
  const browser = await launchBrowser();
  const page = await browser.newPage();
  const scripts = new Map<string, Promise<Buffer>>();
  page.on("response", (response) => {
    if (response.request().resourceType() === "script") {
      scripts.set(new URL(response.url()).pathname, response.body());
    }
  });
  // What comes by itself while the sheet is looked at: here it never comes, and is not missed.
  await page.route(LATER, (route) => route.abort());
  await openSample(page, siteUrl());
  let bytes = 0;
  for (const body of scripts.values()) bytes += gzipSync(await body, { level: 9 }).length;
  expect(bytes / 1024).toBeGreaterThan(BUDGET_KIB / 2);
  expect(bytes / 1024).toBeLessThanOrEqual(BUDGET_KIB);
  const names = [...scripts.keys()].join(" ");
  for (const late of ["pdf-writer", "papaparse", "clear-ground"]) expect(names).not.toContain(late);
  await browser.close();
});
