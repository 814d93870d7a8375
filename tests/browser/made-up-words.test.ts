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
import { madeUp } from "../support/made-up-words.ts";
import { CORE_NOT_DONE, QUOTED } from "../support/not-yet-words.ts";
import { sourceFiles } from "../architecture/source-files.ts";
import { textsIn, treeOf } from "../architecture/syntax.ts";
import { launchBrowser } from "./browser.ts";
import { commandsThatOpen } from "../support/commands-that-open.ts";
import { noteDrawnTexts, seenOn } from "./made-up-page.ts";
import { openSample, twoFrames } from "./sheet.ts";

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
  page.setDefaultTimeout(20_000);
  await noteDrawnTexts(page);
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

/** Texts of the files that still hold words, or quote. */
function textsNotDone(): readonly string[] {
  const listed = new Set([...QUOTED, ...CORE_NOT_DONE].map((inside) => `src/${inside}`));
  return [...sourceFiles()].flatMap(([path, text]) =>
    listed.has(path) ? textsIn(treeOf(path, text)) : [],
  );
}

const known = new Map<string, string>();

const wordsIn = (text: string): readonly string[] => text.match(/[A-Za-z]{3,}/g) ?? [];

/** What a sentence of a module not done is joined with: `Move B04-1 4.6 m north into A04`. */
const isJoined = (words: readonly string[]) =>
  words.length <= 2 && words.every((word) => ALONE.has(word));

/** A place in a regulation, as it is cited in any language. */
const CITED = /\d+ CFR [\d.a-z]+(?: Table \d+)?(?:, footnote \d+)?/g;

/** Plain English left in a text once names are taken out; empty where there is none. */
function plainIn(text: string): string {
  const before = known.get(text);
  if (before !== undefined) return before;
  let rest = ALONE.has(text) ? "" : text.replace(CITED, "·");
  if (/[A-Za-z]{3,}/.test(rest)) {
    for (const name of WITHIN) if (rest.includes(name)) rest = rest.replaceAll(name, "·");
  }
  const left = wordsIn(rest);
  const plain = isJoined(left) || isJoined(wordsIn(text)) ? "" : left.join(" ");
  known.set(text, plain);
  return plain;
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

/** From the sheet: in a field that is being changed the keys are the field's. */
async function openCommands(): Promise<void> {
  const first = page.locator(".command-list [role=option]").first();
  for (let more = 4; more >= 0; more -= 1) {
    await page.locator(".sheet[data-view]").focus();
    await page.keyboard.press("Control+k");
    // A dialog that is just closing gives the focus back a moment later, and the key is lost.
    const isOpen = await first.waitFor({ timeout: more === 0 ? 10_000 : 2000 }).then(
      () => true,
      () => false,
    );
    if (isOpen) return;
  }
}

/** The list of commands: what each line says, and whether it can be run now. */
async function commandLines(): Promise<readonly string[]> {
  await openCommands();
  const options = page.locator(".command-list [role=option]");
  await look("commands");
  const lines = await options.evaluateAll((all) =>
    all
      .filter((line) => line.getAttribute("aria-disabled") !== "true")
      .map((line) => line.textContent),
  );
  await page.keyboard.press("Escape");
  await page.getByRole("dialog").waitFor({ state: "detached" });
  return lines;
}

/** By their names in the made-up language. */
const OPENING = commandsThatOpen()
  .filter((name) => name !== "Commands")
  .map(madeUp);

/** What the sample has not: a second layout, a season before. */
const NEED_MORE: readonly string[] = [
  "Take plantings to another layout ...",
  "Use these beds in other layouts ...",
  "Add lots of the season before ...",
];

/** Makes a new plan at once where nothing is worked on: it comes last. */
const LAST = madeUp("New plan");

const tried = new Set<string>();

/** Opens every dialog a command opens that can be used now and was not looked at before. */
async function lookAtDialogs(names = OPENING.filter((name) => name !== LAST)): Promise<void> {
  const lines = (await commandLines()).filter(
    (line) => !tried.has(line) && names.some((name) => line.startsWith(name)),
  );
  for (const line of lines) {
    await openCommands();
    const option = page.locator(".command-list [role=option]").filter({ hasText: line }).first();
    await option.click();
    await page
      .locator("dialog h2")
      .filter({ hasNotText: madeUp("Commands") })
      .first()
      .waitFor();
    await page.waitForLoadState("networkidle");
    tried.add(line);
    await look(line);
    await page.keyboard.press("Escape");
    await page.getByRole("dialog").waitFor({ state: "detached" });
  }
}

/** Selects what is found by a text, as a grower would. */
async function find(text: string): Promise<void> {
  await page.locator(".find-field").fill(text);
  await page.keyboard.press("Enter");
  await page.locator(".region-foot").first().waitFor();
  await twoFrames(page);
}

test("tables, lots, the comparison and the walk", { timeout: 60_000 }, async () => {
  // The sheet comes last, for what follows.
  for (const at of [1, 2, 3, 4, 0]) {
    const tab = page.locator(".view-tabs button").nth(at);
    await tab.click();
    await tab.and(page.locator("[aria-pressed=true]")).waitFor();
    await page.waitForLoadState("networkidle");
    await look(`view-${at}`);
  }
});

test("every dialog that a command opens", { timeout: 240_000 }, async () => {
  await look("sheet");
  await lookAtDialogs();
  for (const code of ["B01-1", "B01", "Tool shed"]) {
    await find(code);
    await look(`selected ${code}`);
    await lookAtDialogs();
  }
  await page.locator(".sheet[data-view]").focus();
  await page.keyboard.press("Control+a");
  await look("all selected");
  await lookAtDialogs();
  await page.locator(".sheet[data-view]").focus();
  await page.keyboard.press("Shift+L");
  await lookAtDialogs([LAST]);
  const left = OPENING.filter((name) => ![...tried].some((line) => line.startsWith(name)));
  expect(left).toEqual(NEED_MORE.map(madeUp));
});

test("on a phone, upright and lying", { timeout: 60_000 }, async () => {
  await find("B01-1");
  for (const [width, height] of [
    [390, 844],
    [844, 390],
  ] as const) {
    await page.setViewportSize({ width, height });
    await page.waitForLoadState("networkidle");
    await look(`${width} px wide`);
    const drawers = page.locator(".drawer-bar button");
    for (let at = 0; at < (await drawers.count()); at += 1) {
      const drawer = drawers.nth(at);
      await drawer.click();
      await drawer.and(page.locator("[aria-expanded=true]")).waitFor();
      await look(`${width} px wide, drawer ${at}`);
      await drawer.click();
    }
  }
});

test("nothing is plain English and nothing is cut off", () => {
  expect([...new Set(faults)]).toEqual([]);
});
