/** A Chromium killed while somebody writes into the field record. */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as sleep } from "node:timers/promises";
import type { Page } from "playwright-core";
import { expect } from "vitest";
import { seededRandom } from "../properties/seeded-random.ts";
import {
  type RunningBrowser,
  kill,
  openSite,
  selectFirstPlanting,
  startBrowser,
  storedPlan,
} from "./killed-browser.ts";

interface Written {
  made: number;
  confirmed: number;
}

/** Writes, kills and looks so many times; gives back how many entries outlived all of it. */
export async function killWhileWriting(url: string, rounds: number, seed: number): Promise<number> {
  const profile = mkdtempSync(join(tmpdir(), "wideberth-kill-record-"));
  const random = seededRandom(seed);
  let running: RunningBrowser | null = null;
  try {
    running = await startBrowser(profile);
    let page = await openSite(running.browser, url);
    let known = entriesOf(await storedPlan(page)).length;
    for (let round = 1; round <= rounds; round += 1) {
      const log: Written = { made: known, confirmed: known };
      await selectFirstPlanting(page, await storedPlan(page));
      const writing = writeOnAndOn(page, log);
      await expect.poll(() => log.confirmed - known, { timeout: 30_000 }).toBeGreaterThan(1);
      await sleep(random.next() * 1500);
      await kill(running.process);
      await writing;
      running = await startBrowser(profile);
      page = await openSite(running.browser, url);
      const entries = entriesOf(await storedPlan(page));
      const where = `round ${round} of seed ${seed}`;
      expect(entries.length, `${where}: fewer than were called saved`).toBeGreaterThanOrEqual(
        log.confirmed,
      );
      expect(entries.length, `${where}: more than were written`).toBeLessThanOrEqual(log.made);
      expect(new Set(entries.map(({ id }) => id)).size, `${where}: one twice`).toBe(entries.length);
      for (const { of, what } of entries.slice(known)) expect([of, what]).toEqual(["p1", "note"]);
      known = entries.length;
    }
    return known;
  } finally {
    if (running) await kill(running.process);
    rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
  }
}

function entriesOf({ entries = [] }: Awaited<ReturnType<typeof storedPlan>>) {
  return entries;
}

/** A note after the other by the dialog, each waited for until it is called saved, until the end. */
async function writeOnAndOn(page: Page, log: Written): Promise<void> {
  try {
    for (;;) {
      await page.getByRole("button", { name: "Add an entry ..." }).click();
      const dialog = page.getByRole("dialog");
      await dialog.getByLabel("What", { exact: true }).selectOption("note");
      await dialog.getByLabel("Note", { exact: true }).fill(`Entry ${log.made + 1}`);
      // Noted before it is made: a kill may fall between the two.
      log.made += 1;
      await dialog.getByRole("button", { name: "Add", exact: true }).click();
      await dialog.waitFor({ state: "detached" });
      await page.locator(".save-state.saved").waitFor();
      log.confirmed = log.made;
    }
  } catch (error) {
    // The browser was killed. Anything else is a fault of the test.
    if (!/closed|crashed|disconnected/i.test(String(error))) throw error;
  }
}
