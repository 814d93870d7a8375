/** Fifty findings and 28 varieties in a real browser: how many are in sight, and what can be done there. */
import { readFileSync } from "node:fs";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { Browser, Page } from "playwright-core";
import { axeFaults } from "./axe.ts";
import { launchBrowser, siteUrl } from "./browser.ts";
import { dropFile } from "./drop-file.ts";
import { conflictCount, openSample } from "./sheet.ts";

const KINDS = ["tomato", "tomato", "tomato", "lettuce", "lettuce", "common-bean", "runner-bean"];
const VARIETIES = 28;

/** The sample's garden with 28 varieties close together, a third of them without a date. */
function crowdedGarden(): string {
  const plan = JSON.parse(readFileSync("sample-plots/garden-to-solve.json", "utf8"));
  const all = Array.from({ length: VARIETIES }, (_, index) => index);
  plan.id = "crowded";
  plan.title = "Crowded garden";
  plan.lots = [];
  plan.entries = [];
  plan.accepted = [];
  plan.varieties = all.map((index) => ({
    id: `v${index}`,
    name: `Fallow ${index}`,
    kind: KINDS[index % KINDS.length],
    wantedPlants: 20,
  }));
  const outline = (index: number) => ({
    shape: "rectangle",
    x: 2 + (index % 14) * 1.4,
    y: index < 14 ? 4 : 8.5,
    widthM: 1.1,
    lengthM: 3.5,
    turnDeg: 0,
  });
  plan.layouts = [
    {
      id: "layout-1",
      name: "First thoughts",
      beds: [],
      plantings: all.map((index) => ({
        id: `p${index}`,
        code: `P-${index + 1}`,
        variety: `v${index}`,
        outline: outline(index),
        purpose: "seed",
        flowering: "yes",
        cover: "none",
        plants: 20,
        ...(index % 3 === 0 ? {} : { start: { method: "sown", date: "2027-05-01" } }),
      })),
    },
  ];
  return JSON.stringify(plan);
}

let browser: Browser;
let page: Page;

beforeAll(async () => {
  browser = await launchBrowser();
  page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await openSample(page, siteUrl());
  await dropFile(page, "crowded.json", crowdedGarden());
  await page.getByText("28 varieties, all placed").waitFor();
});
afterAll(() => browser.close());

const lines = () => page.locator(".finding .finding-open");

/** Lines of the list whose middle lies in the window and in the region's own box. */
function linesInSight(): Promise<number> {
  return page.evaluate(() => {
    const region = document.querySelector("[data-region=findings]")?.getBoundingClientRect();
    return [...document.querySelectorAll(".finding-line")].filter((line) => {
      const { top, bottom } = line.getBoundingClientRect();
      const middle = (top + bottom) / 2;
      return region !== undefined && middle > region.top && middle < region.bottom;
    }).length;
  });
}

