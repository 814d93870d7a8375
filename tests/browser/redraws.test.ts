/** What is drawn anew while a planting is dragged or the sheet is panned: counts, never time. */
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { writePlan } from "../../src/core/model/read-plan.ts";
import { fieldPlan } from "../bench/field.ts";
import { launchBrowser, siteUrl } from "./browser.ts";
import { dropFile } from "./drop-file.ts";
import { pagePlace, twoFrames } from "./sheet.ts";

interface Counts {
  readonly frames: number;
  /** Most often that one layer was drawn within one frame. */
  readonly mostInAFrame: number;
  /** Drawings of each layer, the lowest first. */
  readonly layers: readonly number[];
  /** Changes of what the seed list and the particulars of what is held show. */
  readonly seedChanges: number;
  readonly looks: number;
  /** Times the pause between two looks of the panels has run off, and most pauses at once. */
  readonly pauses: number;
  readonly mostPauses: number;
  /** Grounds filled and words written, on whatever canvas. */
  readonly fills: number;
  readonly words: number;
  /** Times the sheet went from a drawing in full to a picture of it: once for each move of the view. */
  readonly moves: number;
}

/** Milliseconds between two looks, of panel/state/followed-plan.ts. */
const FOLLOW_MS = 120;
const SIZE = 300;
const TITLE = `Field of ${SIZE}`;

