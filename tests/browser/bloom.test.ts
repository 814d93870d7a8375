/**
 * Isolation in time, done by hand in a real browser: drag a bar until its conflict clears, undo,
 * pick a sowing date, give the site a climate, take the calendar home and read it back.
 */
import { readFileSync } from "node:fs";
import ICAL from "ical.js";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { axeFaults } from "./axe.ts";
import { launchBrowser, siteUrl } from "./browser.ts";
import { dropFile } from "./drop-file.ts";
import { conflictCount, openSample, twoFrames } from "./sheet.ts";

const sample = new URL("../../sample-plots/two-acre-field.json", import.meta.url);
/** The field with its maize sown too early to miss the tassels over the road. */
const earlyMaize = readFileSync(sample, "utf8").replace('"2027-05-20"', '"2027-05-01"');

const monthly = (name: string, column: number) =>
  readFileSync(new URL("../fixtures/climate/monthly-normals.tsv", import.meta.url), "utf8")
    .split("\n")
    .map((line) => line.split("\t"))
    .filter((cells) => cells[1]?.startsWith(name))
    .map((cells) => cells[column] ?? "");

async function openField(browser: Browser): Promise<Page> {
  const page = await browser.newPage({
    viewport: { width: 1440, height: 900 },
    reducedMotion: "reduce",
  });
  await openSample(page, siteUrl());
  await dropFile(page, "early-maize.json", earlyMaize);
  // Only rows in view are drawn: selecting the maize brings its row there.
  await page.getByRole("button", { name: "Show plantings of Gatepost Flint" }).click();
  await bar(page).waitFor();
  return page;
}

const bar = (page: Page) => page.getByRole("slider", { name: /^Start of M1-1/ });
const undo = (page: Page) => page.getByRole("button", { name: "Undo" });