describe("a garden with many findings", () => {
  test("at least twelve lines are in sight", async () => {
    await expect.poll(() => lines().count()).toBeGreaterThan(12);
    await expect.poll(() => linesInSight()).toBeGreaterThanOrEqual(12);
    await expect.poll(() => axeFaults(page)).toEqual([]);
  });

  test("plantings without dates are one line, which selects them all", async () => {
    const group = page.locator(".finding.group.unknown").filter({ hasText: "Bloom dates" });
    const count = Number(/^(\d+) x/.exec(await group.locator(".finding-many").innerText())?.[1]);
    expect(count).toBeGreaterThanOrEqual(8);
    await group.getByRole("button", { name: /^Select all/ }).click();
    await page
      .locator(".particulars")
      .getByRole("heading", { name: `${count} plantings` })
      .waitFor();
    await page.keyboard.press("Escape");
  });

  test("ways out of a finding far down open in sight and take the focus", async () => {
    const last = page.getByRole("button", { name: /^Ways out: / }).last();
    await last.scrollIntoViewIfNeeded();
    await last.click();
    const heading = page.getByRole("heading", { name: "Ways out" });
    await heading.waitFor();
    const box = await heading.boundingBox();
    expect(box?.y).toBeGreaterThan(0);
    expect((box?.y ?? 9999) + (box?.height ?? 0)).toBeLessThan(900);
    await expect
      .poll(() => heading.evaluate((element) => element === document.activeElement))
      .toBe(true);
    await page
      .getByRole("region", { name: "Ways out" })
      .getByRole("button", { name: "Close" })
      .click();
    await heading.waitFor({ state: "detached" });
  });

  test("N opens one finding after the other, Shift + N the one before", async () => {
    await page.locator(".sheet[data-view]").focus();
    const open = () => page.locator('.finding-open[aria-expanded="true"]').last().innerText();
    const before = await open();
    await page.keyboard.press("n");
    await expect.poll(open).not.toBe(before);
    const first = await open();
    await page.keyboard.press("n");
    await expect.poll(open).not.toBe(first);
    await page.keyboard.press("Shift+N");
    await expect.poll(open).toBe(first);
  });

  test("severities and checks can be left out, and are called back", async () => {
    const before = await lines().count();
    await page.getByRole("button", { name: /\d+ cautions?$/ }).click();
    await expect.poll(() => page.locator(".finding.caution").count()).toBe(0);
    await page.getByLabel("Kind of finding").selectOption({ label: "Bloom dates are missing" });
    await expect.poll(() => page.locator(".finding.conflict").count()).toBe(0);
    await page.getByRole("button", { name: "Show all", exact: true }).click();
    await expect.poll(() => lines().count()).toBe(before);
  });

  test("what the last change cleared is told, with the names", async () => {
    const before = await conflictCount(page);
    await page
      .getByRole("button", { name: /^Ways out: / })
      .first()
      .click();
    await page
      .getByRole("button", { name: /^Apply: / })
      .first()
      .click();
    await expect.poll(() => conflictCount(page)).toBeLessThan(before);
    // The focus goes on to a finding, not back to the page.
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.className))
      .toBe("finding-open");
    const news = page.locator(".finding-news");
    await expect.poll(() => news.innerText()).toMatch(/^Last change: \d+ cleared/);
    await news.locator("summary").click();
    await news
      .getByText(/^Cleared: .* is too close to /)
      .first()
      .waitFor();
  });

  test("a way out that is tried can be kept or put back from its own line", async () => {
    const before = await conflictCount(page);
    await page
      .getByRole("button", { name: /^Ways out: / })
      .first()
      .click();
    await page
      .getByRole("button", { name: /^Try: / })
      .first()
      .click();
    const trial = page.locator(".trial");
    await trial.waitFor();
    await expect.poll(() => conflictCount(page)).toBeLessThan(before);
    await trial.getByRole("button", { name: "Cancel" }).click();
    await expect.poll(() => conflictCount(page)).toBe(before);
    await expect.poll(() => page.getByRole("region", { name: "Ways out" }).count()).toBe(1);
  });
});

describe("the seed list of 28 varieties", () => {
  const rows = () => page.locator(".seed-row");
  const names = () => page.locator(".seed-name").allInnerTexts();

  test("at least twenty are in sight", async () => {
    const inSight = await page.evaluate(() => {
      const region = document.querySelector("[data-region=seed-list]")?.getBoundingClientRect();
      return [...document.querySelectorAll(".seed-row")].filter((row) => {
        const { top, bottom } = row.getBoundingClientRect();
        return region !== undefined && top >= region.top && bottom <= region.bottom;
      }).length;
    });
    expect(inSight).toBeGreaterThanOrEqual(20);
  });

  test("a part of a kind's name finds its varieties, and the order can be another", async () => {
    const find = page.getByLabel("Variety or kind");
    await find.fill("runner");
    await expect.poll(() => rows().count()).toBe(4);
    await find.fill("");
    await expect.poll(() => rows().count()).toBe(28);
    await page.getByLabel("Order of the seed list").selectOption("By kind");
    await expect.poll(async () => (await names())[0]).toBe("Fallow 5");
    await expect.poll(() => axeFaults(page)).toEqual([]);
  });

  test("a press chooses a variety: its plantings are selected and its actions stay", async () => {
    await page.getByLabel("Order of the seed list").selectOption("As added");
    await page.locator(".seed-name", { hasText: "Fallow 3" }).first().click();
    await page
      .locator(".particulars")
      .getByRole("heading", { name: /Planting P-4/ })
      .waitFor();
    const chosen = page.locator(".seed-row[data-chosen]");
    await chosen.getByRole("button", { name: "Edit Fallow 3" }).click();
    await page.getByRole("dialog").getByLabel("Name").waitFor();
    await page.keyboard.press("Escape");
  });
});
