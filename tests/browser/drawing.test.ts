/** Drawing, measuring and taking hold on the sheet with a mouse and the keyboard. */
import { readFileSync } from "node:fs";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { lockSignPlace } from "../../src/canvas/scene/locks.ts";
import type { View } from "../../src/canvas/scene/viewport.ts";
import type { RectangleShape } from "../../src/core/model/plan.ts";
import { axeFaults } from "./axe.ts";
import { launchBrowser, siteUrl } from "./browser.ts";
import { dragOnSheet, openSample, pagePlace } from "./sheet.ts";

interface SamplePlan {
  readonly layouts: readonly {
    readonly plantings: readonly { readonly code: string; readonly outline: RectangleShape }[];
    readonly beds: readonly { readonly code: string; readonly outline: Place }[];
  }[];
}
interface Place {
  readonly x: number;
  readonly y: number;
}

const sample = JSON.parse(
  readFileSync(new URL("../../sample-plots/garden-to-solve.json", import.meta.url), "utf8"),
) as SamplePlan;

function middleOf(code: string): Place {
  const [layout] = sample.layouts;
  const found = [...(layout?.plantings ?? []), ...(layout?.beds ?? [])].find(
    (entry) => entry.code === code,
  );
  if (!found) throw new Error(`no ${code} in the sample`);
  return found.outline;
}

/** Ground of the sample with nothing on it. */
const BARE: Place = { x: 24, y: 2 };

let browser: Browser;
let page: Page;
const said = () => page.locator(".visually-hidden [role=status]").first().innerText();
const undo = () => page.keyboard.press("Control+z");
const bar = () => page.getByRole("group", { name: "What is being drawn" });

async function clickOnSheet(place: Place): Promise<void> {
  const at = await pagePlace(page, place);
  await page.mouse.move(at.x - 3, at.y);
  await page.mouse.move(at.x, at.y);
  await page.mouse.click(at.x, at.y);
}

async function pickTool(name: string): Promise<void> {
  await page
    .getByRole("toolbar", { name: "Tools" })
    .getByRole("button", { name, exact: true })
    .click();
}

async function leaveEverything(): Promise<void> {
  await page.locator(".sheet").focus();
  for (let press = 0; press < 3; press += 1) await page.keyboard.press("Escape");
}

beforeAll(async () => {
  browser = await launchBrowser();
  page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await openSample(page, siteUrl());
});
afterAll(() => browser.close());

describe("a bed", () => {
  test("gets its size from the keyboard while it is dragged out, as one undo step", async () => {
    await pickTool("Draw bed");
    await dragOnSheet(page, BARE, { x: BARE.x + 4, y: BARE.y - 1 }, async () => {
      await page.keyboard.type("1,2");
      await page.keyboard.press("Tab");
      await page.keyboard.type("12' 6\"");
      await expect.poll(() => axeFaults(page)).toEqual([]);
      await page.keyboard.press("Enter");
    });
    await expect.poll(said).toContain("Drew bed");
    await expect.poll(() => page.getByLabel("Width", { exact: true }).inputValue()).toBe("1.2 m");
    await expect.poll(() => page.getByLabel("Length", { exact: true }).inputValue()).toBe("3.81 m");
    await undo();
    await expect.poll(said).toContain("Undone: Draw bed");
  });

  test("can be drawn without dragging, and Escape leaves a typed size first", async () => {
    await pickTool("Draw bed");
    await clickOnSheet(BARE);
    const at = await pagePlace(page, { x: BARE.x + 3, y: BARE.y - 1 });
    await page.mouse.move(at.x, at.y, { steps: 3 });
    await page.keyboard.type("9");
    const fields = page.getByRole("group", { name: "Exact size" });
    await fields.waitFor();
    await page.keyboard.press("Escape");
    await fields.waitFor({ state: "detached" });
    await clickOnSheet({ x: BARE.x + 3, y: BARE.y - 1 });
    await expect.poll(said).toContain("Drew bed");
    await undo();
  });

  test("is not drawn from what is no length, and that is said in place", async () => {
    await pickTool("Draw bed");
    await clickOnSheet(BARE);
    await page.getByRole("button", { name: "Type width and length" }).click();
    await page.keyboard.type("broad");
    await page.keyboard.press("Enter");
    await page.getByText('"broad" is not a length').waitFor();
    await leaveEverything();
    await expect
      .poll(() => page.getByRole("button", { name: "Undo", exact: true }).isDisabled())
      .toBe(true);
  });
});

