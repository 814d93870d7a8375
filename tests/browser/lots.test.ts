/** The seed shelf in a real browser: lists by keyboard, a lot's particulars, dialogs, CSV. */
import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, Locator, Page } from "playwright-core";
import { afterAll, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { axeFaults } from "./axe.ts";
import { launchBrowser, siteUrl } from "./browser.ts";
import { openSample } from "./sheet.ts";

describe("the seed shelf in Chromium", () => {
  let browser: Browser;
  let page: Page;

  beforeAll(async () => {
    browser = await launchBrowser();
  });
  afterAll(() => browser.close());

  beforeEach(async () => {
    await page?.context().close();
    const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
    page = await context.newPage();
    page.setDefaultTimeout(20_000);
    await openSample(page, siteUrl());
    await page.getByRole("button", { name: "Plan", exact: true }).click();
    await page.getByRole("button", { name: /^Two-acre/ }).click();
    await page.locator(".seed-row").filter({ hasText: "Gatepost Flint" }).waitFor();
    await page.getByRole("button", { name: "Lots", exact: true }).click();
    await lines().first().waitFor();
  });

  const lines = (): Locator => shelf().getByRole("option");
  const shelf = (): Locator => page.getByRole("listbox", { name: "Lots on the shelf" });
  const particulars = (): Locator => page.getByRole("region", { name: "Particulars" });
  const dialog = (): Locator => page.getByRole("dialog");
  const line = (text: string): Locator => lines().filter({ hasText: text });

  test("a lot is found, picked and read by the keyboard alone", async () => {
    await page.getByRole("searchbox", { name: /^Find lots/ }).fill("old ferry");
    await expect.poll(() => lines().count()).toBe(1);
    await page.keyboard.press("Enter");
    await page.keyboard.press("Space");
    await particulars().getByText("OF-24").first().waitFor();
    await expect
      .poll(() => particulars().innerText())
      .toContain("75 %. The standard is that of 7 CFR 201.31.");
    await expect.poll(() => line("OF-24").innerText()).toContain("under standard");
    await expect.poll(() => axeFaults(page)).toEqual([]);
  });

  test("several are picked with Shift and the arrows and moved in one step", async () => {
    await shelf().focus();
    await page.keyboard.press("Home");
    await page.keyboard.press("Shift+ArrowDown");
    await page.keyboard.press("Shift+ArrowDown");
    await particulars().getByRole("heading", { name: "3 lots" }).waitFor();
    await particulars().getByRole("button", { name: "Move to a place" }).click();
    await dialog().getByLabel("Into").selectOption({ label: "Freezer box, sealed" });
    await dialog().getByLabel("Since").fill("2027-02-01");
    await dialog().getByRole("button", { name: "Move", exact: true }).click();
    const inFreezer = async () =>
      (await lines().allInnerTexts()).slice(0, 3).filter((text) => text.includes("Freezer box"));
    await expect.poll(async () => (await inFreezer()).length).toBe(3);
    await page.getByRole("button", { name: /^Undo/ }).click();
    await expect.poll(async () => (await inFreezer()).length).toBe(0);
  });

  test("ten seeds are seen to say little, and a test that cannot be is refused by its field", async () => {
    await line("PH-26").click();
    await particulars().getByRole("button", { name: "Enter a test" }).click();
    await dialog().getByLabel("Seeds sown").fill("10");
    await dialog().getByLabel("Sprouted", { exact: true }).fill("11");
    await dialog().getByRole("button", { name: "Add the test" }).click();
    await dialog().getByText("Sprouted: got 11, expected at most the 10 seeds sown").waitFor();
    await dialog().getByLabel("Sprouted", { exact: true }).fill("9");
    await dialog().getByLabel("Last count").focus();
    // Clopper and Pearson: 9 of 10 is 55.5 to 99.75 %.
    await dialog().getByText("10 seeds say little").waitFor();
    await expect.poll(() => dialog().innerText()).toContain("55 to 100 %");
    await expect.poll(() => axeFaults(page)).toEqual([]);
    await dialog().getByRole("button", { name: "Add the test" }).click();
    await particulars().getByText("so 55 to 100 %").waitFor();
    await expect.poll(() => particulars().innerText()).toContain("Treated seed is poison");
  });

  test("a new lot gets its code by the pattern, seen before it is kept; a used one is refused", async () => {
    await page.getByRole("button", { name: "Add a lot" }).click();
    await dialog().getByLabel("Variety").selectOption({ label: "Anvil Blue" });
    await dialog().getByLabel("Harvest year").fill("2026");
    await dialog().getByLabel("Amount").fill("12");
    await dialog().getByLabel("Harvest year").focus();
    await dialog().getByText("which is it?").waitFor();
    await dialog().getByLabel("Amount").fill("12 g");
    await dialog().getByLabel("Harvest year").focus();
    const code = dialog().getByLabel("Code", { exact: true });
    await expect.poll(() => code.inputValue()).toMatch(/^AB-26-\d\d$/);
    await code.fill("ab-26");
    await dialog().getByRole("button", { name: "Add the lot" }).click();
    await dialog().getByText("a code no other lot has (AB-26 is taken)").waitFor();
    await code.fill("AB-26-77");
    await dialog().getByRole("button", { name: "Add the lot" }).click();
    await particulars()
      .getByRole("heading", { name: /AB-26-77/ })
      .waitFor();
    await particulars().getByRole("button", { name: "Split" }).click();
    await dialog().getByLabel("Split off").fill("20 g");
    await dialog().getByRole("button", { name: "Split it" }).click();
    await dialog().getByText("holds only 12 g").waitFor();
    await dialog().getByLabel("Split off").fill("2 g");
    await dialog().getByRole("button", { name: "Split it" }).click();
    await line("AB-26-77-a").waitFor();
    await expect.poll(() => line("AB-26-77-a").innerText()).toContain("2 g");
  });

  test("what to renew goes into the seed list at one press, with its reason", async () => {
    await page.getByRole("button", { name: "To renew", exact: true }).click();
    const list = page.getByRole("list", { name: "To renew this season" });
    const first = list.getByRole("listitem").first();
    await expect.poll(() => first.innerText()).toContain("Old Ferry");
    // One stop of the Tab key; arrows go on.
    await expect.poll(() => list.locator('[tabindex="0"]').count()).toBe(1);
    await list.locator('[tabindex="0"]').focus();
    await page.keyboard.press("ArrowDown");
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.getAttribute("aria-label")))
      .toMatch(/^Grow out \d+ plants.*: (?!Old Ferry)/);
    await page.keyboard.press("ArrowUp");
    await page.keyboard.press("Enter");
    await first.getByText("In this season’s seed list").waitFor();
    const listed = page.locator(".seed-row").filter({ hasText: "Old Ferry" });
    await expect.poll(() => listed.innerText()).toContain("OF-24 lies wholly under 75 %");
    await expect.poll(() => axeFaults(page)).toEqual([]);
  });

  test("a reserve is typed with its unit, and what lies under it is to be renewed", async () => {
    await page.getByRole("button", { name: "To renew", exact: true }).click();
    const list = page.getByRole("list", { name: "To renew this season" });
    await expect.poll(() => list.innerText()).not.toContain("Anvil Blue");
    await page.getByRole("button", { name: "Edit Anvil Blue" }).click();
    await dialog().getByLabel("Kept in reserve").fill("500");
    await dialog().getByLabel("Seed wanted").fill("300 g");
    await dialog().getByText("which is it?").waitFor();
    await dialog().getByLabel("Kept in reserve").fill("500 g");
    await dialog().getByRole("button", { name: "Apply", exact: true }).click();
    const due = list.getByRole("listitem").filter({ hasText: "Anvil Blue" });
    await due.getByText("Less than kept in reserve").waitFor();
    await expect.poll(() => due.innerText()).toContain("are to be kept");
  });

  test("lots are chosen for a planting, and it is said when one is of another variety", async () => {
    await page.getByRole("button", { name: "To sow" }).click();
    const row = page
      .getByRole("list", { name: "To sow" })
      .getByRole("listitem")
      .filter({ hasText: "U4-2" });
    await expect.poll(() => row.innerText()).toContain("is a lot of another variety");
    await expect.poll(() => axeFaults(page)).toEqual([]);
    await row.getByRole("button", { name: "Choose lots for U4-2" }).click();
    await dialog().getByRole("checkbox", { name: /FC-25/ }).uncheck();
    await dialog().getByRole("checkbox", { name: /SW-25/ }).check();
    await dialog()
      .getByText(/^120 plants: SW-25: \d+ seeds/)
      .waitFor();
    await expect.poll(() => axeFaults(page)).toEqual([]);
    await dialog().getByRole("button", { name: "Sow from these" }).click();
    await expect.poll(() => row.innerText()).not.toContain("another variety");
    await row.getByRole("button", { name: "Show on the sheet: U4-2" }).click();
    await particulars()
      .getByText(/^120 plants: SW-25/)
      .waitFor();
  });

  test("storage places are made with their air, and half of one is refused", async () => {
    await page.getByRole("button", { name: "Storage places" }).click();
    await dialog().getByRole("button", { name: "Add a place" }).click();
    await dialog().getByLabel("Name").fill("Cellar tin");
    await dialog().getByLabel("Temperature, C").fill("10");
    await dialog().getByRole("button", { name: "Add the place" }).click();
    await dialog().getByText("Type the humidity of the air").waitFor();
    await dialog().getByLabel("Humidity of the air, %").fill("140");
    await dialog().getByRole("button", { name: "Add the place" }).click();
    await dialog()
      .getByText(/^Humidity: /)
      .waitFor();
    await dialog().getByLabel("Humidity of the air, %").fill("40");
    await dialog().getByRole("button", { name: "Add the place" }).click();
    // 10 C is 50 F: with 40 % that is 90.
    await dialog().getByText("At worst 90 by the hundred rule").waitFor();
    await expect.poll(() => axeFaults(page)).toEqual([]);
  });

  test("the shelf goes out as CSV and comes back, each refused row told", async () => {
    await page.getByRole("button", { name: "CSV", exact: true }).click();
    const started = page.waitForEvent("download");
    await dialog().getByRole("button", { name: "Save the list" }).click();
    const saved = join(mkdtempSync(join(tmpdir(), "shelf-")), "lots.csv");
    await (await started).saveAs(saved);
    const head = readFileSync(saved, "utf8").split("\r\n")[0] ?? "";
    expect(head).toContain("code,variety,kind");
    writeFileSync(
      saved,
      "code,variety,amount,unit,test date,test sown,test sprouted\r\n" +
        "NEW-1,Anvil Blue,3,g,,,\r\nNEW-2,Nobody,3,g,,,\r\nNEW-3,Anvil Blue,-3,g,,,\r\n" +
        "NEW-4,Anvil Blue,3,g,2027-01-01,10,12\r\n",
    );
    await dialog().getByLabel("CSV file").setInputFiles(saved);
    await dialog().getByText("1 new; 3 rows cannot be used.").waitFor();
    await expect.poll(() => axeFaults(page)).toEqual([]);
    await dialog().getByRole("button", { name: "Add 1 lot" }).click();
    await line("NEW-1").waitFor();
    await expect.poll(() => line("NEW-2").count()).toBe(0);
  });

  test("on a phone nothing is wider than the screen, and particulars come up", async () => {
    await page.setViewportSize({ width: 390, height: 844 });
    await line("AB-26").click();
    await page.getByRole("button", { name: "Particulars" }).click();
    await particulars().getByText("AB-26").first().waitFor();
    const overflow = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(overflow).toBe(0);
    await expect.poll(() => line("AB-26").innerText()).toContain("90 g");
    await expect.poll(() => axeFaults(page)).toEqual([]);
  });
});
