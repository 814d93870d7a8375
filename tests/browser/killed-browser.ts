/**
 * A Chromium with a disk of its own, killed for real while somebody edits: no closing, no last
 * words, in the middle of whatever it was doing.
 */
import { type ChildProcess, spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as sleep } from "node:timers/promises";
import { type Browser, type Page, chromium } from "playwright-core";
import { expect } from "vitest";
import { findChromium } from "../../.config/find-chromium.mjs";
import { type SeededRandom, seededRandom } from "../properties/seeded-random.ts";
import { CHROMIUM_ARGS } from "./browser.ts";
import { pagePlace } from "./sheet.ts";

/** What is told apart in the plan: how often it was retitled, and where its first planting lies. */
interface Marks {
  readonly retitled: number;
  readonly nudged: number;
}

interface StoredText {
  readonly text: string;
  readonly headSum: string;
  readonly sum: string;
}

interface PlanText {
  readonly title: string;
  readonly entries?: readonly { readonly id: string; readonly of: string; readonly what: string }[];
  readonly layouts: readonly { readonly plantings: readonly PlantingText[] }[];
}

interface PlantingText {
  readonly id: string;
  readonly outline: { readonly x: number; readonly y: number };
}

const NUDGE_M = 0.1;

/**
 * Starts, edits, kills and restarts a browser so many times; fails when a plan comes back wrong.
 * Gives back how many edits outlived all of it.
 */
export async function killWhileEditing(url: string, rounds: number, seed: number): Promise<number> {
  const profile = mkdtempSync(join(tmpdir(), "wideberth-kill-"));
  const random = seededRandom(seed);
  let running: RunningBrowser | null = null;
  try {
    running = await startBrowser(profile);
    let page = await openSite(running.browser, url);
    const first = await storedPlan(page);
    let from: Marks = { retitled: 0, nudged: 0 };
    for (let round = 1; round <= rounds; round += 1) {
      const log = { made: [from], confirmed: from };
      await selectFirstPlanting(page, await storedPlan(page));
      const editing = editOnAndOn(page, log, random);
      // Not before there is something to lose; then at any moment.
      await expect.poll(() => log.made.length, { timeout: 30_000 }).toBeGreaterThan(3);
      await sleep(random.next() * 3000);
      await kill(running.process);
      await editing;
      running = await startBrowser(profile);
      page = await openSite(running.browser, url);
      from = checkPlan(await storedPlan(page), first, log, `round ${round} of seed ${seed}`);
      await expect
        .poll(() => page.getByLabel("Plan title").inputValue())
        .toBe(titleOf(from, first));
    }
    return from.retitled + from.nudged;
  } finally {
    if (running) await kill(running.process);
    rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
  }
}

export interface RunningBrowser {
  readonly process: ChildProcess;
  readonly browser: Browser;
}

export async function startBrowser(profile: string): Promise<RunningBrowser> {
  const program = findChromium();
  if (program === null) throw new Error("No Chromium on the PATH.");
  const args = [
    ...CHROMIUM_ARGS,
    "--headless",
    "--remote-debugging-port=0",
    "--window-size=1440,900",
    "--no-default-browser-check",
    `--user-data-dir=${profile}`,
    "about:blank",
  ];
  // A group of its own, so that its helpers go with it and nobody else does.
  const process = spawn(program, args, { stdio: ["ignore", "ignore", "pipe"], detached: true });
  const address = await new Promise<string>((resolve, reject) => {
    let said = "";
    process.stderr.on("data", (data: Buffer) => {
      said += data.toString();
      const found = /DevTools listening on (ws:\S+)/.exec(said)?.[1];
      if (found) resolve(found);
    });
    process.once("exit", () => reject(new Error(`Chromium did not start: ${said.slice(-500)}`)));
  });
  return { process, browser: await chromium.connectOverCDP(address) };
}

export async function kill(process: ChildProcess): Promise<void> {
  if (process.pid === undefined || process.exitCode !== null || process.signalCode !== null) return;
  const gone = new Promise((resolve) => {
    process.once("exit", resolve);
  });
  globalThis.process.kill(-process.pid, "SIGKILL");
  await gone;
}

export async function openSite(browser: Browser, url: string): Promise<Page> {
  const context = browser.contexts()[0] ?? (await browser.newContext());
  const page = await context.newPage();
  await page.setViewportSize({ width: 1440, height: 900 });
  await page.goto(url);
  await page.locator(".sheet[data-view]").waitFor();
  await page.locator(".save-state.saved").waitFor();
  return page;
}

