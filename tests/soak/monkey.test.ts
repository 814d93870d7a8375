/**
 * A seeded monkey: ten thousand presses, drags, keys and typed words on the sheet and in the panels.
 * After every hundred the plan that is stored, the one after a reload, the one reached by undoing
 * everything and doing it again, and what the command line finds must agree. Half an hour on a
 * busy machine; `WIDEBERTH_MONKEY=500` makes it as many actions, `WIDEBERTH_SEED=7` another monkey.
 */
import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import type { CheckReport } from "../../src/core/files/check-report.ts";
import type { Plan } from "../../src/core/model/plan.ts";
import { launchBrowser, siteUrl } from "../browser/browser.ts";
import { dropFile } from "../browser/drop-file.ts";
import { conflictCount, openSample } from "../browser/sheet.ts";
import { type SeededRandom, seededRandom } from "../properties/seeded-random.ts";
import { type BuiltProgram, buildProgram } from "../support/built-program.ts";

const ACTIONS = Number(process.env["WIDEBERTH_MONKEY"] ?? 10_000);
const SEED = Number(process.env["WIDEBERTH_SEED"] ?? 1);
const ROUND = 100;
/** A plan that grew beyond this many objects is left for the sample: copies double. */
const MOST_OBJECTS = 150;
const KEYS = (
  "ArrowLeft ArrowRight ArrowUp Shift+ArrowDown Escape Escape Tab Delete Control+d Control+a " +
  "Control+z Control+z Control+Shift+z Enter v b o m r l + - 0"
).split(" ");
const WORDS = ["3", "1.2 m", "7' 6\"", "12 May", "", "B07", "1e999", "-4", "<b>&", "2027-06-31"];

test("random actions: nothing lost, nothing broken, screen and command line agree", async () => {
  const sample = readFileSync("sample-plots/garden-to-solve.json", "utf8");
  const program = buildProgram();
  const browser = await launchBrowser();
  const faults: string[] = [];
  try {
    const page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
    page.setDefaultTimeout(20_000);
    page.on("pageerror", (error) => faults.push(error.message));
    page.on("console", (message) => {
      if (message.type() === "error") faults.push(message.text());
    });
    page.on("dialog", (dialog) => void dialog.accept());
    await openSample(page, siteUrl());
    const random = seededRandom(SEED);
    let start = sample;
    for (let round = 0; round < ACTIONS / ROUND; round += 1) {
      const id = `monkey-${SEED}-${round}`;
      const begun = { ...(JSON.parse(start) as Plan), id };
      await dropFile(page, `${id}.json`, JSON.stringify(begun));
      await page.getByText(`Opened ${id}.json.`).last().waitFor();
      const first = await storedText(page, id);
      for (let action = 0; action < ROUND; action += 1) await act(page, random);
      start = await settled(page, id, first, program);
      if (objectsIn(JSON.parse(start) as Plan) > MOST_OBJECTS) start = sample;
      expect(faults, `round ${round} of seed ${SEED}`).toEqual([]);
    }
  } finally {
    await browser.close();
    program.remove();
  }
}, 3_600_000);

/** The stored plan, once undoing, doing again, reloading and the command line have agreed upon it. */
async function settled(
  page: Page,
  id: string,
  first: string,
  program: BuiltProgram,
): Promise<string> {
  for (let press = 0; press < 4; press += 1) await page.keyboard.press("Escape");
  // Arrow keys are kept after a pause.
  await page.waitForTimeout(900);
  // The monkey may have stopped in the middle of its history.
  await pressAll(page, "Redo");
  const last = await storedText(page, id);
  await pressAll(page, "Undo");
  expect(await storedText(page, id)).toBe(first);
  await pressAll(page, "Redo");
  expect(await storedText(page, id)).toBe(last);
  await page.reload();
  await page.locator(".sheet[data-view]").waitFor();
  expect(await storedText(page, id)).toBe(last);
  const { title } = JSON.parse(last) as Plan;
  await expect.poll(() => page.title()).toBe(title);
  const { stdout, stderr } = program.run(["check", "--json", "-"], last);
  expect(stderr).toBe("");
  const told = JSON.parse(stdout) as CheckReport;
  await expect.poll(() => conflictCount(page)).toBe(told.counts.conflict);
  return last;
}

