/**
 * Nobody gets in and nothing goes out: the built site under its own policy, with a session that
 * touches every part, and with a plan whose every name tries to be more than a name.
 */
import { readFileSync } from "node:fs";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { launchBrowser, siteUrl } from "./browser.ts";
import { openSample } from "./sheet.ts";
import { dropFile } from "./drop-file.ts";

const MARKUP = `"></svg><script>window.harmed = true</script><img src="https://outside.example/x" onerror="window.harmed = true">`;
const HOSTILE = [MARKUP, "javascript:window.harmed=true", "\u202Etxt.exe", "=1+1", "a\u0007b"];

let browser: Browser;
let context: BrowserContext;
let page: Page;
const requests: string[] = [];
const violations: string[] = [];
const errors: string[] = [];

beforeAll(async () => {
  browser = await launchBrowser();
  context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
  context.on("request", (request) => requests.push(request.url()));
  page = await context.newPage();
  page.on("pageerror", (error) => errors.push(String(error)));
  await page.exposeFunction("noteViolation", (text: string) => violations.push(text));
  await page.addInitScript(() => {
    document.addEventListener("securitypolicyviolation", ({ effectiveDirective, blockedURI }) => {
      (window as unknown as { noteViolation: (text: string) => void }).noteViolation(
        `${effectiveDirective} ${blockedURI}`,
      );
    });
  });
  await openSample(page, siteUrl());
});
afterAll(() => browser.close());

/** The sample plan with hostile names in every place a person can write in. */
function hostilePlan(): string {
  const file = new URL("../../sample-plots/garden-to-solve.json", import.meta.url);
  let next = 0;
  const value: unknown = JSON.parse(readFileSync(file, "utf8"), (key, inner: unknown) => {
    if (!["title", "name", "label", "note"].includes(key) || typeof inner !== "string")
      return inner;
    next += 1;
    return `${HOSTILE[next % HOSTILE.length]} ${next}`;
  });
  // A plan of its own: a file with the id of the open one would be asked about first.
  return JSON.stringify(Object.assign(Object(value), { id: "hostile" }));
}

async function pick(menu: string, item: string | RegExp): Promise<void> {
  await page.getByRole("button", { name: menu, exact: true }).click();
  await page.locator(".menu").getByRole("button", { name: item, exact: true }).click();
}

async function putAway(): Promise<void> {
  await page.keyboard.press("Escape");
  await page.locator("dialog[open]").waitFor({ state: "detached" });
}

/** Menu items that open a window. */
const WINDOWS: readonly string[] = [
  "Files for others ...",
  "Kept plans ...",
  "Season calendar",
  "Climate of the site",
  "Figures",
  "Own kinds and figures",
  "Seed list as CSV",
  "Plan settings",
  "Keys",
  "Trouble report",
];

/** Makes the plot map and every file for others that this plan has what it takes for. */
async function makeEveryFile(): Promise<void> {
  await page.getByRole("button", { name: "Paper", exact: true }).click();
  const map = page.waitForEvent("download");
  await page.getByRole("button", { name: /^Save as PDF/ }).click();
  await (await map).path();
  // Labels are files of their own, and come after it.
  await page.getByText(/^Made /).waitFor();
  await putAway();
  await pick("Plan", "Files for others ...");
  const choice = page.getByRole("dialog").getByRole("combobox", { name: "File", exact: true });
  const kinds = await choice
    .locator("option")
    .evaluateAll((options) => options.map((option) => (option as HTMLOptionElement).value));
  expect(kinds.length).toBeGreaterThan(3);
  let saved = 0;
  for (const kind of kinds) {
    await choice.selectOption(kind);
    const save = page.getByRole("button", { name: "Save the file" });
    if (await save.isDisabled()) continue;
    const download = page.waitForEvent("download");
    await save.click();
    await (await download).path();
    await page.getByText(/^Made /).waitFor();
    saved += 1;
  }
  expect(saved).toBeGreaterThan(kinds.length / 2);
  await putAway();
}

async function useEveryPart(): Promise<void> {
  for (const window of WINDOWS) {
    await pick("Plan", window);
    await page.locator("dialog[open] h2").first().waitFor();
    await putAway();
  }
  await pick("Layout", /^Arrange /);
  await page.getByRole("button", { name: "Arrange", exact: true }).click();
  await page
    .getByText("in the best so far")
    .or(page.locator("dialog .dialog-actions"))
    .first()
    .waitFor();
  await putAway();
  await makeEveryFile();
  for (const view of ["Compare", "Tables", "Sheet"]) {
    await page.getByRole("button", { name: view, exact: true }).click();
  }
}

test("the page carries a policy, and no script or style inside itself", async () => {
  const html = await (await fetch(siteUrl())).text();
  const policy = /http-equiv="Content-Security-Policy" content="([^"]+)"/.exec(html)?.[1] ?? "";
  expect(policy).toContain("default-src");
  expect(policy).not.toMatch(/unsafe|\*|https?:/);
  // The policy stands before everything it is to govern.
  expect(html.indexOf("Content-Security-Policy")).toBeLessThan(html.indexOf("<link"));
  expect(html).not.toMatch(/<script(?![^>]*\bsrc=)/);
  expect(html).not.toMatch(/<style|\sstyle=|\son\w+=/);
});

test("the policy is in force: text is not turned into code", async () => {
  const refused = await page.evaluate(() => {
    const script = document.createElement("script");
    script.textContent = "window.inlineRan = true";
    document.head.append(script);
    return !("inlineRan" in window);
  });
  expect(refused).toBe(true);
  await expect.poll(() => violations.length).toBeGreaterThan(0);
  violations.length = 0;
});

describe("a session through every part", () => {
  test("asks nothing of anybody else and never meets the policy", async () => {
    await useEveryPart();
    const outside = requests.filter(
      (url) => !/^(?:blob|data):/.test(url) && !url.startsWith(siteUrl()),
    );
    expect(outside).toEqual([]);
    expect(violations).toEqual([]);
    expect(errors).toEqual([]);
  });

  test("with hostile names everywhere shows them as text", async () => {
    await dropFile(page, `${MARKUP}.json`, hostilePlan());
    await page
      .getByText(/^Opened /)
      .last()
      .waitFor();
    await page.getByText(/^Saved \d/).waitFor();
    await page.reload();
    await page.locator(".sheet[data-view]").waitFor();
    await useEveryPart();
    await expect.poll(() => page.getByText("onerror=").count()).toBeGreaterThan(0);
    await expect.poll(() => page.evaluate(() => "harmed" in window)).toBe(false);
    await expect
      .poll(() => page.locator("img, iframe, svg script, body script:not([src])").count())
      .toBe(0);
    const outside = requests.filter(
      (url) => !/^(?:blob|data):/.test(url) && !url.startsWith(siteUrl()),
    );
    expect(outside).toEqual([]);
    expect(violations).toEqual([]);
    expect(errors).toEqual([]);
  });

  test("leaves nothing behind but this site's own storage", async () => {
    await expect.poll(() => context.cookies()).toEqual([]);
  });
});
