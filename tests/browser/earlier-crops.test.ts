/** Earlier crops in a real browser: entered by hand, taken over from a plan file, found by the checks, undone. */
import { fileURLToPath } from "node:url";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { axeFaults } from "./axe.ts";
import { launchBrowser, siteUrl } from "./browser.ts";
import { openSample } from "./sheet.ts";

const lastYear = fileURLToPath(new URL("../../sample-plots/garden-solved.json", import.meta.url));

describe("earlier crops in Chromium", () => {
  let browser: Browser;
  let page: Page;
  const rows = () => page.getByRole("region", { name: "Crops" }).locator("tbody tr");
  const open = async () => {
    await page.getByRole("button", { name: "Plan", exact: true }).click();
    await page.getByRole("button", { name: "Earlier crops", exact: true }).click();
    await page.getByRole("heading", { name: "Earlier crops", level: 2 }).waitFor();
  };
  const close = () => page.keyboard.press("Escape");

  beforeAll(async () => {
    browser = await launchBrowser();
    page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
    page.setDefaultTimeout(20_000);
    await openSample(page, siteUrl());
    await page
      .getByText(/3 conflicts/)
      .first()
      .waitFor();
  });
  afterAll(() => browser.close());

  test("a crop on two beds is entered by keyboard and fields, and makes a caution", async () => {
    await open();
    await page.getByText("None entered yet.").waitFor();
    await page.getByRole("button", { name: "Add an earlier crop" }).click();
    const form = page.getByRole("dialog", { name: "Add an earlier crop" });
    await form.getByRole("button", { name: "Add to the plan" }).click();
    await form.getByText("Pick the kind that grew there").waitFor();
    await form.getByRole("searchbox").fill("tomato");
    await form.getByRole("radio").first().check();
    await form.getByLabel("Year").fill("2026");
    await form.getByLabel("B01", { exact: true }).check();
    await form.getByLabel("B05", { exact: true }).check();
    await form.getByRole("button", { name: "Add to the plan" }).click();
    await expect.poll(() => rows().count()).toBe(2);
    await expect
      .poll(() => rows().first().innerText())
      .toMatch(/2026\s+tomato\s+–\s+not known\s+bed B0[15]/);
    await expect.poll(() => axeFaults(page)).toEqual([]);
    await close();
    await page
      .getByText(/Volunteers may come up among B01-1/)
      .first()
      .waitFor();
  });

  test("undo takes both away in one step, and the caution with them", async () => {
    await page.keyboard.press("Control+z");
    await expect
      .poll(() => page.locator(".finding", { hasText: /Volunteers may come up/ }).count())
      .toBe(0);
    await open();
    await page.getByText("None entered yet.").waitFor();
  });

  test("an earlier plan's chosen layout is taken over, once", async () => {
    await page.getByLabel("Plan file").setInputFiles(lastYear);
    await page.getByText("garden-solved.json: 10 earlier crops to take").waitFor();
    await page.getByRole("button", { name: "Add 10 earlier crops" }).click();
    await expect.poll(() => rows().count()).toBe(10);
    await page.getByLabel("Plan file").setInputFiles([]);
    await page.getByLabel("Plan file").setInputFiles(lastYear);
    await page.getByText("10 earlier crops of it stand here already.").waitFor();
    await expect
      .poll(() => page.getByRole("button", { name: "Nothing to add" }).isDisabled())
      .toBe(true);
    await page.getByRole("button", { name: "Cancel", exact: true }).click();
  });

  test("one is changed to a typed rectangle, and removed", async () => {
    await page
      .getByRole("button", { name: /^Change / })
      .first()
      .click();
    const form = page.getByRole("dialog", { name: "Change an earlier crop" });
    await form.getByLabel("Where").selectOption({ label: "a rectangle, typed" });
    await form.getByLabel("Middle, right (x)").fill("200");
    await form.getByLabel("Note", { exact: true }).fill("Beyond the lane");
    await form.getByRole("button", { name: "Apply", exact: true }).click();
    await expect
      .poll(() => rows().filter({ hasText: "Beyond the lane" }).innerText())
      .toMatch(/no bed; middle 200/);
    await rows()
      .filter({ hasText: "Beyond the lane" })
      .getByRole("button", { name: /^Delete/ })
      .click();
    await expect.poll(() => rows().count()).toBe(9);
  });
});
