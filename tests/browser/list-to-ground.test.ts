/**
 * From an empty plan to paper, as a newcomer would go: a seed list of 24 varieties from a file, 13
 * beds in a row and a curved one, laid out in one press, without a conflict, printed. Every click,
 * field and file picked is counted; waiting and looking count nothing. And clearing everything at
 * once, tried, applied and taken back.
 */
import type { Browser, Locator, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { newcomerRows } from "../support/newcomer-garden.ts";
import { axeFaults } from "./axe.ts";
import { launchBrowser, siteUrl } from "./browser.ts";
import { conflictCount, openSample } from "./sheet.ts";

/** A requirement: a newcomer once took 550. */
const MOST_ACTIONS = 60;

const csv = [
  "name,kind,plants wanted",
  ...newcomerRows.map(([name, kind, plants]) => `${name},${kind},${plants}`),
].join("\r\n");

/** A bed along a bend, by its corners and a place on each curve. */
const BEND = "26, 8\n34, 0 through 31.66, 5.66\n32.6, 0\n26, 6.6 through 30.67, 4.67";

let browser: Browser;
let page: Page;
let actions = 0;

beforeAll(async () => {
  browser = await launchBrowser();
  page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await openSample(page, siteUrl());
});
afterAll(() => browser.close());

async function click(target: Locator): Promise<void> {
  actions += 1;
  await target.click();
}

async function type(field: Locator, text: string): Promise<void> {
  actions += 1;
  await field.fill(text);
}

const button = (name: string) => page.getByRole("button", { name, exact: true });
const dialog = () => page.getByRole("dialog");

test("from an empty plan to paper in at most 60 actions", async () => {
  await click(button("Plan"));
  await click(button("New"));
  await click(button("Size, place, frosts"));
  await type(dialog().getByLabel("Last spring frost"), "10 May");
  await type(dialog().getByLabel("First autumn frost"), "12 Oct");
  await click(dialog().getByRole("button", { name: "Apply", exact: true }));
  await dialog().waitFor({ state: "hidden" });

  await click(button("Rows of equal beds"));
  await type(dialog().getByLabel("Beds in a row"), "13");
  await click(dialog().locator("button.primary"));
  await dialog().waitFor({ state: "hidden" });
  await click(button("Plan"));
  await click(page.getByRole("button", { name: /^Outline from its corners/ }));
  await type(dialog().getByLabel("Corners, one to a line"), BEND);
  await click(dialog().locator("button.primary"));
  await dialog().waitFor({ state: "hidden" });

  await click(page.locator(".seed-list").getByRole("button", { name: "Read or save as CSV" }));
  // Opening the chooser, and the file in it.
  actions += 2;
  await dialog()
    .getByLabel("CSV file")
    .setInputFiles({ name: "winter.csv", mimeType: "text/csv", buffer: Buffer.from(csv) });
  await click(dialog().locator("button.primary"));
  await expect.poll(() => page.locator(".seed-list li").count()).toBe(24);

  await click(page.locator(".seed-list").getByRole("button", { name: /^Lay out the seed list/ }));
  await button("Add all three").waitFor();
  await expect.poll(() => axeFaults(page)).toEqual([]);
  await click(button("Add all three"));
  await expect.poll(() => page.locator(".layout-tab").count()).toBe(4);
  await expect
    .poll(() => page.locator(".layout-tab[aria-current]").innerText())
    .toBe("All grown this year");
  await expect
    .poll(() => page.getByRole("region", { name: "Seed list" }).innerText())
    .toContain("24 varieties");
  // Judged by the same checks as everything on the sheet.
  await page.getByText("No conflict.", { exact: true }).waitFor();
  await expect.poll(() => conflictCount(page)).toBe(0);

  await click(button("Paper"));
  const save = dialog().getByRole("button", { name: /^Save as PDF.*\d+ pages/ });
  await save.waitFor();
  const download = page.waitForEvent("download");
  await click(save);
  expect((await download).suggestedFilename()).toMatch(/\.pdf$/);
  await click(dialog().getByRole("button", { name: "Close", exact: true }));

  console.info(`list to paper: ${actions} actions of at most ${MOST_ACTIONS}`);
  expect(actions).toBeLessThanOrEqual(MOST_ACTIONS);
  // One undo takes all three layouts away.
  await page.keyboard.press("Control+z");
  await expect.poll(() => page.locator(".layout-tab").count()).toBe(1);
}, 120_000);

describe("clearing everything at once", () => {
  const panel = () => page.locator(".clearing");

  beforeAll(async () => {
    await page.close();
    page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
    await openSample(page, siteUrl());
  });

  test("is tried on the sheet, applied as one step and taken back", async () => {
    await expect.poll(() => conflictCount(page)).toBe(3);
    await page
      .getByRole("button", { name: /^Clear everything/ })
      .first()
      .click();
    await panel()
      .getByText(/^3 conflicts: \d changes? clears? all of them\.$/)
      .waitFor();
    await expect.poll(() => axeFaults(page)).toEqual([]);
    await panel().getByRole("button", { name: "Try", exact: true }).click();
    await expect.poll(() => conflictCount(page)).toBe(0);
    await panel().getByRole("button", { name: "Cancel", exact: true }).click();
    await expect.poll(() => conflictCount(page)).toBe(3);
    await panel().getByRole("button", { name: "Apply all" }).click();
    await expect.poll(() => conflictCount(page)).toBe(0);
    await page.keyboard.press("Control+z");
    await expect.poll(() => conflictCount(page)).toBe(3);
    await panel().getByText("The plan has been changed since. Look again.").waitFor();
  });

  test("is looked for within what is allowed, and applied one by one", async () => {
    await panel().getByText("What is allowed").click();
    await panel().getByLabel("New cages at most").fill("0");
    await panel().getByRole("button", { name: "Look again" }).click();
    await panel()
      .getByText(/^3 conflicts: \d changes? clears? all of them\.$/)
      .waitFor();
    const each = panel().getByRole("button", { name: /^Apply: / });
    for (let left = await each.count(); left > 0; left -= 1) {
      await each.first().click();
      await expect.poll(() => each.count()).toBe(left - 1);
    }
    await expect.poll(() => conflictCount(page)).toBe(0);
    await panel().getByRole("button", { name: "Close", exact: true }).click();
    await expect.poll(() => panel().count()).toBe(0);
  });
});