describe("redrawing", () => {
  let browser: Browser;
  let page: Page;
  const plan = { ...fieldPlan(SIZE, 8), title: TITLE };

  beforeAll(async () => {
    browser = await launchBrowser();
    page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
    await page.goto(siteUrl());
    await page.locator(".finding").first().waitFor();
    await dropFile(page, "field.json", writePlan(plan));
    await page.waitForFunction(
      (title) =>
        document.querySelector<HTMLInputElement>('input[aria-label="Plan title"]')?.value === title,
      TITLE,
    );
  });

  afterAll(async () => {
    await browser.close();
  });

  test("a layer takes no room before it has something to draw", async () => {
    const widths = () =>
      page.evaluate(() =>
        [...document.querySelectorAll<HTMLCanvasElement>(".sheet canvas")].map(
          ({ width }) => width,
        ),
      );
    const [resting = 0, ...above] = await widths();
    expect(resting).toBeGreaterThan(0);
    expect(above).toEqual([0]);
    await page.locator(".sheet[data-view]").focus();
    await page.keyboard.press("Control+a");
    await expect.poll(widths).toEqual([resting, resting]);
    await page.keyboard.press("Escape");
  });

  test("a drag draws no layer twice in a frame, and what rests only when it is taken and put down", async () => {
    const outline = plan.layouts[0]?.plantings[SIZE / 2]?.outline;
    if (outline?.shape !== "rectangle") throw new Error("The field has other outlines.");
    const turn = (outline.turnDeg * Math.PI) / 180;
    const at = await pagePlace(page, {
      x: outline.x + 0.5 * Math.cos(turn) + 1.5 * Math.sin(turn),
      y: outline.y - 0.5 * Math.sin(turn) + 1.5 * Math.cos(turn),
    });
    await page.mouse.move(at.x, at.y);
    await page.mouse.down();
    // Taken up: the selection and its panels are drawn before the counting.
    await page.mouse.move(at.x + 10, at.y);
    await page
      .getByRole("region", { name: "Particulars" })
      .getByText("1 planting", { exact: true })
      .waitFor();
    // What rests is drawn without it, in slices between frames.
    await expect.poll(() => isCrisp(page)).toBe(true);
    await twoFrames(page);
    await startCounting(page);
    // However fast or slow the machine is: until the panels have looked three times.
    for (let step = 0; step < 40 || (await pausesSoFar(page)) < 3; step += 1)
      await page.mouse.move(at.x + 10 + (step % 60) * 2, at.y + (step % 60));
    const counts = await endCounting(page);
    await page.keyboard.press("Escape");
    await page.mouse.up();
    const [resting = -1, ...above] = counts.layers;
    expect(counts.mostInAFrame).toBe(1);
    expect(resting).toBe(0);
    expect(Math.max(...above)).toBeGreaterThan(3);
    expect(Math.max(...above)).toBeLessThanOrEqual(counts.frames + 1);
    // The seed list shows nothing that a move changes.
    expect(counts.seedChanges).toBe(0);
    // The panels look when a pause has run off, and one that was running before may end here. On a
    // slow machine the first and the last look may be written in two goes.
    expect(counts.looks).toBeGreaterThan(0);
    expect(counts.looks).toBeLessThanOrEqual(counts.pauses + 3);
    expect(counts.mostPauses).toBe(1);
  });

  test("panning draws each layer at most once a frame", async () => {
    const box = await page.locator(".sheet[data-view]").boundingBox();
    if (!box) throw new Error("The sheet is not drawn.");
    await page.mouse.move(box.x + 300, box.y + 200);
    const view = () => page.locator(".sheet[data-view]").getAttribute("data-view");
    const before = await view();
    // The drag before was taken back: its drawing in full comes in what frames leave over.
    await expect.poll(() => isCrisp(page)).toBe(true);
    await twoFrames(page);
    await page.mouse.down({ button: "middle" });
    await startCounting(page);
    for (let step = 0; step < 40; step += 1) await page.mouse.move(box.x + 300 + step, box.y + 200);
    const counts = await endCounting(page);
    await page.mouse.up({ button: "middle" });
    await expect.poll(() => view()).not.toBe(before);
    expect(counts.mostInAFrame).toBe(1);
    expect(Math.max(...counts.layers)).toBeGreaterThan(3);
    // A picture of it is moved: each ground is drawn for it once, lightly, and no code again.
    expect(counts.fills).toBeGreaterThan(0);
    // A slow machine may let it rest in between, and then draws it in full once more.
    expect(counts.moves).toBeGreaterThan(0);
    expect(counts.moves).toBeLessThan(counts.frames / 2);
    expect(counts.fills).toBeLessThan(SIZE * 3 * counts.moves);
    expect(counts.words).toBeLessThan(counts.frames * 60 + counts.moves * SIZE * 2);
  });

  test("once the view rests, the drawing is what it would be if it were drawn anew", async () => {
    const drawn = () =>
      page.evaluate(() =>
        [...document.querySelectorAll<HTMLCanvasElement>(".sheet canvas")].map((layer) =>
          layer.toDataURL(),
        ),
      );
    const box = await page.locator(".sheet[data-view]").boundingBox();
    if (!box) throw new Error("The sheet is not drawn.");
    await page.mouse.move(box.x + 300, box.y + 200);
    const before = await drawn();
    const viewBefore = await page.locator(".sheet[data-view]").getAttribute("data-view");
    for (let step = 0; step < 8; step += 1) await page.mouse.wheel(0, step < 4 ? -60 : 60);
    await page.mouse.down({ button: "middle" });
    await page.mouse.move(box.x + 340, box.y + 230);
    await page.mouse.up({ button: "middle" });
    // A picture of it stands in until the view rests, however long that takes.
    await expect
      .poll(() =>
        page.evaluate(() => {
          const { view } = document.querySelector<HTMLElement>(".sheet[data-view]")?.dataset ?? {};
          const crisp = document.querySelector<HTMLElement>(".sheet canvas[data-crisp-at]");
          return crisp?.dataset["crispAt"] === view ? view : null;
        }),
      )
      .not.toBeOneOf([null, viewBefore]);
    await twoFrames(page);
    await expect.poll(() => drawn()).not.toEqual(before);
    const rested = await drawn();
    // Hidden and shown again, the grid has everything at rest drawn anew.
    await page.getByRole("button", { name: "Show", exact: true }).click();
    const grid = page.getByRole("checkbox", { name: /grid/i });
    await grid.click();
    await grid.click();
    await page.keyboard.press("Escape");
    await twoFrames(page);
    await expect.poll(drawn).toEqual(rested);
  });
});

/** Whether what rests has been drawn in full for the view that is shown. */
function isCrisp(page: Page): Promise<boolean> {
  return page.evaluate(() => {
    const { view } = document.querySelector<HTMLElement>(".sheet[data-view]")?.dataset ?? {};
    const crisp = document.querySelector<HTMLElement>(".sheet canvas[data-crisp-at]");
    return crisp !== null && crisp.dataset["crispAt"] === view;
  });
}

