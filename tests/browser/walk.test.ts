/**
 * The walk on a phone in the field: 390 x 844, fingers, no network, a camera and a position made
 * here. What is written down is there again after the page is loaded anew, still without a network.
 */
import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Browser, type BrowserContext, type Page, chromium } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { findChromium } from "../../.config/find-chromium.mjs";
import { localFrame } from "../../src/core/geometry/local-frame.ts";
import { axeFaults } from "./axe.ts";
import { CHROMIUM_ARGS, siteUrl } from "./browser.ts";
import { cameraFilm } from "./camera-picture.ts";
import { openSample, pagePlace } from "./sheet.ts";

interface SamplePlan {
  readonly site: {
    readonly position: { readonly longitude: number; readonly latitude: number };
    readonly upBearingDeg: number;
  };
  readonly layouts: readonly {
    readonly plantings: readonly {
      readonly code: string;
      readonly outline: { readonly x: number; readonly y: number };
    }[];
  }[];
}
const sample = JSON.parse(
  readFileSync(new URL("../../sample-plots/garden-to-solve.json", import.meta.url), "utf8"),
) as SamplePlan;
const frame = localFrame(sample.site.position, sample.site.upBearingDeg);

function middleOf(code: string): { readonly x: number; readonly y: number } {
  const found = sample.layouts[0]?.plantings.find((each) => each.code === code);
  if (!found) throw new Error(`no ${code} in the sample`);
  return found.outline;
}

/** Of the walk's day: the beans have opened early, the carrots' cage has been mended. */
const TODAY = "2027-07-06T09:00:00Z";
/** WCAG 2.2, 1.4.6. */
const LEAST_CONTRAST = 7;
const LEAST_TARGET_PX = 48;

let browser: Browser;
let context: BrowserContext;
let page: Page;

async function openPhone(): Promise<void> {
  const film = join(mkdtempSync(join(tmpdir(), "camera-")), "code.y4m");
  writeFileSync(film, cameraFilm("P:B04-2"));
  browser = await chromium.launch({
    executablePath: findChromium() ?? "",
    args: [
      ...CHROMIUM_ARGS,
      "--use-fake-ui-for-media-stream",
      "--use-fake-device-for-media-stream",
      `--use-file-for-fake-video-capture=${film}`,
    ],
  });
  context = await browser.newContext({
    viewport: { width: 390, height: 844 },
    hasTouch: true,
    isMobile: true,
    permissions: ["geolocation", "camera"],
    geolocation: { ...frame.toLonLat(middleOf("A01-1")), accuracy: 4 },
  });
  page = await context.newPage();
  await page.clock.setFixedTime(TODAY);
  await openSample(page, siteUrl());
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
  await page.waitForFunction(() => navigator.serviceWorker.controller?.state === "activated");
  await context.setOffline(true);
}

const walk = () => page.getByRole("region", { name: "Walk", exact: true });
const heading = () => walk().locator(".walk-code");
const press = (name: string | RegExp) =>
  walk()
    .getByRole("button", typeof name === "string" ? { name, exact: true } : { name })
    .tap();
const record = () => walk().locator(".walk-record");

async function openWalk(): Promise<void> {
  await page.getByRole("button", { name: "Walk", exact: true }).tap();
  await walk().waitFor();
}

async function goTo(code: string | RegExp): Promise<void> {
  await press("More");
  await press("All plots");
  await walk().locator(".walk-near").filter({ hasText: code }).tap();
}

interface Faults {
  readonly contrast: readonly string[];
  readonly targets: readonly string[];
}

/** Reckons every text's contrast against its ground, and measures what can be pressed. */
async function sunFaults(): Promise<Faults> {
  return page.evaluate(
    ([leastContrast, leastPx]) => {
      const part = (value: number) => {
        const share = value / 255;
        return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
      };
      const channels = (colour: string) => (colour.match(/[\d.]+/g) ?? []).map(Number);
      const luminance = ([r = 0, g = 0, b = 0]: readonly number[]) =>
        0.2126 * part(r) + 0.7152 * part(g) + 0.0722 * part(b);
      const ground = (from: Element): string => {
        for (let at: Element | null = from; at; at = at.parentElement) {
          const { backgroundColor } = getComputedStyle(at);
          if ((channels(backgroundColor)[3] ?? 1) > 0) return backgroundColor;
        }
        return "rgb(255, 255, 255)";
      };
      const root = document.querySelector(".walk");
      if (!root) throw new Error("no walk");
      const isSeen = (each: Element) => each.getClientRects().length > 0;
      const contrast: string[] = [];
      for (const each of root.querySelectorAll("*")) {
        const says = [...each.childNodes].some(
          (node) => node.nodeType === Node.TEXT_NODE && (node.textContent ?? "").trim() !== "",
        );
        if (!says || !isSeen(each) || each.closest(":disabled, .visually-hidden")) continue;
        const levels = [getComputedStyle(each).color, ground(each)].map((colour) =>
          luminance(channels(colour)),
        );
        const ratio = (Math.max(...levels) + 0.05) / (Math.min(...levels) + 0.05);
        if (ratio < leastContrast) contrast.push(`${ratio.toFixed(1)}: ${each.textContent ?? ""}`);
      }
      const targets: string[] = [];
      const pressed = "button, select, input:not([type=checkbox]), label:has(input[type=checkbox])";
      for (const each of root.querySelectorAll(pressed)) {
        const { width, height } = each.getBoundingClientRect();
        if (isSeen(each) && Math.min(width, height) < leastPx - 0.01) {
          targets.push(`${width} x ${height}: ${each.textContent ?? ""}`);
        }
      }
      return { contrast, targets };
    },
    [LEAST_CONTRAST, LEAST_TARGET_PX] as const,
  );
}

