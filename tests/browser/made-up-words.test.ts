/**
 * The whole site in a made-up language: every text of the words files has accents on all its letters
 * and is a third longer. Whatever is still plain English on a screen or in a dialog stands outside
 * the words files; whatever is cut off has no room for another language. What the grower typed, names
 * of kinds and sources, codes and units are nobody's words.
 */
import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { type PreviewServer, preview } from "vite";
import { afterAll, beforeAll, expect, test } from "vitest";
import { repository, tool } from "../../.config/repository.mjs";
import { kinds } from "../../src/core/kinds/kinds.ts";
import { crossingGroups } from "../../src/core/kinds/groups.ts";
import { sources } from "../../src/core/kinds/sources.ts";
import { isWordsFile, madeUp } from "../support/made-up-words.ts";
import { COMPONENTS_NOT_DONE, MODULES_NOT_DONE } from "../support/not-yet-words.ts";
import { sourceFiles } from "../architecture/source-files.ts";
import { textsIn, treeOf } from "../architecture/syntax.ts";
import { launchBrowser } from "./browser.ts";
import { openSample } from "./sheet.ts";

let browser: Browser;
let page: Page;
let server: PreviewServer;
let outDir: string;

beforeAll(async () => {
  outDir = mkdtempSync(join(tmpdir(), "wideberth-made-up-"));
  const config = join(repository, "tests/support/made-up.config.ts");
  execFileSync(
    tool("vite"),
    ["build", "--config", config, "--outDir", outDir, "--logLevel", "error"],
    {
      cwd: repository,
      env: { ...process.env, NODE_ENV: "production" },
      stdio: ["ignore", "ignore", "inherit"],
    },
  );
  server = await preview({
    configFile: join(repository, "vite.config.ts"),
    logLevel: "error",
    build: { outDir },
    preview: { host: "127.0.0.1", port: 0 },
  });
  browser = await launchBrowser();
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
  page = await context.newPage();
  page.setDefaultTimeout(10_000);
  await openSample(page, server.resolvedUrls?.local[0] ?? "");
}, 240_000);

afterAll(async () => {
  await browser?.close();
  await server?.close();
  rmSync(outDir, { recursive: true, force: true });
});

/** Names and codes that stay as they are in any language, and texts of what is not done yet. */
const NOBODYS_WORDS = [
  ...textsWithin(kinds),
  ...textsWithin(crossingGroups),
  ...textsWithin(sources),
  ...textsWithin(
    JSON.parse(readFileSync(join(repository, "sample-plots/garden-to-solve.json"), "utf8")),
  ),
]
  .filter((text) => /[A-Za-z]{3}/.test(text))
  .sort((a, b) => b.length - a.length);

const NOT_DONE = textsNotDone().filter((text) => /[A-Za-z]{3}/.test(text));
/** Single words would let any sentence pass: they count where they are all there is. */
const ALONE: ReadonlySet<string> = new Set(NOT_DONE);
const WITHIN = [
  ...NOBODYS_WORDS,
  ...NOT_DONE.filter((text) => /[A-Za-z]\W+[A-Za-z]/.test(text)),
].sort((a, b) => b.length - a.length);

function textsWithin(value: unknown): readonly string[] {
  if (typeof value === "string") return [value];
  return typeof value === "object" && value !== null
    ? Object.values(value).flatMap(textsWithin)
    : [];
}

/** Texts of modules and components that are still to give their words away. */
function textsNotDone(): readonly string[] {
  return [...sourceFiles()].flatMap(([path, text]) => {
    const inside = path.slice("src/".length);
    const isListed = path.endsWith(".tsx")
      ? COMPONENTS_NOT_DONE.includes(inside)
      : MODULES_NOT_DONE.some((part) => inside.startsWith(`${part}/`)) && !isWordsFile(path);
    return isListed ? textsIn(treeOf(path, text)) : [];
  });
}

const known = new Map<string, string>();

const wordsIn = (text: string): readonly string[] => text.match(/[A-Za-z]{3,}/g) ?? [];

/** What a sentence of a module not done is joined with: `Move B04-1 4.6 m north into A04`. */
const isJoined = (words: readonly string[]) =>
  words.length <= 2 && words.every((word) => ALONE.has(word));

/** Plain English left in a text once names are taken out; empty where there is none. */
function plainIn(text: string): string {
  const before = known.get(text);
  if (before !== undefined) return before;
  let rest = ALONE.has(text) ? "" : text;
  if (/[A-Za-z]{3,}/.test(rest)) {
    for (const name of WITHIN) if (rest.includes(name)) rest = rest.replaceAll(name, "·");
  }
  const left = wordsIn(rest);
  const plain = isJoined(left) || isJoined(wordsIn(text)) ? "" : left.join(" ");
  known.set(text, plain);
  return plain;
}

interface Seen {
  readonly texts: readonly string[];
  readonly clipped: readonly string[];
}

