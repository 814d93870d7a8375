/** The field record in the particulars and in the season calendar, on a desktop. */
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { axeFaults } from "./axe.ts";
import { launchBrowser, siteUrl } from "./browser.ts";
import { openSample } from "./sheet.ts";

describe("writing the field record", () => {
  let browser: Browser;
  let page: Page;

  beforeAll(async () => {
    browser = await launchBrowser();
    const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
    page = await context.newPage();
    await page.clock.setFixedTime("2027-07-06T09:00:00Z");
    await openSample(page, siteUrl());
    await find("A03-1");
  });
  afterAll(() => browser.close());

  async function find(code: string): Promise<void> {
    await page.getByRole("combobox", { name: /^Find by/ }).fill(code);
    await page.getByRole("option", { name: new RegExp(`^${code}`) }).click();
    await particulars()
      .getByRole("heading", { name: `Planting ${code}` })
      .waitFor();
  }
  const particulars = () => page.getByRole("region", { name: "Particulars" });
  const record = () => particulars().getByRole("list", { name: "Field record" });
  const dialog = () => page.getByRole("dialog");

  test("shows what was written down, and by whom", async () => {
    const lines = await record().locator("li").allInnerTexts();
    expect(lines).toHaveLength(1);
    expect(lines[0]).toContain("2 Jun 2027 Rogued, 8 plants: green stems among the silver");
    expect(lines[0]).toContain("Mara");
  });

  test("takes an entry with what its kind asks for", async () => {
    await particulars().getByRole("button", { name: "Add an entry ..." }).click();
    await dialog().getByLabel("What").selectOption({ label: "Rogued" });
    await dialog().getByLabel("Plants").fill("4");
    await dialog().getByLabel("Why").fill("pale");
    await dialog().getByLabel("Your name").fill("Mara");
    await expect.poll(() => axeFaults(page)).toEqual([]);
    await dialog().getByRole("button", { name: "Add", exact: true }).click();
    await expect
      .poll(() => record().locator("li").first().innerText())
      .toMatch(/6 Jul 2027 Rogued, 4 plants: pale\s+Mara/);
  });

  test("a correction stands beside what was written first, and undo takes it back", async () => {
    await record()
      .getByRole("button", { name: /^Correct: rogued, 4 plants/ })
      .click();
    await dialog().getByLabel("Plants").fill("5");
    await dialog().getByRole("button", { name: "Apply", exact: true }).click();
    const first = record().locator("li").first();
    await expect.poll(() => first.innerText()).toContain("Rogued, 5 plants: pale");
    await expect
      .poll(() => first.innerText())
      .toContain("written first as: rogued, 4 plants: pale");
    await page.getByRole("button", { name: /^Undo: Correct A03-1/ }).click();
    await expect.poll(() => first.innerText()).not.toContain("written first");
  });

  test("what is struck out can still be read", async () => {
    await record()
      .getByRole("button", { name: /^Strike out: rogued, 4 plants/ })
      .click();
    const first = record().locator("li").first();
    await expect.poll(() => first.innerText()).toContain("struck out by Mara");
    await expect.poll(() => first.locator("s").innerText()).toContain("Rogued, 4 plants");
    await expect.poll(() => axeFaults(page)).toEqual([]);
  });

  test("what cannot be right is marked and kept", async () => {
    await particulars().getByRole("button", { name: "Add an entry ..." }).click();
    await dialog().getByLabel("What").selectOption({ label: "Cover off" });
    await dialog().getByLabel("Day").fill("2027-06-01");
    await dialog().getByRole("button", { name: "Add", exact: true }).click();
    const line = record().locator("li").filter({ hasText: "Uncovered" });
    await expect.poll(() => line.innerText()).toContain("no cover was written down before it");
  });

  test("jobs are ticked in the calendar, and a tick taken away strikes its entry out", async () => {
    await page.getByRole("button", { name: "Calendar", exact: true }).click();
    const job = dialog().getByRole("listitem").filter({ hasText: "Rogue B03-1" });
    await job.getByRole("checkbox").check();
    await expect.poll(() => job.innerText()).toContain("done 6 Jul, Mara");
    await expect.poll(() => axeFaults(page)).toEqual([]);
    await job.getByRole("checkbox").uncheck();
    await expect.poll(() => job.innerText()).not.toContain("done");
    await job.getByRole("checkbox").check();
    await dialog().getByRole("button", { name: "Close" }).click();
    await find("B03-1");
    await expect.poll(() => record().locator("li").count()).toBe(2);
    const lines = await record().locator("li").allInnerTexts();
    expect(lines.filter((line) => line.includes("struck out"))).toHaveLength(1);
  });
});
