/** Reading packets and stakes with a camera whose picture is made here, and by typing. */
import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Browser, type Page, chromium } from "playwright-core";
import { afterEach, describe, expect, test } from "vitest";
import { findChromium } from "../../.config/find-chromium.mjs";
import { axeFaults } from "./axe.ts";
import { CHROMIUM_ARGS, siteUrl } from "./browser.ts";
import { cameraFilm } from "./camera-picture.ts";
import { openSample } from "./sheet.ts";

describe("scanning in Chromium", () => {
  let browser: Browser | null = null;

  afterEach(async () => {
    await browser?.close();
    browser = null;
  });

  async function openWithCamera(text: string | null): Promise<Page> {
    const film = join(mkdtempSync(join(tmpdir(), "camera-")), "code.y4m");
    if (text !== null) writeFileSync(film, cameraFilm(text));
    const camera =
      text === null
        ? []
        : [
            "--use-fake-ui-for-media-stream",
            "--use-fake-device-for-media-stream",
            `--use-file-for-fake-video-capture=${film}`,
          ];
    browser = await chromium.launch({
      executablePath: findChromium() ?? "",
      args: [...CHROMIUM_ARGS, ...camera],
    });
    const context = await browser.newContext({ viewport: { width: 1280, height: 900 } });
    const page = await context.newPage();
    await openSample(page, siteUrl());
    await page.getByRole("button", { name: "Plan", exact: true }).click();
    await page.getByRole("button", { name: /^Two-acre/ }).click();
    await page.locator(".seed-row").filter({ hasText: "Gatepost Flint" }).waitFor();
    await page.getByRole("button", { name: "Lots", exact: true }).click();
    await page.getByRole("button", { name: "Scan", exact: true }).click();
    return page;
  }

  const particulars = (page: Page) => page.getByRole("region", { name: "Particulars" });

  test("a code with a lot alone opens the lot", async () => {
    const page = await openWithCamera("AB-26");
    await particulars(page)
      .getByRole("heading", { name: /^Lot AB-26/ })
      .waitFor();
    await expect.poll(() => page.getByRole("dialog").count()).toBe(0);
  });

  test("a stake's code offers its plot and its lot; the plot shows on the sheet", async () => {
    const page = await openWithCamera("P:L1-1 L:AL-25");
    const dialog = page.getByRole("dialog", { name: "Scan a packet or stake" });
    await dialog.getByRole("button", { name: "Open lot AL-25" }).waitFor();
    await expect.poll(() => axeFaults(page)).toEqual([]);
    await dialog.getByRole("button", { name: "Show plot L1-1" }).click();
    await particulars(page)
      .getByRole("heading", { name: /^Planting L1-1/ })
      .waitFor();
  });

  test("without a camera the code is typed; one that is not there is said", async () => {
    const page = await openWithCamera(null);
    const dialog = page.getByRole("dialog", { name: "Scan a packet or stake" });
    await dialog.getByText("No camera was found").waitFor();
    await dialog.getByLabel("Or type the code").fill("zz-1");
    await page.keyboard.press("Enter");
    await dialog.getByText("zz-1: not in this plan").waitFor();
    await dialog.getByLabel("Or type the code").fill("of-24");
    await page.keyboard.press("Enter");
    await particulars(page)
      .getByRole("heading", { name: /^Lot OF-24/ })
      .waitFor();
  });
});
