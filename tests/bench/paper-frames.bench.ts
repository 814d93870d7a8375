/** Printing the plot map of 200 plantings in the whole window, in real Chromium: what its frames feel of it. */
import { afterAll, beforeAll, test } from "vitest";
import type { Browser, Page } from "playwright-core";
import { writePlan } from "../../src/core/model/read-plan.ts";
import { launchBrowser, siteUrl } from "../browser/browser.ts";
import { dropFile } from "../browser/drop-file.ts";
import { openSample } from "../browser/sheet.ts";
import { beddedPlan } from "./bedded-field.ts";
import { framesWhile, gapAt } from "./frames.ts";
import { reportRow } from "./report.ts";
import { taskTimes } from "./task-times.ts";

const row = { section: "Paper and files", size: "200 plantings in 50 beds, in Chromium" } as const;

let browser: Browser;

beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

test("the plot map is printed beside the window", async () => {
  const empty = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await empty.setContent("<!doctype html><title>Empty</title><body></body>");
  const bare = await framesWhile(empty, () => empty.waitForTimeout(2000));
  await empty.close();
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await openSample(page, siteUrl());
  await dropFile(page, "large.json", writePlan(beddedPlan(50, 4)));
  await page.getByText("Opened large.json.").first().waitFor();
  await page.getByRole("button", { name: "Paper", exact: true }).first().click();
  const dialog = page.getByRole("dialog");
  await dialog.locator("img").waitFor({ timeout: 200_000 });
  const boxes = dialog.getByRole("group", { name: "What is printed" }).getByRole("checkbox");
  for (const box of (await boxes.all()).slice(1)) await box.uncheck();
  const found = await framesWhile(page, () => print(page));
  const ratio = gapAt(found, 0.95) / gapAt(bare, 0.95);
  reportRow({
    ...row,
    what: "plot map printed: p95 frame gap against an empty page",
    value: ratio,
    unit: "x",
    budget: "at most 1.2 x",
    isMet: ratio <= 1.2,
  });
  const { longestMs, over50 } = await taskTimes(page, () => print(page));
  reportRow({
    ...row,
    what: `plot map printed: longest task of the window, processor time; ${over50} over 50 ms`,
    value: longestMs,
    unit: "ms",
    budget: "at most 50 ms",
    isMet: longestMs <= 50,
  });
}, 300_000);

async function print(page: Page): Promise<void> {
  const save = page.getByRole("dialog").getByRole("button", { name: /^Save as PDF/ });
  await Promise.all([page.waitForEvent("download", { timeout: 100_000 }), save.click()]);
}
