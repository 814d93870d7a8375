/**
 * axe-core over every dialog that the list of commands opens, in all four themes: all its rules in the
 * light one, then those of colour in the others, at 7:1 where more contrast is asked for (WCAG 2.2,
 * 1.4.6). Each dialog has at most one primary action.
 */
import axe from "axe-core";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { launchBrowser, siteUrl } from "./browser.ts";
import { openSample } from "./sheet.ts";

let browser: Browser;
let page: Page;

beforeAll(async () => {
  browser = await launchBrowser();
  page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  page.setDefaultTimeout(30_000);
});
afterAll(() => browser.close());

const OPTIONS = ".command-list [role=option]:not([aria-disabled=true])";

/** These open a file of the device or the camera instead of a dialog, or leave the plan. */
const NOT_RUN = /^(?:Open a plan file|Save as another file|Clear everything)/;
/** These open one without dots behind their name. */
const OPENING =
  /^(?:Plan settings|Figures|Keys|Climate of the site|Season calendar|Earlier crops|Own kinds and figures|Storage places|Trouble report|Seed list as CSV|Seed lots as CSV)$/;

/** A key pressed in the moment a dialog goes is lost: it is pressed until the list is there. */
async function openCommands(): Promise<void> {
  await expect
    .poll(
      async () => {
        const isOpen = (await page.getByRole("dialog").count()) > 0;
        if (!isOpen) await page.keyboard.press("Control+k");
        return page.locator(OPTIONS).count();
      },
      { timeout: 30_000, interval: 250 },
    )
    .toBeGreaterThan(0);
}

async function closeDialog(): Promise<void> {
  await page.keyboard.press("Escape");
  await page.getByRole("dialog").waitFor({ state: "detached" });
}

/** Names of commands that open a dialog and can be run now. */
async function dialogCommands(): Promise<readonly string[]> {
  await openCommands();
  const names = await page
    .locator(OPTIONS)
    .evaluateAll((all) => all.map((line) => line.querySelector("span")?.textContent ?? ""));
  await closeDialog();
  return names.filter(
    (name) => (name.endsWith("...") || OPENING.test(name)) && !NOT_RUN.test(name),
  );
}

/** Runs a command by its whole name; false where there is nothing left for it to do. */
async function run(name: string): Promise<boolean> {
  await openCommands();
  return page.locator(OPTIONS).evaluateAll((all, wanted) => {
    const line = all.find((each) => each.querySelector("span")?.textContent === wanted);
    if (line instanceof HTMLElement) line.click();
    return line !== undefined;
  }, name);
}

interface Look {
  readonly faults: readonly string[];
  readonly primaries: number;
}

/** What axe holds against the open dialog in each theme, and how many primary actions it shows. */
function lookAtDialog(): Promise<Look> {
  return page.evaluate(async () => {
    interface Found {
      readonly violations: readonly { id: string; nodes: readonly { html: string }[] }[];
    }
    const { axe: tool } = globalThis as unknown as {
      axe: { run: (root: Element, options: object) => Promise<Found> };
    };
    const dialog = [...document.querySelectorAll("dialog[open]")].at(-1);
    const root = document.documentElement;
    if (!dialog) return { faults: ["no dialog"], primaries: 0 };
    // What lies beneath a dialog is out of reach, and axe need not walk through it each time.
    const beneath: HTMLElement[] = [];
    for (
      let at: Element = dialog;
      at.parentElement && at !== document.body;
      at = at.parentElement
    ) {
      for (const other of at.parentElement.children) {
        if (other === at || !(other instanceof HTMLElement) || other.hidden) continue;
        other.hidden = true;
        beneath.push(other);
      }
    }
    const faults: string[] = [];
    const before = { theme: root.dataset.theme, contrast: root.dataset.contrast };
    for (const theme of ["light", "dark"]) {
      for (const contrast of ["usual", "more"]) {
        const isFirst = theme === "light" && contrast === "usual";
        root.dataset.theme = theme;
        if (contrast === "more") root.dataset.contrast = "more";
        else delete root.dataset.contrast;
        const colours = contrast === "more" ? "color-contrast-enhanced" : "color-contrast";
        const { violations } = await tool.run(dialog, {
          resultTypes: ["violations"],
          ...(isFirst ? {} : { runOnly: [colours] }),
        });
        for (const { id, nodes } of violations) {
          faults.push(`${theme}, ${contrast}: ${id}: ${nodes[0]?.html ?? ""}`);
        }
      }
    }
    root.dataset.theme = before.theme ?? "light";
    if (before.contrast === undefined) delete root.dataset.contrast;
    else root.dataset.contrast = before.contrast;
    for (const other of beneath) other.hidden = false;
    const primaries = [...dialog.querySelectorAll("button.primary")].filter((button) =>
      button.checkVisibility(),
    ).length;
    return { faults, primaries };
  });
}

/** Looks at every dialog that commands open now and was not looked at before. */
async function lookAtDialogs(opened: Set<string>): Promise<readonly string[]> {
  const faults: string[] = [];
  for (const name of await dialogCommands()) {
    if (opened.has(name)) continue;
    opened.add(name);
    // What an earlier command changed may leave nothing for this one to do.
    if (!(await run(name))) {
      await closeDialog();
      continue;
    }
    await page
      .locator("dialog[open] h2")
      .filter({ hasNotText: /^Commands$/ })
      .first()
      .waitFor();
    const { faults: found, primaries } = await lookAtDialog();
    faults.push(...found.map((fault) => `${name}: ${fault}`));
    if (primaries > 1) faults.push(`${name}: ${primaries} primary actions`);
    await closeDialog();
  }
  return faults;
}

/** Selects one more bed by its row in the tables, for the commands that need one or several. */
async function pick(code: string): Promise<void> {
  await page.getByRole("button", { name: "Tables", exact: true }).click();
  await page.locator(".object-table").getByRole("checkbox", { name: code, exact: true }).check();
}

test(
  "axe finds nothing in any dialog in any theme, and each has one primary action at most",
  {
    timeout: 240_000,
  },
  async () => {
    await openSample(page, siteUrl());
    await page.evaluate(axe.source);
    const opened = new Set<string>();
    const faults: string[] = [];
    for (const code of ["A05", "B05"]) {
      await pick(code);
      faults.push(...(await lookAtDialogs(opened)));
    }
    expect(opened.size).toBeGreaterThan(35);
    expect(faults).toEqual([]);
  },
);