async function barMiddle(page: Page) {
  await bar(page).scrollIntoViewIfNeeded();
  const box = await bar(page).boundingBox();
  if (!box) throw new Error("no bar");
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

describe("the bloom strip in Chromium", () => {
  let browser: Browser;
  let page: Page;
  beforeAll(async () => {
    browser = await launchBrowser();
    page = await openField(browser);
  });
  afterAll(() => browser.close());

  test("a bar dragged to a later flower clears its conflict while it is still held", async () => {
    await expect.poll(() => conflictCount(page)).toBe(3);
    const from = await barMiddle(page);
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    let moved = 0;
    while ((await conflictCount(page)) > 2) {
      moved += 4;
      if (moved > 200) throw new Error("the conflict does not clear");
      await page.mouse.move(from.x + moved, from.y);
      await twoFrames(page);
    }
    await expect.poll(() => bar(page).getAttribute("aria-valuetext")).toMatch(/sown 2\d May/);
    await page.mouse.up();
    await expect.poll(() => conflictCount(page)).toBe(2);
  });

  test("that was one step: undo brings the conflict back, redo clears it", async () => {
    await expect.poll(() => undo(page).getAttribute("title")).toMatch(/^Undo: Sow M1-1 on 2\d May/);
    await undo(page).click();
    await expect.poll(() => conflictCount(page)).toBe(3);
    await expect.poll(() => bar(page).getAttribute("aria-valuetext")).toContain("sown 1 May");
    await page.getByRole("button", { name: "Redo" }).click();
    await expect.poll(() => conflictCount(page)).toBe(2);
    await undo(page).click();
  });

  test("Escape during a drag puts the sowing back", async () => {
    const from = await barMiddle(page);
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(from.x + 60, from.y, { steps: 4 });
    await expect.poll(() => bar(page).getAttribute("aria-valuetext")).not.toContain("1 May");
    await page.keyboard.press("Escape");
    await page.mouse.up();
    await expect.poll(() => bar(page).getAttribute("aria-valuetext")).toContain("sown 1 May");
    await expect.poll(() => undo(page).isDisabled()).toBe(true);
  });

  test("arrow keys move the sowing by a day and with Shift by a week, as one step", async () => {
    await bar(page).focus();
    for (const key of ["Shift+ArrowRight", "Shift+ArrowRight", "ArrowRight", "ArrowLeft"]) {
      await page.keyboard.press(key);
    }
    await expect.poll(() => bar(page).getAttribute("aria-valuetext")).toContain("sown 15 May");
    await expect.poll(() => undo(page).getAttribute("title")).toBe("Undo: Sow M1-1 on 15 May");
    await undo(page).click();
    await expect.poll(() => bar(page).getAttribute("aria-valuetext")).toContain("sown 1 May");
  });

  test("a sowing date offered for the conflict clears it, and says what it gains", async () => {
    await page.locator(".finding-open").filter({ hasText: "M1-1" }).first().click();
    await page.getByRole("button", { name: /^Sowing dates: .*M1-1/ }).click();
    const apply = page.getByRole("button", { name: /^Apply: Sow M1-1 19 days later/ });
    await apply.waitFor();
    await expect
      .poll(() => page.locator(".stagger-offer").first().innerText())
      .toContain("19 days of sowing become 10 days of bloom");
    await apply.click();
    await expect.poll(() => conflictCount(page)).toBe(2);
  });

  test("a late spring is tried on what rests on time", async () => {
    await page.getByRole("button", { name: "Late spring" }).click();
    const region = page.locator(".late-spring");
    await expect.poll(() => region.innerText()).toContain("M1-1 Gatepost Flint");
    await expect.poll(() => region.innerText()).toContain("no slack");
    await region.getByRole("textbox").fill("0");
    await region.getByRole("textbox").press("Enter");
    await expect.poll(() => region.innerText()).toContain("stay clear");
    await page.getByRole("button", { name: "Late spring" }).click();
  });

  test("with less motion wanted the day steps to the next change and shows on the sheet", async () => {
    const step = page.getByRole("button", { name: /^Step to the next day/ });
    await step.click();
    const slider = page.getByRole("slider", { name: "Day shown on the sheet" });
    const first = await slider.getAttribute("aria-valuetext");
    await step.click();
    await expect.poll(() => slider.getAttribute("aria-valuetext")).not.toBe(first);
    await page.getByRole("button", { name: "Clear day" }).click();
  });

  test("rows are told apart by crossing group", async () => {
    await page.getByRole("combobox", { name: "Order of the rows" }).selectOption("group");
    await page.locator(".bloom-heading").first().waitFor();
    await expect.poll(() => axeFaults(page)).toEqual([]);
    await page.getByRole("combobox", { name: "Order of the rows" }).selectOption("flower");
  });

  test("the calendar is taken home as a file that a calendar program reads", async () => {
    await page.getByRole("button", { name: "Calendar", exact: true }).click();
    await page.getByRole("heading", { name: /^Week/ }).first().waitFor();
    await expect.poll(() => axeFaults(page)).toEqual([]);
    await page.getByRole("checkbox", { name: /^rogue/ }).uncheck();
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: /^Download calendar/ }).click(),
    ]);
    expect(download.suggestedFilename()).toMatch(/season-calendar.*\.ics$/);
    const text = readFileSync(await download.path(), "utf8");
    const events = new ICAL.Component(ICAL.parse(text))
      .getAllSubcomponents("vevent")
      .map((component) => new ICAL.Event(component));
    const sowing = events.find((event) => event.summary.startsWith("Sow M1-1"));
    expect(sowing?.startDate.toString()).toBe("2027-05-20");
    expect(events.some((event) => event.summary.startsWith("Rogue"))).toBe(false);
    expect(events.some((event) => event.description?.includes("first frost"))).toBe(true);
    await page.getByRole("dialog").getByRole("button", { name: "Close", exact: true }).click();
  });

  test("temperatures are pasted, mended and kept as one step", async () => {
    const flower = () => bar(page).getAttribute("aria-valuetext");
    const inMedford = await flower();
    expect(inMedford).toMatch(/in flower \d+ Aug to .*, counted in heat/);
    await page.getByRole("button", { name: "Plan", exact: true }).click();
    await page.getByRole("button", { name: "Climate of the site" }).click();
    const january = page.getByRole("textbox", { name: "January, lowest" });
    await expect.poll(() => january.inputValue()).toBe("30.6");
    await page.getByText("Paste a table").click();
    const paste = page.getByRole("textbox", { name: /^Twelve rows/ });
    await paste.fill(
      `Min ${monthly("prospect", 4).join(" ")}\nMax ${monthly("prospect", 5).join(" ").replace("61.9", "6x.9")}`,
    );
    await page.getByRole("button", { name: "Fill the table" }).click();
    const alert = page.getByRole("dialog").getByRole("alert");
    await expect.poll(() => alert.innerText()).toContain('row 2, column 5: got "6x.9"');
    await paste.fill((await paste.inputValue()).replace("6x.9", "61.9"));
    await page.getByRole("button", { name: "Fill the table" }).click();
    await expect.poll(() => january.inputValue()).toBe("28.9");
    await expect.poll(() => axeFaults(page)).toEqual([]);
    await page.getByRole("button", { name: "Apply", exact: true }).click();
    await expect
      .poll(() => undo(page).getAttribute("title"))
      .toBe("Undo: Set the climate of the site");
    // Prospect is cooler than Medford: the maize flowers later.
    await expect.poll(() => flower()).not.toBe(inMedford);
    await undo(page).click();
    await expect.poll(() => flower()).toBe(inMedford);
  });

  test("its height is the grower's, and what is drawn stays where it is meanwhile", async () => {
    const edge = page.getByRole("separator", { name: "Height of the bloom strip" });
    const origin = async () => {
      const text = (await page.locator(".sheet").getAttribute("data-view")) ?? "{}";
      const { scale, x } = JSON.parse(text) as { readonly scale: number; readonly x: number };
      return { scale, x };
    };
    const before = await origin();
    await edge.focus();
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("ArrowDown");
    await expect.poll(() => edge.getAttribute("aria-valuenow")).toBe("4");
    await expect
      .poll(async () => (await page.locator(".bloom-chart").boundingBox())?.height)
      .toBe(64 + 4 * 24);
    await expect.poll(() => origin()).toEqual(before);
    await page.reload();
    await expect.poll(() => edge.getAttribute("aria-valuenow")).toBe("4");
    await edge.dblclick();
    await expect.poll(() => edge.getAttribute("aria-valuenow")).toBe("6");
  });
});