describe("an outline", () => {
  beforeEach(leaveEverything);

  test("that crosses itself is marked in words until it is mended", async () => {
    await pickTool("Draw outline");
    const { x, y } = BARE;
    for (const [dx, dy] of [
      [0, 0],
      [2.5, 0],
      [2.5, -2],
      [1.25, 1],
    ] as const) {
      await clickOnSheet({ x: x + dx, y: y + dy });
    }
    await bar().getByText("Two sides cross").waitFor();
    await expect.poll(() => axeFaults(page)).toEqual([]);
    await bar().getByRole("button", { name: "Close outline" }).click();
    await bar().getByText("Two sides cross").waitFor();
    await bar().getByRole("button", { name: "Delete last corner" }).click();
    await bar().getByText("Two sides cross").waitFor({ state: "detached" });
    await bar().getByRole("button", { name: "Close outline" }).click();
    await expect.poll(said).toContain("Drew bed");
    await undo();
  });

  test("gives its last corner back to undo, before the plan does", async () => {
    await pickTool("Draw outline");
    await clickOnSheet(BARE);
    await clickOnSheet({ x: BARE.x + 3, y: BARE.y });
    await bar().getByText("2 corners").waitFor();
    await undo();
    await bar().getByText("1 corner").waitFor();
  });

  test("can have a side typed, and two corners make a fence", async () => {
    await pickTool("Draw outline");
    await clickOnSheet(BARE);
    await bar().getByLabel("Drawing:").selectOption("fence");
    await bar().getByRole("button", { name: "Type next side" }).click();
    await page.keyboard.type("6.5");
    await page.keyboard.press("Tab");
    await page.keyboard.type("90");
    await page.keyboard.press("Enter");
    await bar().getByText("2 corners").waitFor();
    await bar().getByRole("button", { name: "Add as a line" }).click();
    await expect.poll(said).toContain("Added Fence");
    await expect.poll(() => page.getByLabel("Length", { exact: true }).inputValue()).toBe("6.5 m");
    await undo();
  });
});

describe("measuring", () => {
  beforeEach(leaveEverything);

  test("two clicked things tells edges from middles, and stays until dismissed", async () => {
    await pickTool("Measure");
    await clickOnSheet(middleOf("B01-1"));
    await clickOnSheet(middleOf("B03-1"));
    await bar()
      .getByText(/^B01-1 to B03-1: .* edge to edge, .* centre to centre$/)
      .waitFor();
    await pickTool("Select");
    await bar().getByText("edge to edge").waitFor();
    await bar().getByRole("button", { name: "Close" }).click();
    await bar().waitFor({ state: "detached" });
  });
});

describe("without dragging", () => {
  beforeEach(leaveEverything);

  test("a planting goes where the second click says, and Escape puts it back", async () => {
    const from = middleOf("A01-1");
    await clickOnSheet(from);
    const move = page.getByRole("group", { name: "Pointer" }).getByRole("button", { name: "Move" });
    await move.click();
    await bar().getByText("Moving A01-1").waitFor();
    const at = await pagePlace(page, { x: from.x + 2, y: from.y });
    await page.mouse.move(at.x, at.y, { steps: 4 });
    await page.keyboard.press("Escape");
    await bar().waitFor({ state: "detached" });
    await move.click();
    await clickOnSheet({ x: from.x + 2, y: from.y + 0.3 });
    await expect.poll(said).toContain("Moved A01-1");
    await undo();
    await expect.poll(said).toContain("Undone: Move A01-1");
  });
});

