/** Paper is made beside the window: frames stay free, a run can be stopped, other scripts are set. */
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { writePlan } from "../../src/core/model/read-plan.ts";
import { beddedPlan } from "../bench/bedded-field.ts";
import { otherFace } from "../support/other-face.ts";
import { textOf } from "../support/printed.ts";
import { launchBrowser, siteUrl } from "./browser.ts";
import { dropFile } from "./drop-file.ts";
import { openSample } from "./sheet.ts";

interface Watched {
  tasks?: number[];
}

/** 200 plantings, so that its paper is work. */
function largePlan(): string {
  return writePlan(beddedPlan(50, 4));
}

describe("paper in a thread of its own", () => {
  let browser: Browser;
  let page: Page;

  beforeAll(async () => {
    browser = await launchBrowser();
    page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
    await openSample(page, siteUrl());
    await dropFile(page, "large.json", largePlan());
    await page.getByText("Opened large.json.").last().waitFor();
  });
  afterAll(() => browser.close());

  const dialog = () => page.getByRole("dialog");
  const save = () => dialog().getByRole("button", { name: /^Save as PDF/ });

  test("while over 200 plantings are printed the window has no long task", async () => {
    await page.getByRole("button", { name: "Paper", exact: true }).first().click();
    await dialog().locator("img").waitFor({ timeout: 200_000 });
    const boxes = dialog().getByRole("group", { name: "What is printed" }).getByRole("checkbox");
    for (const box of (await boxes.all()).slice(1)) await box.uncheck();
    await page.evaluate(() => {
      const watched = globalThis as Watched;
      watched.tasks = [];
      new PerformanceObserver((list) => {
        for (const { duration } of list.getEntries()) watched.tasks?.push(duration);
      }).observe({ type: "longtask" });
    });
    // In the window's own thread the map alone is one task of half a second.
    const began = await page.evaluate(() => performance.now());
    const longest = { timeout: 100_000 };
    await Promise.all([page.waitForEvent("download", longest), save().click()]);
    await dialog()
      .getByText(/^Made /)
      .waitFor(longest);
    const took = (await page.evaluate(() => performance.now())) - began;
    const tasks = await page.evaluate(() => (globalThis as Watched).tasks ?? []);
    const long = tasks.filter((duration) => duration > 200);
    expect(long.length, `${long.length} long tasks in ${Math.round(took)} ms`).toBe(0);
  }, 320_000);

  test("a run is stopped at once, and leaves nothing behind", async () => {
    let downloads = 0;
    const count = () => (downloads += 1);
    page.on("download", count);
    await save().click();
    await dialog().getByRole("button", { name: "Cancel" }).click();
    await expect.poll(() => dialog().getByRole("button", { name: "Cancel" }).count()).toBe(0);
    await expect
      .poll(() => page.workers().filter((each) => each.url().includes("paper-worker")).length)
      .toBe(0);
    expect(downloads).toBe(0);
    page.off("download", count);
    await expect.poll(() => save().isEnabled()).toBe(true);
    await dialog().getByRole("button", { name: "Close" }).click();
  });

  test("closing the dialog ends the laying out of pages", async () => {
    await page.getByRole("button", { name: "Paper", exact: true }).first().click();
    await dialog().getByText("Laying out the pages ...").waitFor();
    await dialog().getByRole("button", { name: "Close" }).click();
    await expect
      .poll(() => page.workers().filter((each) => each.url().includes("paper-worker")).length)
      .toBe(0);
  });

  test("a face is tried and kept on the device; a file that is none is refused by name", async () => {
    await page.getByRole("button", { name: "Paper", exact: true }).first().click();
    await expect.poll(() => dialog().innerText()).not.toContain("no letters for");
    await dialog().getByText("Letters the program has not").click();
    await dialog()
      .locator("input[type=file]")
      .setInputFiles({
        name: "letter.ttf",
        mimeType: "font/ttf",
        buffer: Buffer.from("no face at all, but long enough to be looked at"),
      });
    await dialog()
      .getByText(/^letter\.ttf: got some other file/)
      .waitFor();
    await dialog()
      .locator("input[type=file]")
      .setInputFiles({
        name: "packed.woff2",
        mimeType: "font/woff2",
        buffer: Buffer.from("wOF2 and then some more bytes"),
      });
    await dialog()
      .getByText(/packed for the web \(WOFF2\)/)
      .waitFor();
    await dialog()
      .locator("input[type=file]")
      .setInputFiles({
        name: "own.ttf",
        mimeType: "font/ttf",
        buffer: Buffer.from(otherFace()),
      });
    await dialog().getByText("In use: own.ttf.").waitFor();
    await dialog().getByRole("button", { name: "Close" }).click();
    await page.getByRole("button", { name: "Paper", exact: true }).first().click();
    await dialog().getByText("Letters the program has not").click();
    await dialog().getByText("In use: own.ttf.").waitFor();
    await dialog().getByRole("button", { name: "Delete it" }).click();
    await expect.poll(() => dialog().getByText("In use: own.ttf.").count()).toBe(0);
    await dialog().getByRole("button", { name: "Close" }).click();
  });

  test("Ctrl + P says where paper is made, and prints no buttons", async () => {
    const bytes = await page.pdf({ format: "A4" });
    const words = textOf(bytes);
    expect(words).toContain("Paper is made by the button Paper");
    expect(words).not.toContain("Seed list");
    expect(words).not.toContain("Undo");
  });
});
