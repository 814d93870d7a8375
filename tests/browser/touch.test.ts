/** Fingers and a pen on the sheet of a phone. */
import { readFileSync } from "node:fs";
import type { Browser, CDPSession, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { axeFaults } from "./axe.ts";
import { launchBrowser, siteUrl } from "./browser.ts";
import { openSample, pagePlace } from "./sheet.ts";

interface Place {
  readonly x: number;
  readonly y: number;
}
interface SamplePlan {
  readonly layouts: readonly {
    readonly plantings: readonly { readonly code: string; readonly outline: Place }[];
  }[];
}

const sample = JSON.parse(
  readFileSync(new URL("../../sample-plots/garden-to-solve.json", import.meta.url), "utf8"),
) as SamplePlan;

function middleOf(code: string): Place {
  const found = sample.layouts[0]?.plantings.find((entry) => entry.code === code);
  if (!found) throw new Error(`no ${code} in the sample`);
  return found.outline;
}

describe("fingers and a pen", () => {
  let browser: Browser;
  let page: Page;
  let touch: CDPSession;

  beforeAll(async () => {
    browser = await launchBrowser();
    const context = await browser.newContext({
      viewport: { width: 412, height: 820 },
      hasTouch: true,
      isMobile: true,
    });
    page = await context.newPage();
    await openSample(page, siteUrl());
    touch = await context.newCDPSession(page);
  });
  afterAll(() => browser.close());

  const put = (type: "touchStart" | "touchMove" | "touchEnd", places: readonly Place[]) =>
    touch.send("Input.dispatchTouchEvent", {
      type,
      touchPoints: places.map((place, id) => ({ ...place, id })),
    });
  const said = () => page.locator(".visually-hidden [role=status]").first().innerText();
  const view = () => page.locator(".sheet").getAttribute("data-view");

  test("a chosen plot says first what it is, and stays in sight above its fields", async () => {
    await page.touchscreen.tap(...asPair(await pagePlace(page, middleOf("B02-1"))));
    const regions = page.getByRole("navigation", { name: "Regions" });
    await regions.getByRole("button", { name: "Particulars" }).tap();
    const summary = page.getByRole("group", { name: "What is here" });
    await summary.getByText("Amber Lantern, tomato").waitFor();
    await summary.getByText("conflict: B02-1 Amber Lantern is too close to B01-1").waitFor();
    await expect
      .poll(async () => {
        const box = await page.locator(".sheet").boundingBox();
        const drawer = await page.locator(".drawer[data-region=particulars]").boundingBox();
        const at = await pagePlace(page, middleOf("B02-1"));
        const isShown = at.y > (box?.y ?? Infinity) && at.y < (drawer?.y ?? 0);
        return isShown && (box?.y ?? 0) + (box?.height ?? Infinity) <= (drawer?.y ?? 0) + 1;
      })
      .toBe(true);
    await expect.poll(() => axeFaults(page)).toEqual([]);
    await regions.getByRole("button", { name: "Particulars" }).tap();
    await page.locator(".sheet").focus();
    await page.keyboard.press("Escape");
  });

  test("that slide over a bloom bar change no date until the bar was chosen", async () => {
    const regions = page.getByRole("navigation", { name: "Regions" });
    await regions.getByRole("button", { name: "Bloom" }).tap();
    const grip = page.getByRole("slider", { name: /^Start of B04-1/ });
    const slide = async () => {
      const box = await grip.boundingBox();
      const from = { x: (box?.x ?? 0) + 20, y: (box?.y ?? 0) + (box?.height ?? 0) / 2 };
      await put("touchStart", [from]);
      for (const x of [10, 25, 40]) await put("touchMove", [{ x: from.x + x, y: from.y }]);
      await put("touchEnd", []);
    };
    const undo = page.getByRole("button", { name: "Undo", exact: true }).first();
    await grip.waitFor();
    await slide();
    await page.waitForTimeout(150);
    await expect.poll(() => undo.isDisabled()).toBe(true);
    await grip.tap();
    await expect.poll(() => grip.getAttribute("aria-valuetext")).not.toBeNull();
    await slide();
    await expect.poll(() => undo.isEnabled()).toBe(true);
    await undo.tap();
    await regions.getByRole("button", { name: "Bloom" }).tap();
    await page.locator(".sheet").focus();
    await page.keyboard.press("Escape");
  });

  test("held still open the menu of what lies under them", async () => {
    const at = await pagePlace(page, middleOf("B01-1"));
    await put("touchStart", [at]);
    await page.getByRole("menu").waitFor();
    await put("touchEnd", []);
    await expect.poll(() => page.getByRole("menu").innerText()).toContain("B01-1");
    await page.keyboard.press("Escape");
    await page.getByRole("menu").waitFor({ state: "detached" });
  });

  test("two of them zoom and never drag what they lie on", async () => {
    await page.touchscreen.tap(...asPair(await pagePlace(page, middleOf("B01-1"))));
    const at = await pagePlace(page, middleOf("B01-1"));
    const before = await view();
    await put("touchStart", [at]);
    await put("touchMove", [{ x: at.x + 20, y: at.y }]);
    const other = { x: at.x + 60, y: at.y + 60 };
    await put("touchStart", [{ x: at.x + 20, y: at.y }, other]);
    await put("touchMove", [
      { x: at.x - 20, y: at.y - 20 },
      { x: at.x + 110, y: at.y + 110 },
    ]);
    await put("touchEnd", []);
    await expect.poll(view).not.toBe(before);
    await expect.poll(() => said()).not.toContain("Move");
    await page.locator(".sheet").press("0");
  });

  test("add to the selection one by one where that is switched on", async () => {
    await page.getByRole("button", { name: "Several" }).click();
    await page.touchscreen.tap(...asPair(await pagePlace(page, middleOf("A01-1"))));
    await expect.poll(said).toContain("A01-1 added to the selection");
    await page.touchscreen.tap(...asPair(await pagePlace(page, middleOf("A01-1"))));
    await expect.poll(said).toContain("A01-1 taken from the selection");
    await page.getByRole("button", { name: "Several" }).click();
  });

  test("only move the view once a pen is in use, until that is left", async () => {
    await page.locator(".sheet").evaluate((sheet) => {
      const { left, top } = sheet.getBoundingClientRect();
      const about = { clientX: left + 5, clientY: top + 300, pointerId: 77, bubbles: true };
      sheet.setPointerCapture = () => undefined;
      for (const type of ["pointerdown", "pointerup"]) {
        sheet.dispatchEvent(new PointerEvent(type, { ...about, pointerType: "pen" }));
      }
    });
    const leave = page.getByRole("button", { name: "Pen only" });
    await leave.waitFor();
    await expect.poll(() => axeFaults(page)).toEqual([]);
    await leave.click();
    await leave.waitFor({ state: "detached" });
  });
});

function asPair({ x, y }: Place): [number, number] {
  return [x, y];
}
