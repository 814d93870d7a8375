/**
 * Commands on objects, in a real browser: one list of commands, the same menu from the sheet, the
 * table and the keyboard, the system's clipboard, locking, hiding, finding.
 */
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { axeFaults } from "./axe.ts";
import { launchBrowser, siteUrl } from "./browser.ts";
import { conflictCount, openSample, pagePlace } from "./sheet.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

async function freshPage(look: "light" | "dark" = "light", width = 1440): Promise<Page> {
  const context = await browser.newContext({
    colorScheme: look,
    viewport: { width, height: 900 },
    permissions: ["clipboard-read", "clipboard-write"],
  });
  const page = await context.newPage();
  page.setDefaultTimeout(20_000);
  await openSample(page, siteUrl());
  return page;
}

/** Runs a command from the list of commands, by its name. */
async function command(page: Page, name: string): Promise<void> {
  await page.keyboard.press("Control+k");
  await page.getByRole("combobox", { name: "Search commands" }).fill(name);
  await page.keyboard.press("Enter");
}

async function selectInTables(page: Page, ...names: readonly string[]): Promise<void> {
  await page.getByRole("button", { name: "Tables", exact: true }).click();
  for (const name of names) await page.getByRole("checkbox", { name, exact: true }).check();
}

const rows = (page: Page, table: string) =>
  page.getByRole("region", { name: table, exact: true }).locator("tbody tr");
const undoTitle = (page: Page) =>
  page.getByRole("button", { name: /^Undo/ }).getAttribute("aria-label");

describe("the list of commands", () => {
  let page: Page;
  beforeEach(async () => {
    page = await freshPage();
    return async () => page.context().close();
  });

  test("stands beside tools that are one stop for Tab, arrows inside", async () => {
    const label = () => page.evaluate(() => document.activeElement?.textContent?.trim());
    await page.getByRole("button", { name: "Select", exact: true }).focus();
    await page.keyboard.press("ArrowRight");
    await expect.poll(label).toBe("Pan");
    await page.keyboard.press("ArrowLeft");
    await page.keyboard.press("ArrowLeft");
    // Round the end, past what cannot be used at the moment.
    await expect.poll(label).toBe("Fit all");
    await page.keyboard.press("Tab");
    const isOut = () =>
      page.evaluate(() => document.activeElement?.closest('[role="toolbar"]') === null);
    await expect.poll(isOut).toBe(true);
  });

  test("finds by words, says keys and why something cannot be used, runs with Enter", async () => {
    await page.keyboard.press("Control+k");
    const field = page.getByRole("combobox", { name: "Search commands" });
    await field.fill("duplicate");
    const option = page.getByRole("option", { name: /^Duplicate/ });
    await expect.poll(() => option.getAttribute("aria-disabled")).toBe("true");
    await expect.poll(() => option.innerText()).toContain("Nothing is selected");
    await expect.poll(() => option.innerText()).toContain("Ctrl or Cmd + D");
    await expect.poll(() => axeFaults(page)).toEqual([]);
    await field.fill("compare");
    await page.keyboard.press("Enter");
    const tab = page.getByRole("button", { name: "Compare", exact: true });
    await expect.poll(() => tab.getAttribute("aria-pressed")).toBe("true");
  });

  test("takes other keys for a command, and keeps them", async () => {
    await page.keyboard.press("?");
    const dialog = page.getByRole("dialog", { name: "Keys" });
    await dialog.getByRole("button", { name: "Change: Duplicate" }).click();
    await page.keyboard.press("Control+z");
    await dialog.getByText("Ctrl or Cmd + Z is taken: Undo").waitFor();
    await expect.poll(() => axeFaults(page)).toEqual([]);
    await page.keyboard.press("j");
    await dialog.getByRole("button", { name: "Change: Duplicate" }).waitFor();
    await page.keyboard.press("Escape");
    await page.reload();
    await page.locator(".finding").first().waitFor();
    await selectInTables(page, "B05");
    await page.getByRole("button", { name: "Tables", exact: true }).focus();
    await page.keyboard.press("j");
    await expect.poll(() => undoTitle(page)).toBe("Undo: Duplicate bed B05");
    await page.keyboard.press("?");
    await dialog.getByRole("button", { name: "Reset all keys" }).click();
    await dialog.getByRole("button", { name: "Reset all keys" }).waitFor({ state: "detached" });
  });

  test("draws rows of beds in one undo step, codes going on and never taken twice", async () => {
    await command(page, "rows of equal beds");
    const dialog = page.getByRole("dialog", { name: "Rows of equal beds" });
    await dialog.getByLabel("Beds in a row").fill("12");
    await dialog.getByLabel("Bed width").fill("80 cm");
    await dialog.getByLabel("Path between beds").fill("40 cm");
    await expect.poll(() => axeFaults(page)).toEqual([]);
    await dialog.getByRole("button", { name: "Add the beds" }).click();
    await expect.poll(() => undoTitle(page)).toBe("Undo: Draw 12 beds");
    await page.getByRole("button", { name: "Tables", exact: true }).click();
    await expect.poll(() => rows(page, "Beds").count()).toBe(22);
    await page.keyboard.press("Control+z");
    await expect.poll(() => rows(page, "Beds").count()).toBe(10);
  });
});