/** Presses a button of the header on and on, until there is nothing left for it to do. */
async function pressAll(page: Page, name: "Undo" | "Redo"): Promise<void> {
  await page.evaluate(async (label) => {
    const button = () =>
      [...document.querySelectorAll("button")].find((one) =>
        (one.getAttribute("aria-label") ?? one.textContent ?? "").startsWith(label),
      );
    for (let press = 0; press < 1000 && button()?.disabled === false; press += 1) {
      button()?.click();
      await new Promise((resolve) => {
        setTimeout(resolve, 0);
      });
    }
  }, name);
}

/** The text of the newest stored copy, once everything is saved. */
async function storedText(page: Page, id: string): Promise<string> {
  await page.waitForTimeout(500);
  await page.locator(".save-state.saved").waitFor();
  return page.evaluate(
    (planId) =>
      new Promise<string>((resolve, reject) => {
        const opening = indexedDB.open("wideberth");
        opening.addEventListener("error", () => reject(new Error("refused")));
        opening.addEventListener("success", () => {
          const db = opening.result;
          const range = IDBKeyRange.bound([planId], [planId, []]);
          const looking = db.transaction("generations").objectStore("generations");
          const cursor = looking.openCursor(range, "prev");
          cursor.addEventListener("success", () => {
            const text: unknown = cursor.result?.value.text;
            db.close();
            if (typeof text === "string") resolve(text);
            else reject(new Error(`${planId} is not stored`));
          });
        });
      }),
    id,
  );
}

async function act(page: Page, random: SeededRandom): Promise<void> {
  const { mouse, keyboard } = page;
  const box = await page.locator(".sheet").boundingBox();
  if (!box) throw new Error("The sheet is gone.");
  const place = () => ({
    x: box.x + random.between(5, box.width - 5),
    y: box.y + random.between(5, box.height - 5),
  });
  switch (random.whole(0, 9)) {
    case 0:
    case 1:
    case 2: {
      const [from, to] = [place(), place()];
      await mouse.move(from.x, from.y);
      await mouse.down();
      await mouse.move((from.x + to.x) / 2, (from.y + to.y) / 2);
      await mouse.move(to.x, to.y);
      if (random.whole(0, 9) === 0) await keyboard.press("Escape");
      await mouse.up();
      break;
    }
    case 3:
    case 4: {
      const { x, y } = place();
      await mouse.click(x, y, { clickCount: random.whole(1, 2) });
      break;
    }
    case 5:
    case 6:
    case 7:
      await keyboard.press(random.pick(KEYS));
      break;
    case 8: {
      const { x, y } = place();
      await mouse.move(x, y);
      await mouse.wheel(random.between(-300, 300), random.between(-300, 300));
      break;
    }
    default:
      await typeSomewhere(page, random);
  }
}

/** Into a field of the particulars or the seed list, or a press on a finding. */
async function typeSomewhere(page: Page, random: SeededRandom): Promise<void> {
  const word = random.pick(WORDS);
  const at = random.whole(0, 1000);
  const isField = random.whole(0, 2) > 0;
  const focused = await page.evaluate(
    ([nth, wantsField]) => {
      const selector = wantsField
        ? "[data-region=particulars] input[type=text]"
        : ".finding button";
      const all = [...document.querySelectorAll<HTMLElement>(selector)];
      const one = all[nth % Math.max(1, all.length)];
      one?.focus();
      return one !== undefined;
    },
    [at, isField] as const,
  );
  if (!focused) return;
  if (isField) {
    await page.keyboard.press("Control+a");
    await page.keyboard.type(word);
  }
  await page.keyboard.press("Enter");
}

function objectsIn({ layouts, surroundings }: Plan): number {
  return layouts.reduce(
    (sum, { beds, plantings }) => sum + beds.length + plantings.length,
    surroundings.length,
  );
}
