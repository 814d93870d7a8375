/** Over plain http from another device: what browsers refuse is said where it is asked for, and plans are kept. */
import type { Browser, Page } from "playwright-core";
import { chromium } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { findChromium } from "../../.config/find-chromium.mjs";
import { CHROMIUM_ARGS } from "./browser.ts";
import { openSample } from "./sheet.ts";
import { type SecondServer, startSecondServer } from "./second-server.ts";

let browser: Browser;
let server: SecondServer;
let page: Page;
let address: string;

beforeAll(async () => {
  server = await startSecondServer();
  const { port } = new URL(server.url);
  // A name that is not this computer's, as a phone would use: browsers trust it no further.
  address = `http://computer.test:${port}/`;
  browser = await chromium.launch({
    executablePath: findChromium() ?? "",
    args: [...CHROMIUM_ARGS, "--host-resolver-rules=MAP computer.test 127.0.0.1"],
  });
  page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
  page.setDefaultTimeout(20_000);
  await openSample(page, address);
});

afterAll(async () => {
  await browser.close();
  await server.close();
});

test("the page is one the browser trusts no further", async () => {
  await expect.poll(() => page.evaluate(() => window.isSecureContext)).toBe(false);
  await expect.poll(() => page.evaluate(() => "serviceWorker" in navigator)).toBe(false);
});

test("scanning says why there is no camera, and takes a typed code", async () => {
  await page.keyboard.press("Control+k");
  await page.getByRole("dialog").getByRole("combobox").fill("scan");
  await page.keyboard.press("Enter");
  const dialog = page.getByRole("dialog", { name: "Scan a packet or stake" });
  await dialog.getByText("this one came over plain http").waitFor();
  await dialog.getByLabel("Or type the code").fill("B01-1");
  await page.keyboard.press("Enter");
  await page
    .getByRole("region", { name: "Particulars" })
    .getByRole("heading", { name: /^Planting B01-1/ })
    .waitFor();
});

test("the dialog of kept plans says that the program is not kept; the plans are, over a reload", async () => {
  const title = page.getByLabel("Plan title");
  await title.fill("Kept over plain http");
  await title.press("Enter");
  await page
    .getByText(/^Saved/)
    .first()
    .waitFor();
  await page.reload();
  await expect.poll(() => title.inputValue()).toBe("Kept over plain http");
  await page.getByRole("button", { name: "Plan", exact: true }).click();
  await page.getByText(/^Kept plans/).click();
  const dialog = page.getByRole("dialog", { name: "Kept plans" });
  await dialog.getByText("came over plain http").waitFor();
  await dialog.getByText("Kept over plain http").waitFor();
});
