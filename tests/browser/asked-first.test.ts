/**
 * What is asked before a plan takes it, done by hand in a real browser: what becomes of the dates
 * when the season moves, why a finding is lived with, whose figures a pasted kind has.
 */
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, beforeEach, afterEach, describe, expect, test } from "vitest";
import { clipText } from "../../src/core/edits/clipboard.ts";
import { writePlan } from "../../src/core/model/read-plan.ts";
import type { OwnKind, Plan } from "../../src/core/model/plan.ts";
import { layoutOf, trialPlan } from "../support/trial-plan.ts";
import { axeFaults } from "./axe.ts";
import { launchBrowser, siteUrl } from "./browser.ts";
import { dropFile } from "./drop-file.ts";
import { conflictCount, openSample } from "./sheet.ts";

let browser: Browser;
let page: Page;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());
beforeEach(async () => {
  page = await browser.newPage({
    viewport: { width: 1440, height: 900 },
    reducedMotion: "reduce",
  });
  await openSample(page, siteUrl());
});
afterEach(() => page.close());

const button = (name: string | RegExp) => page.getByRole("button", { name, exact: true });
const findings = () => page.getByRole("region", { name: "Findings" });
const dialog = () => page.locator("dialog[open]");

async function pick(menu: string, item: string): Promise<void> {
  await button(menu).click();
  await page.locator(".menu").getByRole("button", { name: item, exact: true }).click();
}

async function command(name: string): Promise<void> {
  await button("Commands").click();
  await dialog().getByRole("combobox").fill(name);
  await page.keyboard.press("Enter");
}

async function undo(): Promise<void> {
  await page.getByRole("button", { name: "Undo" }).click();
}

describe("the season a year later asks what becomes of the dates", () => {
  const question = () => page.getByRole("group", { name: "What becomes of the dates" });
  beforeEach(async () => {
    await pick("Plan", "Plan settings");
    await button("Go on to the season a year later").click();
    await question().waitFor();
  });

  test("and can be left as it was", async () => {
    // Sowing days are counted, not blooms and frosts alone.
    await expect.poll(() => question().innerText()).toMatch(/1[0-9] dates would lie outside/);
    await expect.poll(() => axeFaults(page)).toEqual([]);
    await button("Cancel").click();
    await question().waitFor({ state: "detached" });
    await page.keyboard.press("Escape");
    await expect.poll(() => conflictCount(page)).toBe(3);
    await expect.poll(() => page.getByRole("button", { name: "Undo" }).isDisabled()).toBe(true);
  });

  test("moves them all in one step: every verdict stays", async () => {
    await button("Move all dates 1 year on").click();
    await question().waitFor({ state: "detached" });
    await page.keyboard.press("Escape");
    await page.getByText("season 2028").first().waitFor();
    await expect.poll(() => conflictCount(page)).toBe(3);
    await expect.poll(() => findings().getByText("dates of another season").count()).toBe(0);
    await undo();
    await page.getByText("season 2027").first().waitFor();
    await expect.poll(() => conflictCount(page)).toBe(3);
  });

  test("keeps them, and tells of each instead of clearing by it", async () => {
    await button("Keep them as they are").click();
    await page.keyboard.press("Escape");
    await findings().getByText("has dates of another season").first().waitFor();
    // What was clear by time is not clear now, and no conflict is gone for another year's dates.
    await findings()
      .locator(".finding-open", { hasText: "dates of another season" })
      .first()
      .click();
    await expect.poll(() => findings().innerText()).toMatch(/lies outside the season, 1 \w+ 2028/);
  });

  test("takes them out: nothing is known of when anything flowers", async () => {
    await button("Clear all dates").click();
    await page.keyboard.press("Escape");
    await findings()
      .getByText(/bloom.*not known|no bloom|When .* flowers/i)
      .first()
      .waitFor();
    await expect.poll(() => findings().getByText("dates of another season").count()).toBe(0);
    await undo();
    await expect.poll(() => conflictCount(page)).toBe(3);
  });
});

