/**
 * The job, done by hand in a real browser: open the garden with conflicts, drag a planting until
 * its conflict is gone, undo, redo, reload, print, and read the codes back from the paper.
 */
import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { clearGround, nearestPlace } from "../../src/core/remedies/clear-ground.ts";
import { runChecks } from "../../src/core/checks/run-checks.ts";
import { cropBook } from "../../src/core/kinds/crop-book.ts";
import { shapeCentre } from "../../src/core/geometry/outline.ts";
import { readPlan } from "../../src/core/model/read-plan.ts";
import { launchBrowser, siteUrl } from "./browser.ts";
import { conflictCount, dragOnSheet, openSample } from "./sheet.ts";

const book = cropBook();
const file = new URL("../../sample-plots/garden-to-solve.json", import.meta.url);
const read = readPlan(
  readFileSync(file, "utf8"),
  "garden-to-solve.json",
  (id) => book.kind(id) !== undefined,
);
if (!read.ok) throw new Error("the sample does not read");
const plan = read.value;
const layout =
  plan.layouts[0] ??
  (() => {
    throw new Error("no layout");
  })();
const before = runChecks(plan, layout, book);
const conflicts = before.findings.filter((finding) => finding.severity === "conflict");

/** A planting in exactly one conflict, and the nearest place that clears it. */
function solvable() {
  for (const { id, outline } of layout.plantings) {
    if (conflicts.filter((finding) => finding.subjects.includes(id)).length !== 1) continue;
    const from = shapeCentre(outline);
    const to = nearestPlace(clearGround(before, id)?.centres ?? [], from);
    if (to) return { id, from, to };
  }
  throw new Error("no planting of the sample can be cleared by one move");
}

describe("the main job in Chromium", () => {
  let browser: Browser;
  let page: Page;
  const move = solvable();

  beforeAll(async () => {
    browser = await launchBrowser();
    page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
    await openSample(page, siteUrl());
  });
  afterAll(() => browser.close());

  test("dragging a planting to clear ground clears its conflict while it is still held", async () => {
    await expect.poll(() => conflictCount(page)).toBe(conflicts.length);
    // A little past the edge of the clear ground, as a hand would.
    const past = 0.15 / Math.hypot(move.to.x - move.from.x, move.to.y - move.from.y);
    const target = {
      x: move.to.x + (move.to.x - move.from.x) * past,
      y: move.to.y + (move.to.y - move.from.y) * past,
    };
    await dragOnSheet(page, move.from, target, async () => {
      await expect.poll(() => conflictCount(page)).toBe(conflicts.length - 1);
    });
    await expect.poll(() => conflictCount(page)).toBe(conflicts.length - 1);
  });

  test("one undo brings it back exactly, one redo clears it again", async () => {
    await page.keyboard.press("Control+z");
    await expect.poll(() => conflictCount(page)).toBe(conflicts.length);
    await page.keyboard.press("Control+Shift+Z");
    await expect.poll(() => conflictCount(page)).toBe(conflicts.length - 1);
  });

  test("Escape in the middle of a drag leaves everything as it was", async () => {
    await dragOnSheet(page, move.to, { x: move.to.x + 3, y: move.to.y + 3 }, async () => {
      await page.keyboard.press("Escape");
    });
    await expect.poll(() => conflictCount(page)).toBe(conflicts.length - 1);
  });

  test("the change is still there after a reload", async () => {
    await page.getByText(/^Saved /).waitFor();
    await page.reload();
    await page.locator(".sheet[data-view]").waitFor();
    await expect.poll(() => conflictCount(page)).toBe(conflicts.length - 1);
  });

  test("the plot map carries every code, readable on the drawn page", async () => {
    await page.getByRole("button", { name: "Paper", exact: true }).click();
    const download = page.waitForEvent("download");
    await page.getByRole("button", { name: /^Save as PDF/ }).click();
    const folder = mkdtempSync(join(tmpdir(), "plot-map-"));
    const path = join(folder, "map.pdf");
    await (await download).saveAs(path);
    const text = execFileSync("pdftotext", ["-layout", path, "-"], { encoding: "utf8" });
    for (const { id, code } of layout.plantings) {
      if (id !== move.id) expect(text).toContain(code);
    }
    for (const { code } of layout.beds) expect(text).toContain(code);
    expect(text).toContain("100 mm");
    // The page is drawn, not only written: the first sheet has a fair share of ink.
    execFileSync("pdftoppm", [
      "-gray",
      "-singlefile",
      "-r",
      "60",
      "-f",
      "1",
      "-l",
      "1",
      path,
      join(folder, "page"),
    ]);
    const image = readFileSync(join(folder, "page.pgm"));
    const dark = image.filter((value) => value < 128).length / image.length;
    expect(dark).toBeGreaterThan(0.01);
  });
});
