/** Outlines from GPS and map programs, in a real browser. */
import { readFileSync } from "node:fs";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { Plan } from "../../src/core/model/plan.ts";
import { axeFaults } from "./axe.ts";
import { launchBrowser, siteUrl } from "./browser.ts";
import { openSample } from "./sheet.ts";

const GPX = `<?xml version="1.0"?><gpx version="1.1" xmlns="http://www.topografix.com/GPX/1/1">
  <trk><name>North fence</name><trkseg>
    <trkpt lat="LAT0" lon="LON0"/><trkpt lat="LAT1" lon="LON0"/></trkseg></trk>
  ${[1, 2, 3, 4].map((corner) => `<wpt lat="LAT${corner % 3 === 1 ? 0 : 1}" lon="LON${corner < 3 ? 0 : 1}"><name>N1 ${corner}</name></wpt>`).join("")}
</gpx>`;

describe("outlines from a file", () => {
  let browser: Browser;
  let page: Page;
  const dialog = () => page.getByRole("dialog");

  async function savedPlan(): Promise<Plan> {
    const download = page.waitForEvent("download");
    await page.keyboard.press("Control+s");
    return JSON.parse(readFileSync(await (await download).path(), "utf8")) as Plan;
  }
  async function open(name: string, text: string): Promise<void> {
    await page.getByRole("button", { name: "Plan", exact: true }).click();
    await page.getByText("Outlines from GPS or a map program").click();
    await choose(name, text);
  }
  const choose = (name: string, text: string) =>
    dialog()
      .locator("input[type=file]")
      .setInputFiles({ name, mimeType: "application/gpx+xml", buffer: Buffer.from(text) });
  const near = (text: string, { latitude, longitude }: NonNullable<Plan["site"]["position"]>) =>
    text
      .replaceAll("LAT0", latitude.toFixed(7))
      .replaceAll("LON0", longitude.toFixed(7))
      .replaceAll("LAT1", (latitude + 0.0002).toFixed(7))
      .replaceAll("LON1", (longitude + 0.0002).toFixed(7));

  beforeAll(async () => {
    browser = await launchBrowser();
    page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
    // Without this the browser asks where to save, in a window of its own.
    await page.addInitScript(() => {
      for (const name of ["showOpenFilePicker", "showSaveFilePicker"]) {
        Reflect.deleteProperty(window, name);
      }
    });
    await openSample(page, siteUrl());
  });
  afterAll(() => browser.close());

  test("what the file holds is listed, said what it becomes, and taken as one step", async () => {
    const before = await savedPlan();
    if (!before.site.position) throw new Error("The sample has no position.");
    await open("field.gpx", near(GPX, before.site.position));
    const rows = dialog().getByRole("row");
    await expect.poll(() => rows.count()).toBe(1 + 6);
    await expect
      .poll(() => rows.nth(1).innerText())
      .toMatch(/N1\s+numbered waypoints, 4 places, drawn as a/);
    await dialog().getByLabel("What number 2 becomes").selectOption("a fence");
    await dialog().getByLabel("Width of number 2").fill("1 ft");
    await dialog().getByLabel("Width of number 2").press("Enter");
    await dialog().getByLabel("All points become").selectOption("a tree");
    await dialog().getByRole("button", { name: "Add 6 outlines" }).waitFor();
    await dialog().getByLabel("All points become").selectOption("nothing: skipped");
    await expect.poll(() => axeFaults(page)).toEqual([]);
    await dialog().getByRole("button", { name: "Add 2 outlines" }).click();
    const after = await savedPlan();
    expect(after.surroundings.at(-1)).toMatchObject({ what: "fence", label: "North fence" });
    expect(after.layouts[0]?.beds.at(-1)?.code).toBe("N1");
    await page.keyboard.press("Control+z");
    expect(await savedPlan()).toEqual(before);
  });

  test("a file that cannot be read says where, a long one is read apart", async () => {
    await open("broken.gpx", '<gpx>\n<wpt lat="95" lon="7"/></gpx>');
    await dialog()
      .getByText(/broken\.gpx: gpx > wpt\[1\].*latitude from -90 to 90/)
      .waitFor();
    const track = Array.from({ length: 20_000 }, (_, index) => {
      const turn = (index * 2 * Math.PI) / 20_000;
      return `<trkpt lat="${(50 + 0.001 * Math.sin(turn)).toFixed(7)}" lon="${(7 + 0.001 * Math.cos(turn)).toFixed(7)}"/>`;
    });
    await choose("long.gpx", `<gpx><trk><trkseg>${track.join("")}</trkseg></trk></gpx>`);
    await dialog().getByLabel("What number 1 becomes").selectOption("a bed");
    await dialog()
      .getByText(/lies \d+ km from the site/)
      .first()
      .waitFor();
    await expect
      .poll(() => dialog().getByRole("button", { name: "Add 1 outline" }).isDisabled())
      .toBe(true);
    await dialog().getByRole("button", { name: "Cancel", exact: true }).click();
  });
});
