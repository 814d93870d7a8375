/** From an empty plan to ground on the sheet: a new plan, the plot, outlines by numbers, panning. */
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { axeFaults } from "./axe.ts";
import { launchBrowser, siteUrl } from "./browser.ts";
import { openSample, pagePlace, restingView } from "./sheet.ts";

let browser: Browser;
let page: Page;

const said = () => page.locator(".visually-hidden [role=status]").first().innerText();
const button = (name: string | RegExp) => page.getByRole("button", { name, exact: true });
const bar = () => page.getByRole("group", { name: "What is being drawn" });

async function newPlan(): Promise<void> {
  await button("Plan").click();
  await button("New").click();
}

beforeAll(async () => {
  browser = await launchBrowser();
  page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await openSample(page, siteUrl());
});
afterAll(() => browser.close());

test("a new plan begins with the plot: size, place and frosts in one form", async () => {
  // Nothing was done to the sample: nothing is asked.
  await newPlan();
  await page.getByRole("heading", { name: "Five steps to a first plan" }).waitFor();
  await button("Size, place, frosts").click();
  const dialog = page.getByRole("dialog", { name: "Your plot" });
  await dialog.getByLabel("Plot, across").fill("24");
  await dialog.getByLabel("Plot, up the sheet").fill("14 m");
  await dialog.getByLabel("Where on earth").fill("51.42 N, 0.35 W");
  await dialog.getByLabel("First autumn frost").fill("12 Oct");
  await expect.poll(() => axeFaults(page)).toEqual([]);
  await dialog.getByRole("button", { name: "Apply", exact: true }).click();
  await page.getByText("✓ done").waitFor();
  await button(/^Undo/).click();
  await page.getByText("✓ done").waitFor({ state: "detached" });
  await button(/^Redo/).click();
  await page.getByText("✓ done").waitFor();
});

test("an outline is typed from its first corner, curved, and pasted; the next one is a bed again", async () => {
  await button("Draw its edge").click();
  await bar().getByText("Click corner after corner").waitFor();
  await expect.poll(() => bar().getByLabel("Drawing:").inputValue()).toBe("site");
  await page.keyboard.press("Escape");
  await bar().waitFor({ state: "detached" });
  await page.keyboard.press("o");
  await bar().getByText("Click corner after corner").waitFor();
  await expect.poll(() => bar().getByLabel("Drawing:").inputValue()).toBe("bed");
  await bar().getByRole("button", { name: "Type first corner" }).click();
  await page.keyboard.type("2");
  await page.keyboard.press("Tab");
  await page.keyboard.type("2");
  await page.keyboard.press("Enter");
  await bar().getByText("1 corner").waitFor();
  await page.evaluate(() => {
    const clipboardData = new DataTransfer();
    clipboardData.setData("text/plain", "8, 2\n8, 6 through 10, 4\n2, 6");
    document.dispatchEvent(new ClipboardEvent("paste", { clipboardData, bubbles: true }));
  });
  await expect.poll(said).toMatch(/^Pasted \d+ corners\.$/);
  await bar().getByRole("button", { name: "Close outline" }).click();
  await expect.poll(said).toContain("Drew bed A01");
  // 24 m² and half a circle of radius 2 on its side, 6.28: a little less by its corners.
  await page
    .locator(".particulars")
    .getByText(/^30\.2\d? m²/)
    .waitFor();
});

test("Space pans while a tool's button has the focus, and puts no corner; nor does the middle button", async () => {
  await button("Draw outline").click();
  await bar().getByText("Click corner after corner").waitFor();
  await button("Draw outline").focus();
  const before = await restingView(page);
  const at = await pagePlace(page, { x: 14, y: 7 });
  await page.mouse.move(at.x, at.y);
  await page.keyboard.down(" ");
  await page.mouse.down();
  await page.mouse.move(at.x + 60, at.y + 20, { steps: 3 });
  await page.mouse.up();
  await page.keyboard.up(" ");
  await expect.poll(async () => ((await restingView(page))?.x ?? 0) - (before?.x ?? 0)).toBe(60);
  await page.mouse.down({ button: "middle" });
  await page.mouse.move(at.x, at.y, { steps: 3 });
  await page.evaluate(() => document.dispatchEvent(new ClipboardEvent("paste", { bubbles: true })));
  await page.mouse.up({ button: "middle" });
  await expect.poll(async () => ((await restingView(page))?.x ?? 0) - (before?.x ?? 0)).toBe(0);
  await expect.poll(() => said()).not.toContain("Nothing pasted");
  await bar().getByText("Click corner after corner").waitFor();
  await page.keyboard.press("Escape");
});

