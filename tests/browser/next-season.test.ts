/** Three seasons in a row in a real browser, by the steps a grower takes each winter. */
import { readFileSync } from "node:fs";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { Plan } from "../../src/core/model/plan.ts";
import { writePlan } from "../../src/core/model/read-plan.ts";
import { day, source, trialPlan } from "../support/trial-plan.ts";
import { axeFaults } from "./axe.ts";
import { launchBrowser, siteUrl } from "./browser.ts";
import { dropFile } from "./drop-file.ts";
import { openSample } from "./sheet.ts";

/** A plan as its file has it, dates being text. */
type Filed = Pick<Plan, "cameFrom" | "earlierCrops" | "surroundings" | "layouts" | "lots">;

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
        plants: 20,
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
  const varieties = [
    ...plan.varieties,
    { id: "v-e", name: "Ember Leaf", kind: "mustard", wantedPlants: 80 },
  ];
  return { ...plan, varieties, layouts: [{ ...layout, beds }] };
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

  const findings = () => page.getByRole("region", { name: "Findings" });
  const openKept = async (name: string) => {
    await fromMenu("Kept plans ...");
    const kept = dialog().getByRole("listitem").filter({ hasText: name });
    await kept.getByRole("button", { name: "Open", exact: true }).click();
    await expect.poll(title).toBe(name);
  };
  const inTables = async (code: string, words: RegExp) => {
    await page.getByRole("button", { name: "Tables", exact: true }).click();
    const row = page.getByRole("row").filter({ hasText: code }).filter({ hasText: words });
    await row.first().waitFor();
    await page.getByRole("button", { name: "Sheet", exact: true }).click();
  };
  const place = async (name: string, bed: string) => {
    await page.getByRole("button", { name: `Place ${name} in a bed` }).click();
    const id = await dialog()
      .getByLabel("In bed")
      .locator("option", { hasText: bed })
      .getAttribute("value");
    await dialog().getByLabel("In bed").selectOption(id);
    await dialog().getByRole("button", { name: "Place", exact: true }).click();
  };
  /** The plan's file, as it is downloaded. */
  const savedPlan = async () => {
    const [download] = await Promise.all([page.waitForEvent("download"), fromMenu("Save file")]);
    const path = await download.path();
    return JSON.parse(readFileSync(path, "utf8")) as Filed;
  };

  beforeAll(async () => {
    browser = await launchBrowser();
    page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
    page.setDefaultTimeout(20_000);
    // Files are downloaded, as in browsers without a picker of files.
    await page.addInitScript(() => {
      for (const name of ["showOpenFilePicker", "showSaveFilePicker"]) {
        Reflect.deleteProperty(window, name);
      }
    });
    await openSample(page, siteUrl());
    await dropFile(page, "three.json", writePlan(firstPlan()));
  });
  afterAll(() => browser.close());

  test("nothing is made while it is only looked at", async () => {
    await expect.poll(title).toBe("Three seasons 2027");
    await page.getByText(/^Saved /).waitFor();
    await startNext(2027);
    await expect.poll(() => axeFaults(page)).toEqual([]);
    await page.keyboard.press("Escape");
    await fromMenu("Kept plans ...");
    await dialog().getByText("Three seasons 2027").waitFor();
    await expect.poll(() => dialog().getByText("Three seasons 2028").count()).toBe(0);
    await page.keyboard.press("Escape");
  });

  test("the first winter: kale stays in the ground, carrots go into store", async () => {
    await startNext(2027);
    const fate = (code: string) => dialog().getByLabel(`${code}: what became of it`);
    await expect.poll(() => fate("A01-1").inputValue()).toBe("over");
    await expect.poll(() => fate("A02-1").inputValue()).toBe("standing");
    await expect.poll(() => fate("A03-1").inputValue()).toBe("lifted");
    await expect.poll(() => dialog().getByLabel("A01-1: seed shed").inputValue()).toBe("yes");
    await expect
      .poll(() => dialog().getByLabel("Beets next door: next season").inputValue())
      .toBe("ask");
    await expect
      .poll(() => dialog().getByLabel("By the road: next season").inputValue())
      .toBe("same");
    await dialog()
      .getByText(/Long Meadow: In store over winter.*20 plants of A03-1/)
      .waitFor();
    await make(2028);
    const rows = await cropRows();
    expect(rows).toHaveLength(2);
    expect(rows.join("\n")).toMatch(/2027 mustard Fen Fire.*\n?.*2027 carrot Long Meadow/);
  });

  test("the same season is not started twice: the plan that is there is named", async () => {
    await openKept("Three seasons 2027");
    await startNext(2027);
    const alert = dialog().getByRole("alert");
    await alert.getByText(/"Three seasons 2028" was started from this plan already/).waitFor();
    const button = dialog().getByRole("button", { name: "Make the plan of season 2028" });
    await expect.poll(() => button.isDisabled()).toBe(true);
    // Seasons that overlap are told as well, and nothing is made of them.
    const first = dialog().getByLabel("First day");
    await first.fill("2027-07-01");
    await first.press("Tab");
    await alert.getByText(/Season 2027 runs until 31 Dec 2027/).waitFor();
    await dialog().getByRole("button", { name: "Open Three seasons 2028" }).click();
    await expect.poll(title).toBe("Three seasons 2028");
  });

  test("the second year: roots are set out and flower; what shed seed may come up", async () => {
    // The kale stands where it stood, locked.
    await inTables("A02-1", /Grey Fold/);
    await place("Long Meadow", "A04");
    await inTables("A04-1", /Long Meadow/);
    // Set out four weeks before the last frost, it flowers this year.
    await page.getByText(/A04-1/).first().waitFor();
    await place("Ember Leaf", "A01");
    await findings()
      .locator(".finding-open", { hasText: /[Vv]olunteers .*A01-1/ })
      .first()
      .click();
    await page.getByText(/^Saved /).waitFor();
    const plan = await savedPlan();
    const planting = (code: string) =>
      plan.layouts[0]?.plantings.find((each) => each.code === code);
    expect(planting("A02-1")).toMatchObject({ locked: true, flowering: "yes", plants: 30 });
    expect(planting("A04-1")).toMatchObject({
      plants: 20,
      start: { method: "transplanted", date: "2028-04-12" },
    });
    expect(plan.surroundings.map(({ bloom }) => bloom)).toEqual([
      undefined,
      { first: "2028-07-01", last: "2028-07-31" },
    ]);
  });

  test("the third winter: both biennials have shed their seed, each on its ground", async () => {
    await startNext(2028);
    await expect
      .poll(() => dialog().getByLabel("A02-1: what became of it").inputValue())
      .toBe("over");
    await expect.poll(() => dialog().getByLabel("A02-1: seed shed").inputValue()).toBe("yes");
    await make(2029);
    const rows = (await cropRows()).join("\n");
    for (const crop of [
      "2028 kale Grey Fold",
      "2028 carrot Long Meadow",
      "2028 mustard Ember Leaf",
    ]) {
      expect(rows).toContain(crop);
    }
    for (const crop of ["2027 mustard Fen Fire", "2027 carrot Long Meadow"]) {
      expect(rows).toContain(crop);
    }
    // Ground that bore mustard twice is not for the first one again.
    await place("Fen Fire", "A01");
    await findings()
      .locator(".finding-open", { hasText: /[Vv]olunteers .*A01-1/ })
      .first()
      .click();
    await findings()
      .getByText(/may wait in the ground of A01-1/)
      .first()
      .waitFor();
    const { cameFrom, earlierCrops } = await savedPlan();
    expect(cameFrom).toMatchObject({ title: "Three seasons 2028", season: "2028" });
    const seeds = earlierCrops.map(
      ({ year, kind, wentToSeed }) => `${year} ${kind} ${wentToSeed ?? ""}`,
    );
    expect(seeds.toSorted()).toEqual([
      "2027 carrot no",
      "2027 mustard yes",
      "2028 carrot yes",
      "2028 kale yes",
      "2028 mustard yes",
    ]);
  });

  test("lots that reach last season's shelf in winter are taken over in one step", async () => {
    await openKept("Three seasons 2028");
    await page.getByRole("button", { name: "Lots", exact: true }).click();
    await page.getByRole("button", { name: "Add a lot", exact: true }).first().click();
    await dialog().getByLabel("Code", { exact: true }).fill("EL-28");
    await dialog().getByLabel("Variety").selectOption({ label: "Ember Leaf" });
    await dialog().getByRole("button", { name: "Add the lot" }).click();
    await page.getByText("EL-28").first().waitFor();
    await page.getByText(/^Saved /).waitFor();
    await openKept("Three seasons 2029");
    await fromMenu("Add lots of the season before ...");
    await dialog().getByText(/EL-28/).waitFor();
    await expect.poll(() => axeFaults(page)).toEqual([]);
    await dialog().getByRole("button", { name: "Add 1 lot" }).click();
    await page.getByText("EL-28").first().waitFor();
    expect((await savedPlan()).lots.map(({ code }) => code)).toEqual(["EL-28"]);
    await fromMenu("Add lots of the season before ...");
    await dialog().getByText("Every lot of it is on this shelf already.").waitFor();
  });
});