describe("objects", () => {
  let page: Page;
  beforeEach(async () => {
    page = await freshPage();
    return async () => page.context().close();
  });

  test("have one menu, from a table row, by key and by secondary click", async () => {
    await page.getByRole("button", { name: "Tables", exact: true }).click();
    await page.getByRole("button", { name: "Actions for B05" }).click();
    const menu = page.getByRole("menu", { name: "Actions for bed B05" });
    await menu.waitFor();
    await expect.poll(() => axeFaults(page)).toEqual([]);
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("Escape");
    await menu.waitFor({ state: "detached" });
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.getAttribute("aria-label")))
      .toBe("Actions for B05");
    await page.getByRole("button", { name: "Sheet", exact: true }).click();
    await page.locator(".sheet").focus();
    await page.keyboard.press("Shift+F10");
    await menu.getByRole("menuitem", { name: /^Lock/ }).click();
    await expect.poll(() => undoTitle(page)).toBe("Undo: Lock bed B05");
    await page.getByText("1 object is locked.").waitFor();
    await page.getByRole("button", { name: "Unlock all" }).click();
    await expect.poll(() => undoTitle(page)).toBe("Undo: Unlock all");
  });

  test("answer to a secondary click where they lie, and so does the empty sheet", async () => {
    // The middle of bed B05 and ground beside all beds, from the sample's file.
    const bed = await pagePlace(page, { x: 17.04, y: 3.59 });
    await page.mouse.click(bed.x, bed.y, { button: "right" });
    const ofBed = page.getByRole("menu", { name: "Actions for bed B05" });
    await ofBed.waitFor();
    await page.keyboard.press("Escape");
    await ofBed.waitFor({ state: "hidden" });
    const ground = await pagePlace(page, { x: 18, y: -1 });
    await page.mouse.click(ground.x, ground.y, { button: "right" });
    const menu = page.getByRole("menu", { name: "Actions for Sheet" });
    await menu.getByRole("menuitem", { name: "Rows of equal beds ..." }).click();
    await page.getByRole("dialog", { name: "Rows of equal beds" }).waitFor();
  });

  test("go to another plan with the varieties they need", async () => {
    await selectInTables(page, "B04");
    await page.keyboard.press("Control+c");
    await expect
      .poll(() => page.evaluate(() => navigator.clipboard.readText()))
      .toContain("wideberth-objects");
    await command(page, "new plan");
    await expect.poll(() => rows(page, "Beds").count()).toBe(0);
    await page.keyboard.press("Control+v");
    await expect.poll(() => rows(page, "Beds").count()).toBe(1);
    await expect.poll(() => rows(page, "Plantings").count()).toBe(2);
    const seeds = page.getByRole("region", { name: "Seed list" });
    await seeds.getByText("Fen Cockade").waitFor();
    await seeds.getByText("Slatewing").waitFor();
  });

  test("are cut and pasted through the system's clipboard, plantings with their bed", async () => {
    await selectInTables(page, "B04");
    await page.keyboard.press("Control+c");
    const clipboard = () => page.evaluate(() => navigator.clipboard.readText());
    await expect.poll(clipboard).toContain("wideberth-objects");
    const copied = await clipboard();
    expect(JSON.parse(copied)).toMatchObject({ format: "wideberth-objects", version: 1 });
    await page.keyboard.press("Control+x");
    await expect.poll(() => rows(page, "Beds").count()).toBe(9);
    const left = await rows(page, "Plantings").count();
    await page.keyboard.press("Control+v");
    await expect.poll(() => rows(page, "Beds").count()).toBe(10);
    await expect.poll(() => rows(page, "Plantings").count()).toBe(left + 2);
    await page.keyboard.press("Control+v");
    await expect.poll(() => rows(page, "Beds").count()).toBe(11);
    await page.evaluate(() => navigator.clipboard.writeText("12 m of string"));
    await command(page, "paste");
    const dialog = page.getByRole("dialog", { name: "Paste from a text" });
    await dialog.getByText("was not copied from a plan").waitFor();
    await expect.poll(() => axeFaults(page)).toEqual([]);
    await dialog.getByLabel("Copied text").fill(copied);
    await dialog.getByRole("button", { name: "Paste into this layout" }).click();
    await expect.poll(() => rows(page, "Beds").count()).toBe(12);
  });

  test("are lined up, spaced and repeated, each in one step", async () => {
    await selectInTables(page, "B01", "B02", "B03");
    await page.getByRole("button", { name: "Near ends" }).click();
    await expect.poll(() => undoTitle(page)).toBe("Undo: Line up near ends of 3 beds");
    await page.getByRole("button", { name: "Space across" }).click();
    await expect.poll(() => undoTitle(page)).toBe("Undo: Space 3 beds evenly");
    await command(page, "copy in rows");
    const dialog = page.getByRole("dialog", { name: "Copy in rows and columns" });
    await dialog.getByLabel("Along", { exact: true }).fill("3");
    await dialog.getByLabel("Gap across").fill("1 m");
    await expect.poll(() => axeFaults(page)).toEqual([]);
    await dialog.getByRole("button", { name: "Add the copies" }).click();
    await expect.poll(() => rows(page, "Beds").count()).toBe(10 + 3 * 5);
  });

  test("are renamed with F2", async () => {
    await selectInTables(page, "B05");
    await page.keyboard.press("F2");
    const dialog = page.getByRole("dialog", { name: "Rename B05" });
    await dialog.getByLabel("Code").fill("B04");
    await page.keyboard.press("Enter");
    await dialog.getByText("B04 is taken").waitFor();
    await dialog.getByLabel("Code").fill("North bed");
    await page.keyboard.press("Enter");
    await expect.poll(() => undoTitle(page)).toBe("Undo: Rename bed B05 to North bed");
  });
});