test("a whole outline is typed as a list, told line by line what is wrong", async () => {
  await button("Plan").click();
  await button(/^Outline from its corners/).click();
  const dialog = page.getByRole("dialog", { name: "Outline from its corners" });
  const list = dialog.getByLabel("Corners, one to a line");
  await list.fill("12, 2\n16, two");
  await dialog.getByText('Line 2, "16, two"').waitFor();
  await list.fill("12, 2\n16, 2\n5 m at 0\n4 m at 270");
  await dialog.getByText("4 corners, 20 m². The last side closes it: 5 m.").waitFor();
  await expect.poll(() => axeFaults(page)).toEqual([]);
  await dialog.getByRole("button", { name: "Add", exact: true }).click();
  await expect.poll(said).toContain("Drew bed A02");
});

test("rows of beds are on the sheet before they are made, and gone when they are not", async () => {
  await button("Plan").click();
  await button("Rows of equal beds ...").click();
  const dialog = page.getByRole("dialog", { name: "Rows of equal beds" });
  await dialog.getByLabel("Beds in a row").fill("30");
  await page.keyboard.press("Tab");
  await dialog.getByText(/^30 beds/).waitFor();
  // Thirty beds reach out of a plot of 24 m: told before anything is made.
  const outside = page.locator(".finding").getByText(/out of the site/);
  await expect.poll(() => outside.count()).toBeGreaterThan(0);
  await expect.poll(() => axeFaults(page)).toEqual([]);
  await page.keyboard.press("Escape");
  await dialog.waitFor({ state: "detached" });
  await expect.poll(() => outside.count()).toBe(0);
  await button("Plan").click();
  await button("Rows of equal beds ...").click();
  await dialog.getByLabel("Beds in a row").fill("2");
  await dialog.getByLabel("Corner, right (x)").fill("18");
  await dialog.getByLabel("Corner, up (y)").fill("1");
  await dialog.getByLabel("Bed length").fill("4");
  await page.keyboard.press("Enter");
  await expect.poll(said).toContain("Drew 2 beds");
  await page.keyboard.press("Escape");
});

test("a pollen source asks what flowers there, and can lie by distance and direction", async () => {
  await page.keyboard.press("p");
  const at = await pagePlace(page, { x: 21.4, y: 3 });
  await page.mouse.click(at.x, at.y);
  const dialog = page.getByRole("dialog", { name: "Pollen source" });
  await dialog.getByRole("button", { name: "Add", exact: true }).click();
  await dialog.getByText("Say what flowers there").waitFor();
  await dialog.getByRole("searchbox").fill("carrot");
  await page.keyboard.press("Enter");
  await dialog.getByLabel("Place", { exact: true }).selectOption("measured");
  await dialog.getByLabel("From the middle of").selectOption({ label: "the sheet's 0, 0" });
  await dialog.getByLabel("Distance").fill("30");
  await dialog.getByLabel("Direction").fill("ESE");
  await dialog.getByText("Nothing stands in this layout yet that it could cross.").waitFor();
  await expect.poll(() => axeFaults(page)).toEqual([]);
  await dialog.getByRole("button", { name: "Add", exact: true }).click();
  await expect.poll(said).toContain("Added Carrot");
  // 30 m by 112.5 degrees: 27.716 to the right, 11.481 down.
  await expect.poll(() => page.getByLabel("Middle, right (x)").inputValue()).toBe("27.72 m");
  await page.locator(".sheet").focus();
  await page.keyboard.press("Escape");
});

test("a plan that was worked on is asked about, kept and found again, or deleted", async () => {
  await page.getByLabel("Plan title").fill("Odd plot");
  await page.keyboard.press("Enter");
  await newPlan();
  const dialog = page.getByRole("dialog", { name: "New plan" });
  await dialog.getByText('"Odd plot" is open: 4 beds').waitFor();
  await expect.poll(() => axeFaults(page)).toEqual([]);
  await dialog.getByRole("button", { name: "Keep it in this browser" }).click();
  await page.getByRole("heading", { name: "Five steps to a first plan" }).waitFor();
  const kept = page.getByRole("list", { name: "Kept plans" });
  const odd = kept.getByRole("listitem").filter({ hasText: "Odd plot" });
  await button("Plan").click();
  await button("Kept plans ...").click();
  await odd.getByRole("button", { name: "Open", exact: true }).click();
  await page.getByText("Step 3 of 5").waitFor();

  await newPlan();
  await dialog.getByRole("button", { name: "Delete it ..." }).click();
  await dialog.getByText('Delete "Odd plot"').waitFor();
  await dialog.getByRole("button", { name: "Delete it for good" }).click();
  await page.getByRole("heading", { name: "Five steps to a first plan" }).waitFor();
  await button("Plan").click();
  await button("Kept plans ...").click();
  await kept.getByRole("listitem").first().waitFor();
  await expect.poll(() => odd.count()).toBe(0);
});
