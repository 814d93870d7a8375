/** The picture under the drawing in a real browser: what is kept of a photo, its scale, its print. */
import { readFileSync } from "node:fs";
import type { Browser, Download, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { pictureHeader } from "../../src/core/model/picture-header.ts";
import type { Picture, Plan } from "../../src/core/model/plan.ts";
import { emptyPng } from "../support/png.ts";
import { axeFaults } from "./axe.ts";
import { launchBrowser, siteUrl } from "./browser.ts";
import { dropFile } from "./drop-file.ts";
import { jpegSegments, withCameraNotes } from "./exif-photo.ts";
import { dragOnSheet, openSample, pagePlace } from "./sheet.ts";

const APP1 = 0xe1;

/** A photo of so many dots, noisy enough that it does not shrink to nothing. */
async function photo(page: Page, width: number, height: number): Promise<Uint8Array> {
  const base64 = await page.evaluate(
    ([across, down]) => {
      const canvas = Object.assign(document.createElement("canvas"), {
        width: across,
        height: down,
      });
      const context = canvas.getContext("2d");
      for (let step = 0; step < 4000; step += 1) {
        if (!context) break;
        context.fillStyle = `hsl(${(step * 37) % 360} 60% ${30 + ((step * 7) % 50)}%)`;
        context.fillRect((step * 131) % (across ?? 1), (step * 71) % (down ?? 1), 90, 60);
      }
      return canvas.toDataURL("image/jpeg", 0.9).split(",")[1] ?? "";
    },
    [width, height],
  );
  return new Uint8Array(Buffer.from(base64, "base64"));
}

/** Whether it is the season's paper: labels are files of their own, and those of the last may come late. */
const isSheets = (download: Download) => !/stakes|packets/.test(download.suggestedFilename());

describe("the picture under the drawing", () => {
  let browser: Browser;
  let page: Page;

  /** The plan as a file that is sent on. */
  async function savedPlan(): Promise<{ plan: Plan; text: string }> {
    const download = page.waitForEvent("download");
    await page.keyboard.press("Control+s");
    const text = readFileSync(await (await download).path(), "utf8");
    return { plan: JSON.parse(text) as Plan, text };
  }
  async function savedPicture(): Promise<Picture> {
    const { picture } = (await savedPlan()).plan;
    if (!picture) throw new Error("The plan holds no picture.");
    return picture;
  }
  async function choose(name: string, bytes: Uint8Array): Promise<void> {
    await panel()
      .locator("input[type=file]")
      .setInputFiles({ name, mimeType: "image/jpeg", buffer: Buffer.from(bytes) });
  }
  const panel = () => page.getByRole("region", { name: "Picture under the drawing" });

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
    await page.getByRole("button", { name: "Plan", exact: true }).click();
    await page.getByText("Picture under the drawing", { exact: true }).click();
  });
  afterAll(() => browser.close());

  test("a phone's photo is made small, upright, and loses where it was taken", async () => {
    const bytes = withCameraNotes(await photo(page, 4000, 3000));
    expect(jpegSegments(bytes)).toContain(APP1);
    await choose("field.jpg", bytes);
    await expect
      .poll(() => panel().innerText())
      .toMatch(/4000 × 3000 pixels, [\d.]+ MB\. Kept as 1500 × 2000 pixels/);
    const picture = await savedPicture();
    const kept = new Uint8Array(Buffer.from(picture.data, "base64"));
    expect(pictureHeader(kept)).toEqual({
      mediaType: "image/jpeg",
      widthPx: 1500,
      heightPx: 2000,
    });
    expect(jpegSegments(kept)).not.toContain(APP1);
    expect(Buffer.from(kept).includes("Exif")).toBe(false);
    expect(picture.data.length).toBeLessThan(1_400_001);
    await expect.poll(() => axeFaults(page)).toEqual([]);
  });

  test("it lies under everything that is drawn", async () => {
    /** Share of each layer that is painted, the lowest layer first. */
    const painted = () =>
      page.evaluate(() =>
        [...document.querySelectorAll<HTMLCanvasElement>(".sheet canvas")].map((canvas) => {
          const { width, height } = canvas;
          // Nothing to draw, no room.
          if (width === 0) return 0;
          const dots = canvas.getContext("2d")?.getImageData(0, 0, width, height).data ?? [];
          let count = 0;
          for (let at = 3; at < dots.length; at += 4) if ((dots[at] ?? 0) > 100) count += 1;
          return (4 * count) / dots.length;
        }),
      );
    await expect.poll(async () => (await painted())[0] ?? 0).toBeGreaterThan(0.3);
    const [, ...above] = await painted();
    expect(above.length).toBeGreaterThan(1);
    for (const share of above) expect(share).toBeLessThan(0.3);
  });

  test("a known length sets its scale, in any unit, with what comes of it said before", async () => {
    const before = await savedPicture();
    await panel().getByRole("button", { name: "Mark a length" }).click();
    await dragOnSheet(page, { x: 2, y: 2 }, { x: 6, y: 2 });
    const field = panel().getByLabel("Length between the marks");
    await field.fill("0");
    await expect.poll(() => panel().innerText()).toContain("A length must be more than nothing");
    await field.fill("80 dm");
    await expect
      .poll(() => panel().getByRole("button", { name: "Scale the picture" }).isDisabled())
      .toBe(true);
    await field.fill("26' 3\"");
    await expect.poll(() => panel().innerText()).toMatch(/becomes 2 times larger: [\d.]+ m wide/);
    await field.press("Enter");
    // 26 ft 3 in are 8.001 m, marked over 4 m of sheet.
    const after = await savedPicture();
    expect(after.metresPerPixel / before.metresPerPixel).toBeCloseTo(8.001 / 4, 1);
    await page.keyboard.press("Control+z");
    expect(await savedPicture()).toEqual(before);
  });

  test("it is dragged, typed, locked and hidden; other tools never touch it", async () => {
    const before = await savedPicture();
    await panel().getByRole("button", { name: "Move it by dragging" }).click();
    await dragOnSheet(page, { x: 3, y: 3 }, { x: 5, y: 4 });
    const moved = await savedPicture();
    expect(moved.x - before.x).toBeCloseTo(2, 1);
    expect(moved.y - before.y).toBeCloseTo(1, 1);
    await panel().getByRole("button", { name: "Move it by dragging" }).click();
    await panel().getByLabel("Turn").fill("12,5");
    await panel().getByLabel("Turn").press("Enter");
    await panel().getByLabel("Width on the ground").fill("60 m");
    await panel().getByLabel("Width on the ground").press("Enter");
    const typed = await savedPicture();
    expect(typed.turnDeg).toBe(12.5);
    expect(typed.metresPerPixel * typed.widthPx).toBeCloseTo(60, 9);
    await panel().getByLabel("Locked: stays where and as it is").check();
    await expect.poll(() => panel().getByLabel("Turn").count()).toBe(0);
    await panel().getByLabel("Hidden", { exact: true }).check();
    expect(await savedPicture()).toMatchObject({ locked: true, isHidden: true });
    await panel().getByLabel("Hidden", { exact: true }).uncheck();
    await panel().getByLabel("Locked: stays where and as it is").uncheck();
  });

  test("it is on paper only when that is asked for", async () => {
    const isPrinted = panel().getByLabel("Printed on plot maps too");
    await isPrinted.uncheck();
    const pdfSize = async () => {
      await page.getByRole("button", { name: "Paper", exact: true }).first().click();
      const dialog = page.getByRole("dialog");
      const [download] = await Promise.all([
        page.waitForEvent("download", { predicate: isSheets }),
        dialog.getByRole("button", { name: /^Save as PDF/ }).click(),
      ]);
      const bytes = readFileSync(await download.path());
      await dialog.getByRole("button", { name: "Close" }).click();
      return { size: bytes.length, hasPicture: bytes.includes("/Subtype /Image") };
    };
    const without = await pdfSize();
    expect(without.hasPicture).toBe(false);
    await isPrinted.check();
    const printed = await pdfSize();
    expect(printed.hasPicture).toBe(true);
    expect(printed.size - without.size).toBeGreaterThan(50_000);
  });

  test("what is no picture, or would swell, is refused in words and changes nothing", async () => {
    const before = await savedPicture();
    await choose("notes.jpg", new TextEncoder().encode("no picture"));
    await panel().getByText("notes.jpg is no JPEG, PNG or WebP picture.").waitFor();
    // A PNG whose header asks for 30,000 by 30,000 dots.
    const bomb = new Uint8Array(64);
    bomb.set([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13]);
    bomb.set(new TextEncoder().encode("IHDR"), 12);
    new DataView(bomb.buffer).setUint32(16, 30_000);
    new DataView(bomb.buffer).setUint32(20, 30_000);
    await choose("bomb.png", bomb);
    await panel().getByText("bomb.png, 30000 × 30000 pixels, is too large").waitFor();
    const damaged = (await photo(page, 200, 100)).slice(0, 400);
    await choose("damaged.jpg", damaged);
    await panel()
      .getByText(/damaged\.jpg is/)
      .waitFor();
    expect(await savedPicture()).toEqual(before);
  });

  test("removing it is one step that undo takes back", async () => {
    const before = await savedPicture();
    await panel().getByRole("button", { name: "Delete the picture" }).click();
    expect((await savedPlan()).plan.picture).toBeUndefined();
    await page.keyboard.press("Control+z");
    expect(await savedPicture()).toEqual(before);
  });

  test("a printed PNG that can be seen through is on the map, under the page's own policy", async () => {
    const other = await browser.newPage({ viewport: { width: 1280, height: 900 } });
    other.setDefaultTimeout(20_000);
    const faults: string[] = [];
    other.on("pageerror", (error) => faults.push(error.message));
    other.on("console", (message) => {
      if (message.type() === "error") faults.push(message.text());
    });
    await openSample(other, siteUrl());
    const plan = JSON.parse(readFileSync("sample-plots/garden-solved.json", "utf8")) as Plan;
    const picture: Picture = {
      name: "sketch.png",
      data: emptyPng(10, 10, "see-through", 90).toString("base64"),
      mediaType: "image/png",
      widthPx: 10,
      heightPx: 10,
      x: 0,
      y: 0,
      metresPerPixel: 1,
      turnDeg: 0,
      opacity: 1,
      isPrinted: true,
    };
    await dropFile(other, "sketched.json", JSON.stringify({ ...plan, id: "sketched", picture }));
    await other.getByText("Opened sketched.json.").last().waitFor();
    await other.getByRole("button", { name: "Paper", exact: true }).first().click();
    const [download] = await Promise.all([
      other.waitForEvent("download"),
      other
        .getByRole("dialog")
        .getByRole("button", { name: /^Save as PDF/ })
        .click(),
    ]);
    const pdf = readFileSync(await download.path()).toString("latin1");
    // What is seen through stands in a mask of its own (ISO 32000-1, 11.6.5.3).
    expect(pdf).toMatch(/\/SMask \d+ 0 R/);
    expect(faults).toEqual([]);
    await other.close();
  });

  test("on a phone a length is marked with two taps, and its field comes up by itself", async () => {
    const phone = await browser.newPage({ viewport: { width: 390, height: 844 }, hasTouch: true });
    phone.setDefaultTimeout(20_000);
    await openSample(phone, siteUrl());
    await phone.getByRole("button", { name: "Menu", exact: true }).tap();
    await phone.getByRole("button", { name: "Plan", exact: true }).tap();
    await phone.getByText("Picture under the drawing", { exact: true }).tap();
    const region = phone.getByRole("region", { name: "Picture under the drawing" });
    await region.locator("input[type=file]").setInputFiles({
      name: "field.jpg",
      mimeType: "image/jpeg",
      buffer: Buffer.from(await photo(phone, 800, 600)),
    });
    await region.getByRole("button", { name: "Mark a length" }).tap();
    await expect.poll(() => region.isVisible()).toBe(false);
    const [one, other] = [
      await pagePlace(phone, { x: 4, y: 4 }),
      await pagePlace(phone, { x: 12, y: 10 }),
    ];
    await phone.touchscreen.tap(one.x, one.y);
    await phone.touchscreen.tap(other.x, other.y);
    const field = region.getByLabel("Length between the marks");
    await field.fill("20 m");
    await phone.getByText(/The picture becomes [\d.]+ times larger/).waitFor();
    await region.getByRole("button", { name: "Scale the picture" }).tap();
    await expect.poll(() => field.count()).toBe(0);
    await expect.poll(() => axeFaults(phone)).toEqual([]);
    await phone.close();
  });
});
