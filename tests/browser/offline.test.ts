/**
 * The program without a network: it can be installed, opens, edits, keeps, checks, opens files and
 * prints; a new version waits to be taken; a part that does not arrive is explained.
 */
import { readFileSync } from "node:fs";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { launchBrowser, siteUrl } from "./browser.ts";
import { dropFile } from "./drop-file.ts";
import { type SecondServer, startSecondServer } from "./second-server.ts";
import { conflictCount } from "./sheet.ts";

let browser: Browser;
let context: BrowserContext;
let page: Page;

beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());
beforeEach(async () => {
  context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
  page = await context.newPage();
});
afterEach(() => context.close());

const sheet = () => page.locator(".sheet[data-view]");

/** Opens the site and waits until the whole program is on the device. */
async function visit(url: string): Promise<void> {
  await page.goto(url);
  await sheet().waitFor();
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
  await expect
    .poll(() => page.evaluate(() => navigator.serviceWorker.controller?.state))
    .toBe("activated");
}

async function retitle(title: string): Promise<void> {
  const field = page.getByLabel("Plan title");
  await field.fill(title);
  await field.press("Enter");
  await page.getByText(/^Saved /).waitFor();
}

const title = () => page.getByLabel("Plan title").inputValue();

describe("what installing asks for", () => {
  interface Manifest {
    readonly name: string;
    readonly short_name: string;
    readonly start_url: string;
    readonly scope: string;
    readonly display: string;
    readonly icons: readonly {
      readonly src: string;
      readonly sizes: string;
      readonly type: string;
      readonly purpose?: string;
    }[];
  }

  test("is there: manifest, icons of their sizes, a start within scope, a worker in charge", async () => {
    await visit(siteUrl());
    const href = await page.locator('link[rel="manifest"]').getAttribute("href");
    const address = new URL(href ?? "", siteUrl());
    const manifest = (await (await fetch(address)).json()) as Manifest;
    expect(manifest.name).toBe("Wideberth");
    expect(manifest.short_name.length).toBeLessThanOrEqual(12);
    expect(manifest.display).toBe("standalone");
    expect(new URL(manifest.start_url, address).href).toBe(siteUrl());
    expect(new URL(manifest.scope, address).href).toBe(siteUrl());
    const sizes: string[] = [];
    for (const icon of manifest.icons) {
      const answer = await fetch(new URL(icon.src, address));
      expect(answer.headers.get("content-type")).toContain(icon.type);
      if (icon.type !== "image/png") continue;
      const bytes = Buffer.from(await answer.arrayBuffer());
      expect(`${bytes.readUInt32BE(16)}x${bytes.readUInt32BE(20)}`).toBe(icon.sizes);
      sizes.push(`${icon.sizes} ${icon.purpose ?? "any"}`);
    }
    expect(sizes).toEqual(["192x192 any", "512x512 any", "512x512 maskable"]);
  });

  test("satisfies the browser itself", async () => {
    await visit(siteUrl());
    const session = await context.newCDPSession(page);
    const { installabilityErrors } = await session.send("Page.getInstallabilityErrors");
    // Test contexts are private windows, which install nothing.
    const errors = installabilityErrors.map(({ errorId }) => errorId);
    expect(errors.filter((id) => id !== "in-incognito")).toEqual([]);
    const manifest = await session.send("Page.getAppManifest");
    expect(manifest.errors).toEqual([]);
  });
});

describe("after the first visit, with no network", () => {
  beforeEach(async () => {
    await visit(siteUrl());
    await context.setOffline(true);
  });

  test("the plan opens, is edited, checked and kept, and a file is opened", async () => {
    await page.reload();
    await sheet().waitFor();
    await expect.poll(() => conflictCount(page)).toBeGreaterThan(0);
    await retitle("Planned on the train");
    await page.goto(`${siteUrl()}index.html?from=home-screen`);
    await sheet().waitFor();
    await expect.poll(title).toBe("Planned on the train");
    const field = new URL("../../sample-plots/two-acre-field.json", import.meta.url);
    await dropFile(page, "field.json", readFileSync(field, "utf8"));
    await page.getByText("Opened field.json.").last().waitFor();
    await expect.poll(() => title()).not.toBe("Planned on the train");
  });

  test("samples open and the plot map is made, in the very first visit", async () => {
    await page.getByRole("button", { name: "Paper", exact: true }).click();
    const download = page.waitForEvent("download");
    await page.getByRole("button", { name: /^Save as PDF/ }).click();
    const path = await (await download).path();
    const bytes = readFileSync(path);
    expect(bytes.subarray(0, 5).toString("latin1")).toBe("%PDF-");
    expect(bytes.length).toBeGreaterThan(20_000);
  });

  test("every file of the site is on the device", async () => {
    const worker = await (async () => {
      await context.setOffline(false);
      return (await fetch(`${siteUrl()}service-worker.js`)).text();
    })();
    await context.setOffline(true);
    const list = /JSON\.parse\(("(?:[^"\\]|\\.)*")\)/.exec(worker)?.[1] ?? '"{}"';
    const { files } = JSON.parse(JSON.parse(list) as string) as { files: Record<string, string> };
    const paths = Object.keys(files);
    expect(paths.length).toBeGreaterThan(15);
    expect(paths.filter((path) => path.endsWith(".ttf"))).toHaveLength(2);
    const missing = await page.evaluate(async (wanted) => {
      const answers = await Promise.all(
        wanted.map(async (path) => ((await fetch(`./${path}`)).ok ? null : path)),
      );
      return answers.filter((path) => path !== null);
    }, paths);
    expect(missing).toEqual([]);
  });
});