test("both days of a season are typed, first one first, before anything happens", async () => {
  await pick("Plan", "Plan settings");
  const settings = page.getByRole("dialog", { name: "Plan settings" });
  const season = settings.getByRole("group", { name: "Season", exact: true });
  const type = async (label: string, text: string) => {
    await season.getByLabel(label, { exact: true }).fill(text);
    await page.keyboard.press("Tab");
  };
  await type("First day", "2028-01-01");
  await season.getByText(/Nothing has changed yet: from 1 Jan 2028 to 31 Dec 2027/).waitFor();
  await expect.poll(() => page.getByRole("button", { name: "Undo" }).isDisabled()).toBe(true);
  await type("Last day", "2028-11-30");
  const question = settings.getByRole("group", { name: "What becomes of the dates" });
  await question.waitFor();
  await expect
    .poll(() => question.innerText())
    .toMatch(/Season 2028 is to be 1 Jan 2028 to 30 Nov 2028\. .*plantings have a start/s);
  await expect.poll(() => season.getByLabel("Name", { exact: true }).inputValue()).toBe("2028");
  await question.getByRole("button", { name: "Move all dates 1 year on" }).click();
  await page.keyboard.press("Escape");
  await page.getByText("season 2028").first().waitFor();
  await expect.poll(() => conflictCount(page)).toBe(3);
  // Name, both days and all dates are one step.
  await undo();
  await page.getByText("season 2027").first().waitFor();
  await expect.poll(() => page.getByRole("button", { name: "Undo" }).isDisabled()).toBe(true);
});

test("a finding is lived with for a reason, in this layout, and taken back", async () => {
  const card = findings().locator(".finding").first();
  await card.locator(".finding-open").click();
  await card.getByRole("button", { name: /^Accept/ }).click();
  const form = findings().locator("form");
  await form.getByRole("button", { name: /accept/i }).click();
  await expect
    .poll(() => form.getByRole("alert").innerText())
    .toBe("Type a reason: next year nobody remembers it");
  await expect.poll(() => conflictCount(page)).toBe(3);
  await form.getByRole("textbox").fill("Both are for the kitchen this year");
  await page.keyboard.press("Enter");
  await expect.poll(() => conflictCount(page)).toBe(2);
  await findings().locator(".accepted summary").click();
  await findings().getByText("Accepted because: Both are for the kitchen this year").waitFor();
  // In a layout begun afterwards nothing is accepted; a copy would take it along.
  await findings()
    .getByRole("button", { name: /^Reset: B04-1/ })
    .click();
  await expect.poll(() => conflictCount(page)).toBe(3);
});

describe("a pasted kind whose name this plan has with other figures", () => {
  const here = planOf("Meadow Niger", 5);
  const copied = clipText(planOf("Golden Niger", 300), layoutOf(planOf("Golden Niger", 300)), [
    "p",
  ]);

  beforeEach(async () => {
    await dropFile(page, "here.json", writePlan(here));
    await page.getByText("Meadow Niger").first().waitFor();
    await command("Paste from a text");
    await dialog()
      .getByRole("textbox", { name: "Copied text" })
      .fill(copied ?? "");
    await button("Paste into this layout").click();
    await page.getByRole("heading", { name: "Two kinds of one name" }).waitFor();
  });

  const seedList = () => page.getByRole("region", { name: "Seed list" });

  test("is asked with both figures; nothing is pasted unasked", async () => {
    await expect.poll(() => dialog().innerText()).toMatch(/copied with 300 m .*in this plan 5 m/);
    await expect.poll(() => axeFaults(page)).toEqual([]);
    await button("Cancel").click();
    await dialog().waitFor({ state: "detached" });
    await expect.poll(() => seedList().getByText("Golden Niger").count()).toBe(0);
  });

  test("comes along beside it, with its own distance", async () => {
    await button("Add the copied kinds beside them").click();
    await seedList().getByText("Golden Niger").waitFor();
    await expect.poll(() => seedList().innerText()).toMatch(/Niger seed \(copied\)/i);
    await undo();
    await seedList().getByText("Golden Niger").waitFor({ state: "detached" });
  });

  test("takes this plan's figures", async () => {
    await button(/^Use this plan.s figures$/).click();
    await seedList().getByText("Golden Niger").waitFor();
    await expect.poll(() => seedList().innerText()).not.toMatch(/\(copied\)/i);
  });
});

/** A plan of one planting of an own kind, that both plans number as their first. */
function planOf(name: string, metres: number): Plan {
  const kind: OwnKind = {
    id: "own-kind-1",
    name: "Niger seed",
    group: "niger-seed",
    lifeCycle: "annual",
    carrier: "insects",
    breeding: "outcrossing",
    isolationM: { home: metres },
  };
  const plan = trialPlan({ p: { at: 0, kind: kind.id, variety: { name } } }, [], {
    ownKinds: [kind],
  });
  return { ...plan, id: `plan-${metres}` };
}
