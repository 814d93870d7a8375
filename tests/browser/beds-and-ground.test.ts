/** Setting out by typing alone: sliding, splitting and numbering beds, round beds, ground around them. */
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { axeFaults } from "./axe.ts";
import { launchBrowser, siteUrl } from "./browser.ts";
import { openSample } from "./sheet.ts";

describe("beds, plantings and ground by their numbers", () => {
  let browser: Browser;
  let page: Page;
  beforeAll(async () => {
    browser = await launchBrowser();
    page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  });
  beforeEach(() => openSample(page, siteUrl()));
  afterAll(() => browser.close());

  const particulars = () => page.locator(".particulars");
  const dialog = () => page.getByRole("dialog");
  const command = async (name: string) => {
    await page.keyboard.press("Control+k");
    await dialog().getByRole("combobox").or(dialog().getByRole("searchbox")).first().fill(name);
    await page.keyboard.press("Enter");
  };

  test("a planting slides to a typed place, is refused beyond the bed, and moves to another bed", async () => {
    await page.getByRole("button", { name: "Show plantings of Old Ferry" }).click();
    const start = particulars().getByLabel("From near end");
    const length = particulars().getByLabel("Length along bed");
    const before = await length.inputValue();
    await start.fill("40 m");
    await start.press("Enter");
    await particulars()
      .getByText(/reaches beyond the bed, 9 m long: it can begin at 0 m to/)
      .waitFor();
    await start.fill("1 m");
    await start.press("Enter");
    expect([await start.inputValue(), await length.inputValue()]).toEqual(["1 m", before]);
    await particulars().getByRole("button", { name: "Far end" }).click();
    await expect.poll(() => start.inputValue()).toBe("5.2 m");
    await particulars().getByLabel("Bed", { exact: true }).selectOption({ label: "A05, 9 m free" });
    await particulars().getByRole("heading", { name: "Planting A05-1" }).waitFor();
    await expect.poll(() => axeFaults(page)).toEqual([]);
  });

  test("plants, rows and plants in a row agree", async () => {
    await page.getByRole("button", { name: "Show plantings of Old Ferry" }).click();
    const field = (label: string) => particulars().getByLabel(label, { exact: true });
    const values = async () =>
      Promise.all(["Plants", "Rows", "Plants in a row"].map((name) => field(name).inputValue()));
    await expect.poll(() => values()).toEqual(["10", "2", "5"]);
    await field("Plants in a row").fill("4");
    await field("Plants in a row").press("Enter");
    await expect.poll(values).toEqual(["8", "2", "4"]);
    await field("Rows").fill("4");
    await field("Rows").press("Enter");
    await expect.poll(values).toEqual(["8", "4", "2"]);
  });

  test("plants and start are typed in the table, which keeps what is seen selected", async () => {
    await page.getByRole("button", { name: "Tables", exact: true }).click();
    const start = page.getByRole("textbox", { name: "Start of A01-1, date" });
    await start.fill("2 Jun");
    await start.press("Enter");
    const plantings = page.getByRole("region", { name: "Plantings", exact: true });
    const row = plantings.getByRole("row", { name: /^A01-1/ });
    // The bean's first flower is counted from the new day.
    await expect.poll(() => row.innerText()).toContain("12 Jul");
    const plants = page.getByRole("textbox", { name: "Plants of A01-1" });
    await plants.fill("many");
    await plants.press("Enter");
    await row.getByRole("alert").waitFor();
    await plants.fill("88");
    await plants.press("Enter");
    await plantings.getByRole("button", { name: "First flower" }).click();
    const codes = async () =>
      (await plantings.locator("tbody th").allInnerTexts()).map((c) => c.trim());
    // By the day, not by its letters; what does not flower comes last.
    await expect
      .poll(codes)
      .toEqual(["B04-1", "B04-2", "A03-1", "A05-1", "B02-1", "B03-1", "A02-1", "A01-1", "A04-1"]);
    await page.getByRole("checkbox", { name: "A01-1" }).check();
    await page.getByRole("checkbox", { name: "B04-1" }).check();
    await page.getByRole("searchbox", { name: "Find in the tables" }).fill("lettuce");
    await expect.poll(codes).toEqual(["B04-1", "B04-2"]);
    await page.getByText("1 planting", { exact: true }).waitFor();
    await expect.poll(() => axeFaults(page)).toEqual([]);
  });

  test("beds are numbered only after a look at the old and new codes", async () => {
    await command("Number the beds");
    await dialog().getByLabel("Letters").fill("N");
    await dialog().getByLabel("Letters").press("Tab");
    await dialog()
      .getByText(/Stakes, packets and maps already written carry the old codes/)
      .waitFor();
    await expect.poll(() => axeFaults(page)).toEqual([]);
    await dialog().getByRole("button", { name: "Apply the new codes" }).click();
    await page.getByRole("button", { name: "Tables", exact: true }).click();
    const codes = page.getByRole("region", { name: "Beds" }).locator("tbody th");
    const given = async () => (await codes.allInnerTexts()).map((code) => code.trim());
    await codes.first().waitFor();
    await expect.poll(given).toContain("N01");
    await expect.poll(given).not.toContain("A01");
    await page.getByRole("button", { name: "Undo" }).click();
    await expect.poll(given).toContain("A01");
  });

  test("a round bed is drawn by its diameter and keeps it", async () => {
    await command("New bed by its size");
    await dialog().getByLabel("Shape").selectOption("round");
    await dialog().getByLabel("Diameter").fill("3 m");
    await dialog().getByRole("button", { name: "Add the bed" }).click();
    await expect.poll(() => particulars().getByLabel("Diameter").inputValue()).toBe("3 m");
  });

  test("a tree is placed with its canopy", async () => {
    await command("Add ground");
    await dialog().getByLabel("What it is").selectOption("tree");
    await dialog().getByLabel("Diameter").fill("6 m");
    await expect.poll(() => axeFaults(page)).toEqual([]);
    await dialog().getByRole("button", { name: "Add it" }).click();
    await particulars().getByRole("heading", { name: "Tree" }).waitFor();
    await expect.poll(() => particulars().getByLabel("Diameter").inputValue()).toBe("6 m");
  });
});