const NO_FAULTS: Faults = { contrast: [], targets: [] };

async function setTheme(theme: "light" | "dark"): Promise<void> {
  await page.evaluate((choice) => {
    document.documentElement.dataset.theme = choice;
  }, theme);
}

describe("a walk without a network", () => {
  beforeAll(openPhone);
  afterAll(() => browser.close());

  test("begins at the first plot, with what is due there and the day", async () => {
    await openWalk();
    await expect.poll(() => heading().innerText()).toBe("A04-1");
    await expect.poll(() => walk().innerText()).toContain("Tarn Coral");
    await expect.poll(() => walk().innerText()).toContain("Today, Tue 6 Jul");
    await press(/^Next/);
    await expect.poll(() => heading().innerText()).toBe("A03-1");
    await press(/Back$/);
    await expect.poll(() => heading().innerText()).toBe("A04-1");
    await goTo("A01-1");
    await expect.poll(() => walk().innerText()).toContain("First flower seen 19 Jun");
  });

  test("a first flower is one press, plants rogued are counted with large buttons, undo is at hand", async () => {
    await goTo("B01-1");
    await press("First flower");
    await expect.poll(() => record().innerText()).toContain("Tue 6 Jul: First flower");
    await press("Rogued");
    await press("Plants: Ten more");
    await press("Plants: One fewer");
    await press("Plants: One fewer");
    await press("off-type");
    await expect.poll(() => sunFaults()).toEqual(NO_FAULTS);
    await press("Add");
    await expect.poll(() => record().innerText()).toContain("Rogued, 8 plants: off-type");
    await expect.poll(() => walk().innerText()).toContain("2 plants");
    // Too few are left: told at once, on the plot it is about.
    await expect
      .poll(() => walk().locator(".walk-news").innerText())
      .toMatch(/Old Ferry: 2 of \d+ seed plants/);
    await expect.poll(() => sunFaults()).toEqual(NO_FAULTS);
    await press(/^Undo/);
    await expect.poll(() => record().innerText()).not.toContain("Rogued");
    await expect.poll(() => record().innerText()).toContain("First flower");
    await press("Rogued");
    await walk().getByLabel("Plants", { exact: true }).fill("3");
    await press("Add");
    await expect.poll(() => record().innerText()).toContain("Rogued, 3 plants");
  });

  test("a name is typed once and goes with what is written after", async () => {
    await press(/Type your name once/);
    const dialog = page.getByRole("dialog", { name: "Your name" });
    await dialog.getByLabel("Your name").fill("Mara");
    await dialog.getByRole("button", { name: "Apply", exact: true }).tap();
    await press("Note");
    await walk().getByRole("textbox", { name: "Note" }).fill("string is loose");
    // Going on would drop what is typed: it says so and stays.
    await press(/^Next/);
    await expect.poll(() => walk().locator(".walk-said").innerText()).toContain("not added yet");
    await press("Add");
    await expect.poll(() => record().innerText()).toContain("Note: string is loose, Mara");
  });

  test("jobs of the week are ticked, counted where it counts, and say by whom", async () => {
    await goTo("B03-1");
    const jobs = walk().locator(".walk-card");
    await jobs.getByRole("checkbox", { name: /Rogue B03-1/ }).tap();
    await press("Plants: One more");
    await press("Add");
    await expect.poll(() => jobs.innerText()).toMatch(/Rogue B03-1.*done 6 Jul, Mara/);
    await jobs.getByRole("checkbox", { name: /when you see the first flower open/ }).tap();
    await expect.poll(() => jobs.innerText()).toMatch(/begins to flower.*done 6 Jul, Mara/);
    await expect.poll(() => record().innerText()).toContain("Rogued, 1 plant");
  });

  test("jobs of the week are listed for all plots, and ticked there too", async () => {
    await press("More");
    await press("Jobs of the week");
    const jobs = walk().getByRole("group", { name: "Jobs of the week" });
    const rogue = jobs.getByRole("checkbox", { name: /Rogue B02-1/ });
    await expect.poll(() => sunFaults()).toEqual(NO_FAULTS);
    await expect.poll(() => axeFaults(page)).toEqual([]);
    await rogue.tap();
    // It is counted at its plot.
    await expect.poll(() => heading().innerText()).toBe("B02-1");
    await press("Add");
    await expect.poll(() => record().innerText()).toContain("Rogued, Mara");
    await press("More");
    await press("Jobs of the week");
    await expect.poll(() => rogue.count()).toBe(0);
    await press("Close");
  });

  test("a stake's code leads to its plot", async () => {
    await press("More");
    await press("Scan");
    await expect.poll(() => heading().innerText()).toBe("B04-2");
    await expect.poll(() => page.getByRole("dialog").count()).toBe(0);
  });

  test("the position is asked for by a press only, and offers the nearest plots", async () => {
    await press("More");
    await press("Where I stand");
    await expect.poll(() => walk().locator(".walk-near").count()).toBe(0);
    await press("Ask the phone where I stand");
    await walk().getByText("Known to within").waitFor();
    const nearest = walk().locator(".walk-near").first();
    await expect.poll(() => nearest.innerText()).toContain("A01-1");
    await expect.poll(() => nearest.innerText()).toContain("you stand in it");
    await expect.poll(() => sunFaults()).toEqual(NO_FAULTS);
    await nearest.tap();
    await expect.poll(() => heading().innerText()).toBe("A01-1");
  });

  test("a plant found in flower: its kind first, what it endangers, then it is placed", async () => {
    await press("More");
    await press("A plant flowers here");
    await press("Common bean");
    const danger = walk().getByRole("status").filter({ hasText: "What it endangers" });
    await expect.poll(() => danger.innerText()).toContain("A01-1 Kettle Dun: not clear");
    await expect.poll(() => axeFaults(page)).toEqual([]);
    await expect.poll(() => sunFaults()).toEqual(NO_FAULTS);
    await press("Add");
    await expect.poll(() => heading().innerText()).toBe("Common bean found 6 Jul");
    await expect.poll(() => record().innerText()).toContain("found in flower");
  });

  test("where I stand is on the sheet until it is stopped", async () => {
    await press("More");
    await press("Where I stand");
    await press("Show it on the sheet");
    await page.getByRole("button", { name: "Stop asking" }).tap();
    await expect.poll(() => page.locator(".place-line").count()).toBe(0);
  });

  test("all of it is kept when the page is loaded anew, still without a network", async () => {
    await page.getByText(/^Saved /).waitFor({ state: "attached" });
    await page.reload();
    await page.locator(".finding").first().waitFor({ state: "attached" });
    await openWalk();
    await goTo("B01-1");
    const said = await record().innerText();
    expect(said).toContain("First flower");
    expect(said).toContain("Rogued, 3 plants");
    expect(said).toContain("string is loose, Mara");
    await goTo(/found 6 Jul/);
    await expect.poll(() => heading().innerText()).toBe("Common bean found 6 Jul");
  });

  test("can be read in the sun in both themes, and has targets for wet fingers", async () => {
    for (const theme of ["light", "dark"] as const) {
      await setTheme(theme);
      for (const open of [null, "More", "All plots"]) {
        if (open !== null) await press(open);
        await expect
          .poll(() => sunFaults(), { message: `${theme} ${open ?? "card"}` })
          .toEqual(NO_FAULTS);
        await expect
          .poll(() => axeFaults(page), { message: `${theme} ${open ?? "card"}` })
          .toEqual([]);
      }
      await press("Close");
    }
    await setTheme("light");
  });

  test("a tap on the sheet says what is here and changes nothing", async () => {
    await press("Leave the walk");
    const title = () => page.getByLabel("Plan title").inputValue();
    const before = await title();
    const at = await pagePlace(page, middleOf("A01-1"));
    await page.touchscreen.tap(at.x, at.y);
    const card = page.getByRole("region", { name: "What is here" });
    await card.waitFor();
    await expect.poll(() => axeFaults(page)).toEqual([]);
    await expect.poll(() => card.innerText()).toMatch(/^A01-1 Kettle Dun, common bean\s/);
    await expect.poll(() => card.innerText()).toContain("For seed: do not pick.");
    await expect.poll(() => card.locator("input, select, textarea").count()).toBe(0);
    await expect.poll(() => title()).toBe(before);
    await card.getByRole("button", { name: "Walk here" }).tap();
    await walk().waitFor();
  });
});

test("without leave it says so, and a plant is measured from a plot", async () => {
  await openPhone();
  try {
    await context.clearPermissions();
    await openWalk();
    await press("More");
    await press("Where I stand");
    await press("Ask the phone where I stand");
    await walk().getByText("was not allowed").waitFor();
    await press("Close");
    await press("More");
    await press("A plant flowers here");
    await press("Tomato");
    await walk().getByLabel("Where?").selectOption({ label: "B01-1" });
    await walk().getByLabel("Distance").fill("3 m");
    await walk().getByLabel("Distance").press("Enter");
    const danger = walk().getByRole("status").filter({ hasText: "What it endangers" });
    await expect.poll(() => danger.innerText()).toContain("B01-1 Old Ferry");
    await press("Add");
    await expect.poll(() => heading().innerText()).toBe("Tomato found 6 Jul");
  } finally {
    await browser.close();
  }
});
