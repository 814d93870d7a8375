/** The plan as grown in a real browser: the switch, what can still be done, harvest, helpers' copies. */
import { readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, Locator, Page } from "playwright-core";
import { afterAll, beforeAll, beforeEach, describe, expect, test } from "vitest";
import type { Plan } from "../../src/core/model/plan.ts";
import { axeFaults } from "./axe.ts";
import { launchBrowser, siteUrl } from "./browser.ts";
import { openSample } from "./sheet.ts";

const sample = JSON.parse(readFileSync("sample-plots/garden-to-solve.json", "utf8")) as Plan & {
  readonly entries: readonly object[];
};

describe("as grown in Chromium", () => {
  let browser: Browser;
  let page: Page;

  beforeAll(async () => {
    browser = await launchBrowser();
  });
  afterAll(() => browser.close());

  beforeEach(async () => {
    await page?.context().close();
    const context = await browser.newContext({
      viewport: { width: 1440, height: 900 },
      acceptDownloads: true,
    });
    page = await context.newPage();
    page.setDefaultTimeout(20_000);
    await openSample(page, siteUrl());
  });

  const findings = (): Locator => page.getByRole("region", { name: "Findings" });
  const dialog = (): Locator => page.getByRole("dialog");

  async function readAsGrown(on: string): Promise<void> {
    await findings().getByRole("button", { name: "As grown" }).click();
    const day = findings().getByRole("textbox", { name: "On", exact: true });
    await day.fill(on);
    await day.press("Enter");
    await page.getByText(/^As grown on .*\. /).waitFor();
  }

  test("findings, sheet and what the field changed follow the day; as planned brings all back", async () => {
    const planned = await page.locator(".finding").allInnerTexts();
    await readAsGrown("2027-07-06");
    const changes = findings().getByRole("region", { name: "What the field changed" });
    await changes.getByText("New since 3 Jul: conflict").waitFor();
    await expect.poll(() => changes.innerText()).toContain("Silverleaf Tarn: 16 of 20 seed plants");
    await expect.poll(() => page.locator(".finding").allInnerTexts()).not.toEqual(planned);
    await expect.poll(() => axeFaults(page)).toEqual([]);
    await page.getByRole("button", { name: "Calendar", exact: true }).click();
    await dialog().getByText("As grown on 6 Jul").waitFor();
    await dialog().getByRole("button", { name: "Close" }).click();
    await readAsGrown("2027-05-01");
    await expect.poll(() => changes.innerText()).not.toContain("16 of 20");
    await page.locator(".main-view").getByRole("button", { name: "As planned" }).click();
    await expect.poll(() => page.locator(".finding").allInnerTexts()).toEqual(planned);
  });

  test("what can still be done is written down at a press, and the finding goes", async () => {
    await readAsGrown("2027-05-20");
    const line = page.locator(".finding").filter({ hasText: "Fen Cockade and B04-2" });
    await line.getByRole("button", { name: /^Ways out/ }).click();
    const ways = page.getByRole("region", { name: /^What can still be done on/ });
    const bag = "Bag the flowers of B04-1 and B04-2";
    await ways.getByText(bag).waitFor();
    await expect
      .poll(() => ways.innerText(), { message: "no place and no date in the field" })
      .not.toMatch(/Move|Sow /);
    await ways.getByRole("button", { name: `Add as done: ${bag}` }).click();
    await expect.poll(() => line.count()).toBe(0);
    await page.getByRole("button", { name: /^Undo/ }).click();
    await expect.poll(() => line.count()).toBe(1);
  });

  test("a harvest goes on the shelf with how it was isolated, and prints from there", async () => {
    await page.getByRole("button", { name: "Lots", exact: true }).click();
    await page.getByRole("button", { name: "From a harvest" }).click();
    await dialog().getByLabel("Plot").selectOption({ label: "A03-1 Silverleaf Tarn" });
    await dialog().getByText("Chard in the cottage garden").first().waitFor();
    await expect.poll(() => dialog().innerText()).toContain("No level was met on what is known.");
    await expect.poll(() => axeFaults(page)).toEqual([]);
    await dialog().getByRole("button", { name: "Add the lot" }).click();
    const lots = page.getByRole("listbox", { name: "Lots on the shelf" });
    await lots.getByRole("option").filter({ hasText: "ST-27-01" }).click();
    const particulars = page.getByRole("region", { name: "Particulars" });
    await particulars.getByText("Grown from").first().waitFor();
    const started = page.waitForEvent("download");
    await particulars.getByRole("button", { name: "Isolation report (PDF)" }).click();
    const path = join(tmpdir(), `wideberth-isolation-${process.pid}.pdf`);
    await (await started).saveAs(path);
    expect(readFileSync(path).subarray(0, 5).toString()).toBe("%PDF-");
    rmSync(path);
  });

  test("the days seen are kept with the variety at a press, and widen its forecast", async () => {
    await readAsGrown("2027-08-01");
    await findings().getByRole("button", { name: "Predicted and seen" }).click();
    const bean = dialog().getByRole("region", { name: "Kettle Dun" });
    await bean.getByText("10 days earlier").waitFor();
    await bean.getByRole("button", { name: /^Add the days seen/ }).click();
    await bean.getByText("Kept with the variety.").waitFor();
    await expect.poll(() => axeFaults(page)).toEqual([]);
  });

  async function takeBack(copy: object): Promise<void> {
    await page.getByRole("button", { name: "Plan", exact: true }).click();
    await page.getByText("Helpers' copies ...").click();
    await dialog()
      .getByLabel("Returned file")
      .setInputFiles({
        name: "from-joss.json",
        mimeType: "application/json",
        buffer: Buffer.from(JSON.stringify(copy)),
      });
  }

  test("a returned copy: entries by whom, clashes told, changes ticked one by one, one undo step", async () => {
    const [first, ...rest] = sample.entries as readonly { readonly id: string }[];
    const written = { on: "2027-07-09", of: "p3", what: "rogued", count: 2, who: "Joss" };
    await takeBack({
      ...sample,
      title: "Renamed there",
      entries: [{ ...first, count: 50 }, ...rest, { ...written, id: "joss-90" }],
    });
    await dialog().getByText("2 entries come in: Mara 1, Joss 1.").waitFor();
    await dialog().getByText("Two different entries with one id: both are kept").waitFor();
    await expect.poll(() => axeFaults(page)).toEqual([]);
    await dialog().getByLabel("Take the plan's title as it is there").check();
    await dialog().getByRole("button", { name: "Add 2 entries and 1 change" }).click();
    await expect.poll(() => page.getByLabel("Plan title").inputValue()).toBe("Renamed there");
    await page.getByRole("button", { name: /^Undo/ }).click();
    await expect.poll(() => page.getByLabel("Plan title").inputValue()).toBe(sample.title);
  });

  test("a copy of another plan or another season is refused by name", async () => {
    await takeBack({ ...sample, id: "elsewhere", title: "Another garden" });
    await dialog()
      .getByText(/got the plan "Another garden"/)
      .waitFor();
    await page.keyboard.press("Escape");
    await takeBack({
      ...sample,
      season: { name: "2028", first: "2028-01-01", last: "2028-12-31" },
    });
    await dialog()
      .getByText(/got season 2028, expected season 2027/)
      .waitFor();
    await expect
      .poll(() =>
        dialog()
          .getByRole("button", { name: /^(?:Add \d|Apply \d)/ })
          .count(),
      )
      .toBe(0);
  });
});