describe("finding and hiding", () => {
  let page: Page;
  beforeEach(async () => {
    page = await freshPage();
    return async () => page.context().close();
  });

  test("a variety is found, selected and brought into view", async () => {
    await page.keyboard.press("Control+f");
    await page.keyboard.type("tomato");
    await page.getByRole("listbox", { name: "Matches" }).getByRole("option").first().waitFor();
    await expect.poll(() => axeFaults(page)).toEqual([]);
    const before = await page.locator(".sheet").getAttribute("data-view");
    await page.keyboard.press("Enter");
    await page.keyboard.press("Enter");
    await page.getByText(/2 of 3 matches/).waitFor();
    await page.getByRole("heading", { name: /^Planting B0/ }).waitFor();
    await expect.poll(() => page.locator(".sheet").getAttribute("data-view")).not.toBe(before);
  });

  test("hidden things are gone from the sheet but not from the findings", async () => {
    const conflicts = await conflictCount(page);
    const picture = () => page.locator(".sheet").screenshot();
    const before = await picture();
    await page.getByRole("button", { name: "Show", exact: true }).click();
    await page.getByRole("checkbox", { name: "plantings", exact: true }).uncheck();
    await page.getByRole("checkbox", { name: "grid", exact: true }).uncheck();
    await expect.poll(() => axeFaults(page)).toEqual([]);
    await page.keyboard.press("Escape");
    await page.getByText("2 kinds of things are hidden.").waitFor();
    expect((await picture()).equals(before)).toBe(false);
    await expect.poll(() => conflictCount(page)).toBe(conflicts);
    await page.getByRole("button", { name: "Show all" }).click();
    await page.getByText("2 kinds of things are hidden.").waitFor({ state: "detached" });
  });
});

test("nothing is out of reach on a phone, in the dark", async () => {
  const page = await freshPage("dark", 390);
  await page.getByRole("button", { name: "Show", exact: true }).click();
  await page.getByRole("checkbox", { name: "plantings", exact: true }).waitFor();
  await expect.poll(() => axeFaults(page)).toEqual([]);
  await page.keyboard.press("Escape");
  await page.getByRole("button", { name: "Commands", exact: true }).click();
  await page.getByRole("option", { name: /^Undo/ }).waitFor();
  await expect.poll(() => axeFaults(page)).toEqual([]);
  await expect
    .poll(() => page.evaluate(() => document.documentElement.scrollWidth))
    .toBeLessThanOrEqual(390);
  await page.context().close();
});