describe("several plantings", () => {
  beforeEach(leaveEverything);

  test("take their kinds' usual starts, or one way and day, each as one step", async () => {
    await page.keyboard.press("Control+a");
    const particulars = page.locator(".particulars");
    await particulars.getByRole("heading", { name: "9 plantings" }).waitFor();
    await particulars.getByRole("button", { name: "Each as its kind usually starts" }).click();
    await expect.poll(said).toContain("Set the usual start of 9 plantings");
    await undo();
    await particulars.getByLabel("Started", { exact: true }).selectOption("transplanted");
    await particulars.getByLabel("Start", { exact: true }).fill("25 May");
    await page.keyboard.press("Enter");
    await expect.poll(said).toContain("Set start of 9 plantings");
    await expect
      .poll(() => particulars.getByLabel("Started", { exact: true }).inputValue())
      .toBe("transplanted");
    await page.locator(".sheet").focus();
    await undo();
    await undo();
    await expect.poll(said).toContain("Undone");
  });

  test("another thing's particulars begin with its title", async () => {
    await clickOnSheet(middleOf("A01-1"));
    const region = page.locator(".drawer[data-region=particulars]");
    await page.locator(".particulars").getByText("A01-1").first().waitFor();
    await expect
      .poll(() =>
        region.evaluate((element) => {
          element.scrollTo({ top: 200 });
          return element.scrollTop;
        }),
      )
      .toBe(200);
    await clickOnSheet(middleOf("B04-2"));
    await expect.poll(() => region.evaluate((element) => element.scrollTop)).toBe(0);
  });
});

describe("a locked planting", () => {
  const code = "B04-2";

  beforeEach(leaveEverything);

  test("is not moved by the arrows or deleted, and that is said", async () => {
    await clickOnSheet(middleOf(code));
    await page.getByLabel(/^Locked/).check();
    await page.locator(".sheet").focus();
    await page.keyboard.press("ArrowRight");
    await expect.poll(said).toContain(`${code} is locked and stays as it is`);
    await page.keyboard.press("Delete");
    await expect.poll(said).toBe("Delete: it is locked.");
  });

  test("is passed over by clicks and drags", async () => {
    await page.keyboard.press("Escape");
    await dragOnSheet(page, middleOf(code), { x: middleOf(code).x + 3, y: middleOf(code).y });
    await expect.poll(() => page.getByLabel(/^Locked/).count()).toBe(0);
    await leaveEverything();
  });

  test("is selected by its lock", async () => {
    const planting = sample.layouts[0]?.plantings.find((entry) => entry.code === code);
    if (!planting) throw new Error(`no ${code} in the sample`);
    const view = JSON.parse((await page.locator(".sheet").getAttribute("data-view")) ?? "") as View;
    const box = await page.locator(".sheet").boundingBox();
    const sign = lockSignPlace({ shape: planting.outline }, view);
    await page.mouse.click((box?.x ?? 0) + sign.x, (box?.y ?? 0) + sign.y);
    await expect.poll(() => page.getByLabel(/^Locked/).isChecked()).toBe(true);
    await undo();
    await expect.poll(said).toContain(`Undone: Lock ${code}`);
  });
});

describe("the pointer's settings", () => {
  const scale = async () => {
    const text = (await page.locator(".sheet").getAttribute("data-view")) ?? "{}";
    return (JSON.parse(text) as { readonly scale: number }).scale;
  };

  test("a wheel that pans does not zoom", async () => {
    await page.evaluate(() => localStorage.setItem("wideberth.wheel", "pan"));
    await page.reload();
    await page.locator(".finding").first().waitFor({ state: "attached" });
    const at = await pagePlace(page, BARE);
    const before = await scale();
    const view = () => page.locator(".sheet[data-view]").getAttribute("data-view");
    const viewBefore = await view();
    await page.mouse.move(at.x, at.y);
    await page.mouse.wheel(0, 240);
    await expect.poll(view).not.toBe(viewBefore);
    await expect.poll(() => scale()).toBe(before);
    await page.evaluate(() => localStorage.setItem("wideberth.wheel", "guess"));
  });

  test("the snap switch is remembered", async () => {
    const snap = page.getByRole("button", { name: "Snap", exact: true });
    await snap.click();
    await page.reload();
    await page.locator(".finding").first().waitFor({ state: "attached" });
    await expect.poll(() => snap.getAttribute("aria-pressed")).toBe("false");
    await snap.click();
    await expect.poll(() => snap.getAttribute("aria-pressed")).toBe("true");
  });
});
