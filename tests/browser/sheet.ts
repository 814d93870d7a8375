/** Steps a person takes on the drawn sheet, in sheet metres. */
import type { Page } from "playwright-core";

interface View {
  /** Pixels in a metre. */
  readonly scale: number;
  /** Pixel of the sheet's origin, within the sheet's box. */
  readonly x: number;
  readonly y: number;
}

interface Place {
  readonly x: number;
  readonly y: number;
}

const SHEET = ".sheet[data-view]";

/** Opens the site and waits for the sample plan: an empty sheet is drawn before it is read. */
export async function openSample(page: Page, url: string): Promise<void> {
  await page.goto(url);
  await page.locator(SHEET).waitFor();
  // On a phone the list lies in a drawer: it is there, though not in sight.
  await page.locator(".finding").first().waitFor({ state: "attached" });
}

/** What was set going is drawn: a frame to handle it, and one to paint it. */
export async function twoFrames(page: Page): Promise<void> {
  await page.evaluate(
    () =>
      new Promise((drawn) => {
        requestAnimationFrame(() => requestAnimationFrame(drawn));
      }),
  );
}

/** The view once it rests: a plan just opened is drawn first and fitted a moment later. */
export async function restingView(page: Page): Promise<View | null> {
  const read = () => page.locator(SHEET).getAttribute("data-view");
  let before = await read();
  for (let wait = 0; wait < 40; wait += 1) {
    await page.waitForTimeout(150);
    const now = await read();
    if (now !== null && now === before) return JSON.parse(now) as View;
    before = now;
  }
  return null;
}

/** Where a place of the sheet lies on the page, in CSS pixels. */
export async function pagePlace(page: Page, place: Place): Promise<Place> {
  const sheet = page.locator(SHEET);
  const view = await restingView(page);
  const box = await sheet.boundingBox();
  if (!view || !box) throw new Error("The sheet is not drawn.");
  return { x: box.x + view.x + place.x * view.scale, y: box.y + view.y - place.y * view.scale };
}

/** Presses at one place, moves in steps as a hand does, and lets go at another. */
export async function dragOnSheet(
  page: Page,
  from: Place,
  to: Place,
  beforeRelease?: () => Promise<void>,
): Promise<void> {
  const start = await pagePlace(page, from);
  const end = await pagePlace(page, to);
  await page.mouse.move(start.x, start.y);
  await page.mouse.down();
  for (let step = 1; step <= 12; step += 1) {
    const share = step / 12;
    await page.mouse.move(start.x + (end.x - start.x) * share, start.y + (end.y - start.y) * share);
  }
  await beforeRelease?.();
  await page.mouse.up();
}

/** How many conflicts the findings' heading counts. */
export async function conflictCount(page: Page): Promise<number> {
  const note = await page
    .getByRole("region", { name: "Findings" })
    .locator(".region-note")
    .innerText();
  return Number(/(\d+) conflict/.exec(note)?.[1] ?? 0);
}
