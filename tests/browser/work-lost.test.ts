/** Work that was lost, or nearly, before: each way it went, in a real browser. */
import { readFileSync } from "node:fs";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { Plan } from "../../src/core/model/plan.ts";
import { launchBrowser, siteUrl } from "./browser.ts";
import { dropFile } from "./drop-file.ts";
import { dragOnSheet, openSample, twoFrames } from "./sheet.ts";

describe("work is not lost", () => {
  let browser: Browser;

  beforeAll(async () => {
    browser = await launchBrowser();
  });
  afterAll(() => browser.close());

  async function opened(): Promise<Page> {
    const page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
    page.setDefaultTimeout(20_000);
    await openSample(page, siteUrl());
    return page;
  }

  test("to another plan opened in the middle of a drag or of typing", async () => {
    const page = await opened();
    const sample = readFileSync("sample-plots/garden-to-solve.json", "utf8");
    const other = { ...(JSON.parse(sample) as Plan), id: "other", title: "Another garden" };
    await dropFile(page, "first.json", sample.replace('"id": "', '"id": "first-'));
    await page.getByText("Opened first.json.").last().waitFor();
    const undo = page.getByRole("button", { name: /^Undo/ }).first();
    const [bed] = (JSON.parse(sample) as Plan).layouts[0]?.beds ?? [];
    if (bed?.outline.shape !== "rectangle") throw new Error("no bed");
    const { x, y } = bed.outline;
    await dragOnSheet(page, { x, y }, { x: x + 5, y: y + 3 }, async () => {
      await dropFile(page, "other.json", JSON.stringify(other));
      await expect.poll(() => page.title()).toBe("Another garden");
    });
    await page.mouse.move(300, 300);
    await expect.poll(() => undo.isDisabled()).toBe(true);
    // What is typed goes into the plan it is typed in.
    const title = page.getByLabel("Plan title");
    await title.fill("Typed here");
    await dropFile(page, "third.json", JSON.stringify({ ...other, id: "third", title: "Third" }));
    await expect.poll(() => page.title()).toBe("Third");
    await title.blur();
    await expect.poll(() => title.inputValue()).toBe("Third");
    await expect.poll(() => undo.isDisabled()).toBe(true);
    await page.getByRole("button", { name: "Plan", exact: true }).click();
    await page.getByText(/^Kept plans/).click();
    await page.getByRole("dialog").getByText("Typed here").first().waitFor();
    await page.close();
  });

  test("to a wheel that goes on sideways over lists, dialogs and the sheet", async () => {
    const page = await opened();
    // A page before this one, to which the browser could go back.
    await page.evaluate(() => history.pushState(null, "", "?here"));
    const here = page.url();
    await page.evaluate(() => {
      const seen = { wheels: 0, left: 0 };
      Reflect.set(window, "seen", seen);
      window.addEventListener("wheel", () => (seen.wheels += 1), { capture: true, passive: true });
      for (const leaving of ["popstate", "pagehide"]) {
        window.addEventListener(leaving, () => (seen.left += 1));
      }
    });
    const seen = () =>
      page.evaluate(() => ({
        ...(Reflect.get(window, "seen") as Record<"wheels" | "left", number>),
      }));
    let turned = 0;
    const wheelOver = async (selector: string) => {
      const box = await page.locator(selector).first().boundingBox();
      if (!box) throw new Error(`${selector} is not there.`);
      await page.mouse.move(box.x + box.width / 2, box.y + Math.min(box.height / 2, 40));
      for (let turn = 0; turn < 8; turn += 1) await page.mouse.wheel(turn < 4 ? -900 : 900, 0);
      turned += 8;
      // Every turn has come to the page, and has been drawn, before it is asked where it is.
      await expect.poll(async () => (await seen()).wheels).toBeGreaterThanOrEqual(turned);
      await twoFrames(page);
    };
    for (const place of [".finding", "[data-region=seed-list]", ".sheet", "[data-region=bloom]"]) {
      await wheelOver(place);
    }
    await page.keyboard.press("Control+k");
    await wheelOver("dialog[open]");
    expect(page.url()).toBe(here);
    expect((await seen()).left).toBe(0);
    // Where the wheel does nothing in a browser without a screen, the rule itself is looked at.
    const loose = await page.evaluate(() =>
      [...document.querySelectorAll("*")]
        .filter((element) => getComputedStyle(element).overscrollBehaviorX === "auto")
        .map((element) => element.tagName),
    );
    expect(loose).toEqual([]);
    const root = await page.evaluate(
      () => getComputedStyle(document.documentElement).overscrollBehaviorY,
    );
    expect(root).toBe("none");
    await page.close();
  });
});
