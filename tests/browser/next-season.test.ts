/** Three seasons in a row in a real browser, by the steps a grower takes each winter. */
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { Plan } from "../../src/core/model/plan.ts";
import { writePlan } from "../../src/core/model/read-plan.ts";
import { day, source, trialPlan } from "../support/trial-plan.ts";
import { axeFaults } from "./axe.ts";
import { launchBrowser, siteUrl } from "./browser.ts";
import { dropFile } from "./drop-file.ts";
import { openSample } from "./sheet.ts";

const bedAt = (x: number, code: string) => ({
  id: `bed-${code}`,
  code,
  outline: { shape: "rectangle" as const, x, y: 5, widthM: 1.2, lengthM: 8, turnDeg: 0 },
});
const whole = (x: number) => bedAt(x, "").outline;

/** Mustard for seed, kale and carrot in their first year, a neighbour's beet. */
function firstPlan(): Plan {
  const sown = (on: string) => ({ method: "sown" as const, date: day(on) });
  const plan = trialPlan(
    {
      m: {
        at: 0,
        kind: "mustard",
        code: "A01-1",
        outline: whole(0),
        bed: "bed-A01",
        bloom: null,
        start: sown("2027-04-10"),
        plants: 80,
        variety: { name: "Fen Fire" },
      },
      k: {
        at: 0,
        kind: "kale",
        code: "A02-1",
        outline: whole(3),
        bed: "bed-A02",
        bloom: null,
        flowering: "first-year",
        start: sown("2027-06-10"),
        plants: 30,
        variety: { name: "Grey Fold" },
      },
      c: {
        at: 0,
        kind: "carrot",
        code: "A03-1",
        outline: whole(6),
        bed: "bed-A03",
        bloom: null,
        flowering: "first-year",
        start: sown("2027-05-20"),
        plants: 64,
        variety: { name: "Long Meadow" },
      },
    },
    [
      source("n", "beet", { shape: "point", x: 30, y: 5 }, { label: "Beets next door" }),
      source(
        "w",
        "wild-carrot",
        { shape: "point", x: -30, y: 5 },
        { label: "By the road", everyYear: true },
      ),
    ],
    {
      id: "three-seasons-2027",
      title: "Three seasons 2027",
      site: {
        name: "Garden",
        upBearingDeg: 0,
        lastSpringFrost: day("2027-05-10"),
        firstAutumnFrost: day("2027-10-12"),
      },
    },
  );
  const [layout] = plan.layouts;
  if (!layout) throw new Error("no layout");
  const beds = [bedAt(0, "A01"), bedAt(3, "A02"), bedAt(6, "A03"), bedAt(9, "A04")];
  return { ...plan, layouts: [{ ...layout, beds }] };
}

describe("three seasons in a row", () => {
  let browser: Browser;
  let page: Page;
  const dialog = () => page.getByRole("dialog");
  const title = () => page.getByLabel("Plan title").inputValue();
  const fromMenu = async (item: string) => {
    await page.getByRole("button", { name: "Plan", exact: true }).click();
    await page.locator(".menu").getByRole("button", { name: item, exact: true }).click();
  };
  const startNext = async (year: number) => {
    await fromMenu("Start the next season ...");
    await page.getByRole("heading", { name: `The season after ${year}`, level: 2 }).waitFor();
  };
  const make = async (year: number) => {
    await dialog()
      .getByRole("button", { name: `Make the plan of season ${year}` })
      .click();
    await expect.poll(title).toBe(`Three seasons ${year}`);
    await page.getByText(/^Saved /).waitFor();
  };
  const cropRows = async () => {
    await fromMenu("Earlier crops");
    const rows = page.getByRole("region", { name: "Crops" }).locator("tbody tr");
    await rows.first().waitFor();
    const texts = await rows.allInnerTexts();
    await page.keyboard.press("Escape");
    return texts.map((text) => text.replaceAll(/\s+/g, " "));
  };

  beforeAll(async () => {
    browser = await launchBrowser();
    page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
    page.setDefaultTimeout(10_000);
    await openSample(page, siteUrl());
    await dropFile(page, "three.json", writePlan(firstPlan()));
    await expect.poll(title).toBe("Three seasons 2027");
    await page.getByText(/^Saved /).waitFor();
  });
  afterAll(() => browser.close());

  test("nothing is made while it is only looked at", async () => {
    await startNext(2027);
    expect(await axeFaults(page)).toEqual([]);
    await page.keyboard.press("Escape");
    await fromMenu("Kept plans ...");
    await dialog().getByText("Three seasons 2027").waitFor();
    expect(await dialog().getByText("Three seasons 2028").count()).toBe(0);
    await page.keyboard.press("Escape");
  });

  test("the first winter: kale stays in the ground, carrots go into store", async () => {
    await startNext(2027);
    const fate = (code: string) => dialog().getByLabel(`${code}: what became of it`);
    expect(await fate("A01-1").inputValue()).toBe("over");
    expect(await fate("A02-1").inputValue()).toBe("standing");
    expect(await fate("A03-1").inputValue()).toBe("lifted");
    expect(await dialog().getByLabel("A01-1: seed shed").inputValue()).toBe("yes");
    expect(await dialog().getByLabel("Beets next door: next season").inputValue()).toBe("ask");
    expect(await dialog().getByLabel("By the road: next season").inputValue()).toBe("same");
    await dialog()
      .getByText(/Long Meadow: In store over winter.*64 plants of A03-1/)
      .waitFor();
    await make(2028);
    const rows = await cropRows();
    expect(rows).toHaveLength(2);
    expect(rows.join("\n")).toMatch(/2027 mustard Fen Fire.*\n?.*2027 carrot Long Meadow/);
  });

  test("the second year: what stood over winter and what was in store are there", async () => {
    await page
      .getByRole("tab", { name: "Tables" })
      .or(page.getByRole("button", { name: "Tables" }))
      .first()
      .click();
    await page.getByText("A02-1").first().waitFor();
  });
});
