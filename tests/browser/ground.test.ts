/** One bed twice, plants under glass, marks and years of the ground, in a real browser. */
import { readFileSync } from "node:fs";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { axeFaults } from "./axe.ts";
import { launchBrowser, siteUrl } from "./browser.ts";
import { dropFile } from "./drop-file.ts";
import { openSample, pagePlace } from "./sheet.ts";

const walled = readFileSync(
  new URL("../../sample-plots/walled-garden.json", import.meta.url),
  "utf8",
);

describe("ground in Chromium", () => {
  let browser: Browser;
  let page: Page;
  const particulars = () => page.locator('[data-region="particulars"]');
  const finding = (words: RegExp) => page.locator(".finding", { hasText: words });
  /** Clicks the middle of D3, the bed used twice, until that is taken. */
  const clickD3 = async (name: string) => {
    const { x, y } = await pagePlace(page, { x: 23.6, y: 4.4 });
    await page.mouse.click(x, y);
    await particulars().getByRole("heading", { name, exact: true }).waitFor();
    // Two clicks that follow each other too fast are a double click.
    await page.waitForTimeout(600);
  };

  beforeAll(async () => {
    browser = await launchBrowser();
    page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
    page.setDefaultTimeout(20_000);
    await openSample(page, siteUrl());
    await dropFile(page, "walled-garden.json", walled);
    await page.getByRole("heading", { name: "Fallow End, the walled garden" }).waitFor();
    await page
      .getByText(/Fusarium wilt may wait/)
      .first()
      .waitFor();
  });
  afterAll(() => browser.close());

  test("two plantings of one bed are both taken, one click after the other, then the bed", async () => {
    await clickD3("Planting D3-2");
    await clickD3("Planting D3-1");
    await clickD3("Bed D3");
  });

  test("the bed lists its years with what went to seed, and the disease seen there", async () => {
    const years = page.getByRole("region", { name: "Years of the bed" });
    await years.waitFor();
    const rows = await years.locator("tbody tr").allInnerTexts();
    expect(rows.map((row) => row.split("\t")[0])).toEqual(["2027", "2027", "2026", "2024"]);
    expect(rows[2]).toContain("Tarn Coral");
    expect(rows[2]).toContain("no, written down");
    await particulars()
      .getByText(/White rot, seen on/)
      .waitFor();
  });

  test("a year picked on the strip shows the ground, and comes back to the season", async () => {
    await page.getByRole("button", { name: "Years", exact: true }).click();
    const strip = page.getByRole("region", { name: "Years of the ground" });
    await strip.getByRole("button", { name: /^2025/ }).click();
    await page.getByText("The ground in 2025.").waitFor();
    await expect.poll(() => axeFaults(page)).toEqual([]);
    // What is out of sight is not taken: the bed under it is.
    await clickD3("Bed D3");
    await page.getByRole("button", { name: "Back to this season" }).click();
    await expect.poll(() => page.getByText("The ground in 2025.").count()).toBe(0);
    await strip.getByRole("button", { name: "Hide", exact: true }).click();
  });

  test("an end is typed, refused before the start, and a seed planting is told of it", async () => {
    const { x, y } = await pagePlace(page, { x: 7, y: 13.6 });
    await page.mouse.click(x, y);
    await particulars().getByRole("heading", { name: "Planting B3-1" }).waitFor();
    const end = particulars().getByLabel("Cleared on");
    await end.fill("1 May");
    await end.press("Enter");
    await particulars().getByText("It starts on 20 May: type a later day").waitFor();
    await end.fill("20 July");
    await end.press("Enter");
    await finding(/B3-1 Kettle Dun is cleared before its seed is ripe/).waitFor();
    await page.keyboard.press("Control+z");
    await expect.poll(() => finding(/is cleared before its seed/).count()).toBe(0);
  });

  test("days under glass are offered with who says so, and the calendar holds them", async () => {
    const { x, y } = await pagePlace(page, { x: 19, y: 4.4 });
    await page.mouse.click(x, y);
    await particulars().getByRole("heading", { name: "Planting D1-1" }).waitFor();
    await particulars()
      .getByText(/the middle of 5 to 7 weeks before it is set out/)
      .waitFor();
    await particulars().getByRole("button", { name: "Sow under glass on 16 Apr" }).click();
    await expect
      .poll(() => particulars().getByLabel("Sown under glass").inputValue())
      .toBe("2027-04-16");
    await page.getByRole("button", { name: "Calendar", exact: true }).click();
    await page
      .getByText(/Sow D1-1 Old Ferry \(tomato\) under glass, to set out on 28 May/)
      .waitFor();
    await page.getByText(/Clear D3-1 Hollin Broad/).waitFor();
    await page.keyboard.press("Escape");
  });

  test("a disease is marked on a bed, told where it harms, and taken away again", async () => {
    await page.getByRole("button", { name: "Plan", exact: true }).click();
    await page.getByRole("button", { name: "Earlier crops", exact: true }).click();
    await page.getByRole("button", { name: "Mark a disease" }).click();
    const form = page.getByRole("dialog", { name: "Mark a disease on the ground" });
    await form.getByRole("button", { name: "Add the mark" }).click();
    await form.getByText("Type the day it was seen, or told by a test").waitFor();
    await form.getByLabel("Disease").selectOption("clubroot");
    await form.getByLabel("Seen on").fill("2026-08-02");
    await form.getByLabel("A1", { exact: true }).check();
    await expect.poll(() => axeFaults(page)).toEqual([]);
    await form.getByRole("button", { name: "Add the mark" }).click();
    await page.getByText(/Clubroot, seen on 2 Aug 2026; bed A1/).waitFor();
    await page.keyboard.press("Escape");
    await finding(/Clubroot is marked on the ground of A1-1/).waitFor();
    await page.keyboard.press("Control+z");
    await expect.poll(() => finding(/Clubroot is marked/).count()).toBe(0);
  });
});