describe("a server that changes", () => {
  let server: SecondServer;
  beforeEach(async () => {
    server = await startSecondServer();
  });
  afterEach(() => server.close());

  const renew = () =>
    page.evaluate(async () => {
      await (await navigator.serviceWorker.getRegistration())?.update();
    });

  test("a new version is offered, waits, and comes with what was just edited", async () => {
    await visit(server.url);
    server.change("service-worker.js", (text) =>
      text.replace(/(version\\":\\")[0-9a-f]+/, "$1a-newer-version"),
    );
    await renew();
    const offer = page.getByText("A newer Wideberth is ready.");
    await offer.waitFor();
    await page.getByRole("button", { name: "Later" }).click();
    await expect.poll(() => offer.count()).toBe(0);
    await page.reload();
    await offer.waitFor();
    // Nothing was taken over unasked; the old version still prints.
    const names = () => page.evaluate(() => caches.keys());
    await expect.poll(() => names()).toHaveLength(2);
    const field = page.getByLabel("Plan title");
    await field.fill("Edited before the update");
    await field.press("Enter");
    await Promise.all([
      page.waitForEvent("load"),
      page.getByRole("button", { name: "Load it now" }).click(),
    ]);
    await sheet().waitFor();
    await expect.poll(title).toBe("Edited before the update");
    await expect.poll(() => offer.count()).toBe(0);
    expect((await names()).some((name) => name.endsWith("a-newer-version"))).toBe(true);
  });

  test("a version that does not arrive whole is not taken; the one here goes on", async () => {
    await visit(server.url);
    server.change("icon.svg", (text) => `${text}<!-- half of the next version -->`);
    server.change("service-worker.js", (text) =>
      text.replace(/(version\\":\\")[0-9a-f]+/, "$1a-broken-version"),
    );
    await renew();
    await expect
      .poll(() =>
        page.evaluate(async () => {
          const registration = await navigator.serviceWorker.getRegistration();
          return registration?.installing ?? registration?.waiting ?? "none";
        }),
      )
      .toBe("none");
    await expect.poll(() => page.getByText("A newer Wideberth is ready.").count()).toBe(0);
    await context.setOffline(true);
    await page.reload();
    await sheet().waitFor();
  });
});

test("a part of the program that does not arrive is explained, and the plan stays within reach", async () => {
  const keptPlans = async () => {
    await page.getByRole("button", { name: "Plan", exact: true }).click();
    await page.getByText("Kept plans ...").click();
  };
  const bare = await browser.newContext({ serviceWorkers: "block" });
  try {
    page = await bare.newPage();
    await page.goto(siteUrl());
    await sheet().waitFor();
    await bare.route("**/KeptPlansDialog-*.js", (route) =>
      // What some servers send for a file that is gone.
      route.fulfill({ status: 200, contentType: "text/html", body: "<p>Not here</p>" }),
    );
    await keptPlans();
    const alert = page.getByRole("alert");
    await expect.poll(() => alert.innerText()).toContain("could not be fetched");
    const download = page.waitForEvent("download");
    await alert.getByRole("button", { name: "Download the plan" }).click();
    expect((await download).suggestedFilename()).toMatch(/\.json$/);
    await page.getByRole("dialog").getByRole("button", { name: "Close", exact: true }).click();
    await retitle("Still working");
    await keptPlans();
    await bare.unroute("**/KeptPlansDialog-*.js");
    await Promise.all([
      page.waitForEvent("load"),
      alert.getByRole("button", { name: "Load the page anew" }).click(),
    ]);
    await sheet().waitFor();
    await expect.poll(title).toBe("Still working");
    await keptPlans();
    await page.getByRole("list", { name: "Kept plans" }).waitFor();
  } finally {
    await bare.close();
  }
});