interface EditLog {
  /** Every state that was committed, in order. */
  made: Marks[];
  /** The newest state the page has called saved. */
  confirmed: Marks;
}

/** Retitles the plan and nudges its first planting, in turn, until the browser is gone. */
async function editOnAndOn(page: Page, log: EditLog, random: SeededRandom): Promise<void> {
  try {
    const title = page.getByLabel("Plan title");
    for (;;) {
      const last = log.made.at(-1) ?? log.confirmed;
      const retitled = { ...last, retitled: last.retitled + 1 };
      // Noted before it is made: a kill may fall between the two.
      log.made.push(retitled);
      await title.fill(`Edit ${retitled.retitled}`);
      await title.press("Enter");
      const nudged = { ...retitled, nudged: retitled.nudged + 1 };
      log.made.push(nudged);
      await nudgeFirstPlanting(page);
      if (random.next() < 0.4) {
        await page.locator(".save-state.saved").waitFor();
        log.confirmed = nudged;
      } else await sleep(random.next() * 250);
    }
  } catch (error) {
    // The browser was killed. Anything else is a fault of the test.
    if (!/closed|crashed|disconnected/i.test(String(error))) throw error;
  }
}

export async function selectFirstPlanting(page: Page, plan: PlanText): Promise<void> {
  const outline = plan.layouts[0]?.plantings[0]?.outline;
  if (!outline) throw new Error("The plan has no planting.");
  const { x, y } = await pagePlace(page, outline);
  await page.mouse.click(x, y);
}

async function nudgeFirstPlanting(page: Page): Promise<void> {
  await page.locator(".sheet[data-view]").focus();
  await page.keyboard.press("ArrowRight");
  // A run of arrow keys is one step; leaving the sheet ends it.
  await page.getByLabel("Plan title").focus();
}

/** The newest stored copy and its head, straight from the database. */
export async function storedPlan(page: Page): Promise<PlanText> {
  const stored = await page.evaluate(async (): Promise<StoredText> => {
    const ask = <T>(request: IDBRequest<T>) =>
      new Promise<T>((resolve, reject) => {
        request.addEventListener("success", () => resolve(request.result));
        request.addEventListener("error", () => reject(request.error ?? new Error("refused")));
      });
    const db = await ask(indexedDB.open("wideberth"));
    const stores = db.transaction(["generations", "heads", "notes"]);
    const planId = (await ask(stores.objectStore("notes").get("last"))) as string;
    const head = (await ask(stores.objectStore("heads").get(planId))) as {
      readonly revision: number;
      readonly checksum: string;
    };
    const copy = (await ask(stores.objectStore("generations").get([planId, head.revision]))) as {
      readonly text: string;
      readonly checksum: string;
    };
    db.close();
    return { text: copy.text, headSum: head.checksum, sum: copy.checksum };
  });
  expect(stored.sum).toBe(stored.headSum);
  return JSON.parse(stored.text) as PlanText;
}

function titleOf(marks: Marks, first: PlanText): string {
  return marks.retitled === 0 ? first.title : `Edit ${marks.retitled}`;
}

/** The stored plan must be one committed state, whole, and none older than the last one confirmed. */
function checkPlan(plan: PlanText, first: PlanText, log: EditLog, where: string): Marks {
  const retitled = Number(/^Edit (\d+)$/.exec(plan.title)?.[1] ?? 0);
  const moved = movedBy(plan, first);
  const nudged = Math.round(moved / NUDGE_M);
  const known = log.made.findIndex((made) => made.retitled === retitled && made.nudged === nudged);
  const confirmed = log.made.indexOf(log.confirmed);
  expect(known, `${where}: a state nobody made (${retitled}, ${nudged})`).toBeGreaterThan(-1);
  expect(known, `${where}: older than what was called saved`).toBeGreaterThanOrEqual(confirmed);
  // Everything else is as it was.
  const rest = { ...plan, title: first.title, layouts: [] };
  expect(rest, where).toEqual({ ...first, layouts: [] });
  return log.made[known] ?? log.confirmed;
}

/** Metres the first planting lies from where it lay; nothing else may differ. */
function movedBy(plan: PlanText, first: PlanText): number {
  let moved = 0;
  plan.layouts.forEach((layout, index) => {
    layout.plantings.forEach((planting, place) => {
      const before = first.layouts[index]?.plantings[place];
      if (!before || before.id !== planting.id) throw new Error("A planting is missing.");
      const { x, y } = planting.outline;
      const shift = Math.hypot(x - before.outline.x, y - before.outline.y);
      if (index > 0 || place > 0) expect(planting).toEqual(before);
      else moved = shift;
    });
  });
  return moved;
}