/** What can be read or heard of the page, and what is cut off. */
function seenOn(shown: Page): Promise<Seen> {
  return shown.evaluate(() => {
    const texts = new Set<string>();
    const clipped = new Set<string>();
    for (const element of document.querySelectorAll("body *")) {
      if (!element.checkVisibility() || element.closest("svg, script, style, kbd, .code")) continue;
      for (const name of ["aria-label", "title", "placeholder", "aria-valuetext"]) {
        const text = element.getAttribute(name);
        if (text !== null) texts.add(text);
      }
      const own = [...element.childNodes]
        .filter((node) => node.nodeType === Node.TEXT_NODE)
        .map((node) => (node.textContent ?? "").trim())
        .filter((text) => text !== "");
      for (const text of own) texts.add(text);
      if (own.length === 0 || element.closest(".visually-hidden")) continue;
      const { overflowX, textOverflow } = getComputedStyle(element);
      const isCut = overflowX === "hidden" || overflowX === "clip";
      if (isCut && textOverflow !== "ellipsis" && element.scrollWidth > element.clientWidth + 1) {
        clipped.add(`${element.className}: ${own.join(" ")}`);
      }
    }
    return { texts: [...texts], clipped: [...clipped] };
  });
}

async function faultsOn(where: string): Promise<readonly string[]> {
  const { texts, clipped } = await seenOn(page);
  expect(
    texts.some((text) => /[ḃçďḟĝ]/.test(text)),
    where,
  ).toBe(true);
  return [
    ...texts.flatMap((text) =>
      plainIn(text) === "" ? [] : [`${where}: ${plainIn(text)} | ${text}`],
    ),
    ...clipped.map((text) => `${where}: cut off: ${text}`),
  ];
}

const faults: string[] = [];
async function look(where: string): Promise<void> {
  faults.push(...(await faultsOn(where)));
}

/** The list of commands: what each line says, and whether it can be run now. */
async function commandLines(): Promise<readonly string[]> {
  await page.keyboard.press("Control+k");
  const options = page.locator(".command-list [role=option]");
  await options.first().waitFor();
  const lines = await options.evaluateAll((all) =>
    all
      .filter((line) => line.getAttribute("aria-disabled") !== "true")
      .map((line) => line.textContent),
  );
  await page.keyboard.press("Escape");
  await page.getByRole("dialog").waitFor({ state: "detached" });
  return lines;
}

/** Those that open a file of the device instead of a dialog. */
const NOT_RUN = ["Open a plan file ...", "Save as another file ..."].map(madeUp);
/** Those without dots that open one. */
const OPENING = [
  "Plan settings",
  "Figures",
  "Keys",
  "Climate of the site",
  "Season calendar",
  "Earlier crops",
  "Own kinds and figures",
  "Storage places",
  "Trouble report",
  "Seed list as CSV",
  "Seed lots as CSV",
  "Picture under the drawing",
].map(madeUp);

test("tables, lots and the comparison", { timeout: 60_000 }, async () => {
  // The sheet comes last, for what follows; the walk has a window of its own.
  for (const at of [1, 2, 3, 0]) {
    await page.locator(".view-tabs button").nth(at).click();
    await page
      .locator(".view-tabs button")
      .nth(at)
      .and(page.locator("[aria-pressed=true]"))
      .waitFor();
    await page.waitForLoadState("networkidle");
    await look(`view-${at}`);
  }
});

test("every dialog that a command opens", { timeout: 240_000 }, async () => {
  await look("sheet");
  const lines = (await commandLines()).filter(
    (line) =>
      (line.includes("...") || OPENING.some((name) => line.startsWith(name))) &&
      !NOT_RUN.some((name) => line.startsWith(name)),
  );
  let dialogs = 0;
  for (const [at, line] of lines.entries()) {
    await page.keyboard.press("Control+k");
    const options = page.locator(".command-list [role=option]");
    await options.first().waitFor();
    // What an earlier command changed may leave nothing for this one to do.
    if ((await options.filter({ hasText: line }).count()) === 0) {
      await page.keyboard.press("Escape");
      await page.getByRole("dialog").waitFor({ state: "detached" });
      continue;
    }
    await options.filter({ hasText: line }).first().click();
    const isOpen = await page
      .locator("dialog h2, [role=dialog] h2")
      .filter({ hasNotText: madeUp("Commands") })
      .first()
      .waitFor({ timeout: 4000 })
      .then(() => true)
      .catch(() => false);
    await look(`${at}`);
    if (isOpen) dialogs += 1;
    await page.keyboard.press("Escape");
    await page.getByRole("dialog").waitFor({ state: "detached" });
  }
  expect(dialogs).toBeGreaterThan(20);
});

test("nothing is plain English and nothing is cut off", () => {
  expect([...new Set(faults)]).toEqual([]);
});
