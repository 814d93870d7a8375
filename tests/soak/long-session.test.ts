/** An hour of editing in some minutes: memory and storage stay where they are. */
import type { CDPSession, Page } from "playwright-core";
import { expect, test } from "vitest";
import { KEEPING_RULE } from "../../src/store/keeping/keeping-rule.ts";
import { HISTORY_DEPTH } from "../../src/store/plan/plan-store.ts";
import { launchBrowser, siteUrl } from "../browser/browser.ts";

const COMMITS = 10_000;
/** Until the history is full, it grows as it should. */
const WARM_UP = HISTORY_DEPTH * 3;

test("ten thousand commits grow neither the memory nor the storage", async () => {
  const browser = await launchBrowser();
  try {
    const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
    await page.goto(siteUrl());
    await page.locator(".sheet[data-view]").waitFor();
    const session = await page.context().newCDPSession(page);
    await commitMany(page, 0, WARM_UP);
    const before = await heapMb(session);
    await commitMany(page, WARM_UP, COMMITS);
    const after = await heapMb(session);
    console.log(`Heap after ${WARM_UP} commits ${before} MB, after ${COMMITS} ${after} MB.`);
    expect(after).toBeLessThan(before * 1.2);
    const most = KEEPING_RULE.newest + KEEPING_RULE.days + KEEPING_RULE.openings * 2;
    expect(await copiesStored(page)).toBeLessThanOrEqual(most);
    expect(await page.getByLabel("Plan title").inputValue()).toBe(`Edit ${COMMITS - 1}`);
  } finally {
    await browser.close();
  }
}, 1_800_000);

/** Retitles the plan as a grower would, so many times: each is a commit, drawn and saved. */
async function commitMany(page: Page, from: number, to: number): Promise<void> {
  await page.evaluate(
    async ([first, end]) => {
      const field = document.querySelector<HTMLInputElement>('input[aria-label="Plan title"]');
      if (!field) throw new Error("The title is not there.");
      for (let edit = first ?? 0; edit < (end ?? 0); edit += 1) {
        field.focus();
        // As typing does: past the page's own record of the value.
        Reflect.set(HTMLInputElement.prototype, "value", `Edit ${edit}`, field);
        field.dispatchEvent(new Event("input", { bubbles: true }));
        field.blur();
        await new Promise((resolve) => {
          setTimeout(resolve, 0);
        });
      }
    },
    [from, to],
  );
  await page.locator(".save-state.saved").waitFor();
}

async function heapMb(session: CDPSession): Promise<number> {
  await session.send("HeapProfiler.collectGarbage");
  await session.send("HeapProfiler.collectGarbage");
  const { usedSize } = await session.send("Runtime.getHeapUsage");
  return Math.round(usedSize / 10_000) / 100;
}

function copiesStored(page: Page): Promise<number> {
  return page.evaluate(
    () =>
      new Promise<number>((resolve, reject) => {
        const opening = indexedDB.open("wideberth");
        opening.addEventListener("error", () => reject(new Error("refused")));
        opening.addEventListener("success", () => {
          const counting = opening.result
            .transaction("generations")
            .objectStore("generations")
            .count();
          counting.addEventListener("success", () => {
            opening.result.close();
            resolve(counting.result);
          });
        });
      }),
  );
}