/** Counts how often each layer is cleared to be drawn: once for each drawing. */
async function startCounting(page: Page): Promise<void> {
  await page.evaluate((followMs) => {
    const layers = [...document.querySelectorAll<HTMLCanvasElement>(".sheet canvas")];
    const drawn = layers.map(() => 0);
    const inFrame = layers.map(() => 0);
    let [frames, mostInAFrame, seedChanges, looks] = [0, 0, 0, 0];
    let [pauses, pausing, mostPauses] = [0, 0, 0];
    let [fills, words, moves] = [0, 0, 0];
    let isCounting = true;
    const frame = () => {
      frames += 1;
      inFrame.fill(0);
      if (isCounting) requestAnimationFrame(frame);
    };
    requestAnimationFrame(frame);
    const stops = layers.map((canvas, index) => {
      const context = canvas.getContext("2d");
      if (!context) throw new Error("A layer cannot be drawn on.");
      context.clearRect = (...area) => {
        CanvasRenderingContext2D.prototype.clearRect.apply(context, area);
        drawn[index] = (drawn[index] ?? 0) + 1;
        inFrame[index] = (inFrame[index] ?? 0) + 1;
        mostInAFrame = Math.max(mostInAFrame, inFrame[index] ?? 0);
      };
      return () => Reflect.deleteProperty(context, "clearRect");
    });
    const countCalls = (name: "fill" | "fillText", counted: () => void) => {
      const pen = CanvasRenderingContext2D.prototype;
      const draw = Reflect.get(pen, name) as (...how: unknown[]) => void;
      const counting = function counting(this: unknown, ...how: unknown[]) {
        counted();
        Reflect.apply(draw, this, how);
      };
      Reflect.set(pen, name, counting);
      stops.push(() => Reflect.set(pen, name, draw));
    };
    countCalls("fill", () => {
      fills += 1;
    });
    countCalls("fillText", () => {
      words += 1;
    });
    const crispness = new MutationObserver((changes) => {
      for (const { target, oldValue } of changes)
        if (oldValue !== null && !(target as HTMLElement).dataset["crispAt"]) moves += 1;
    });
    for (const layer of layers)
      crispness.observe(layer, { attributeFilter: ["data-crisp-at"], attributeOldValue: true });
    stops.push(() => {
      crispness.disconnect();
      return true;
    });
    const wait = window.setTimeout.bind(window);
    Reflect.set(window, "setTimeout", (run: () => void, ms?: number, ...rest: unknown[]) => {
      if (ms !== followMs) return wait(run, ms, ...rest);
      pausing += 1;
      mostPauses = Math.max(mostPauses, pausing);
      return wait(() => {
        pausing -= 1;
        pauses += 1;
        run();
      }, ms);
    });
    stops.push(() => Reflect.set(window, "setTimeout", wait));
    const watch = (selector: string, count: () => void) => {
      const observer = new MutationObserver(count);
      const element = document.querySelector(selector);
      if (!element) throw new Error(`There is no ${selector}.`);
      observer.observe(element, {
        attributes: true,
        childList: true,
        subtree: true,
        characterData: true,
      });
      stops.push(() => {
        observer.disconnect();
        return true;
      });
    };
    watch(".seed-list", () => {
      seedChanges += 1;
    });
    watch("[data-region=particulars]", () => {
      looks += 1;
    });
    Reflect.set(window, "pausesSoFar", () => pauses);
    Reflect.set(window, "endCounting", () => {
      isCounting = false;
      for (const stop of stops) stop();
      return {
        frames,
        mostInAFrame,
        layers: drawn,
        seedChanges,
        looks,
        pauses,
        mostPauses,
        fills,
        words,
        moves,
      };
    });
  }, FOLLOW_MS);
}

function pausesSoFar(page: Page): Promise<number> {
  return page.evaluate(() => (Reflect.get(window, "pausesSoFar") as () => number)());
}

function endCounting(page: Page): Promise<Counts> {
  return page.evaluate(async () => {
    await new Promise((resolve) => {
      requestAnimationFrame(resolve);
    });
    const end: unknown = Reflect.get(window, "endCounting");
    if (typeof end !== "function") throw new Error("Nothing was counted.");
    return end() as Counts;
  });
}
