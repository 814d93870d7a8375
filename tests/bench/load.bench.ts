/** What the first load weighs, and how long it takes on a slow machine against a bare React page. */
import {
  mkdtempSync,
  readFileSync,
  readdirSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import type { Browser } from "playwright-core";
import { build, preview } from "vite";
import { afterAll, beforeAll, test } from "vitest";
import { repository } from "../../.config/repository.mjs";
import { launchBrowser, namedByPage, siteUrl } from "../browser/browser.ts";
import { reportRow } from "./report.ts";

const SECTION = "Load";
/** So many times slower than this machine. */
const SLOWER = 4;
const RUNS = 5;
const FIRST_LOAD_KIB = 250;
const GOAL_TIMES = 3;

let browser: Browser;
let folder: string;

beforeAll(async () => {
  browser = await launchBrowser();
  folder = mkdtempSync(join(tmpdir(), "wideberth-bare-"));
  symlinkSync(join(repository, "node_modules"), join(folder, "node_modules"));
  writeFileSync(
    join(folder, "index.html"),
    '<!doctype html><div id="root"></div><script type="module" src="./main.js"></script>',
  );
  writeFileSync(
    join(folder, "main.js"),
    'import { createElement } from "react"; import { createRoot } from "react-dom/client";' +
      'createRoot(document.getElementById("root")).render(createElement("p", { className: "there" }, "Here"));',
  );
});

afterAll(async () => {
  await browser.close();
  rmSync(folder, { recursive: true, force: true });
});

test("weight of the first load", async () => {
  const page = await browser.newPage();
  const scripts = new Map<string, Promise<Buffer>>();
  page.on("response", (response) => {
    if (response.request().resourceType() === "script") {
      const body = response.body();
      scripts.set(new URL(response.url()).pathname, body);
      // Those that come after the last look are cut off with the page.
      body.catch(() => null);
    }
  });
  await page.goto(siteUrl());
  await page.locator(".finding").first().waitFor();
  const needed = await namedByPage(siteUrl());
  const kibOf = async (names: Iterable<string>) => {
    let kib = 0;
    for (const name of names) {
      kib += gzipSync((await scripts.get(name)) ?? "", { level: 9 }).length / 1024;
    }
    return kib;
  };
  // What the sheet works with; tests/browser/load.test.ts keeps everything else away from it.
  const kib = await kibOf(needed);
  reportRow({
    section: SECTION,
    what: `script the sheet cannot be used without; ${needed.size} files`,
    size: "the sample plan",
    value: kib,
    unit: "KiB gzip",
    budget: `at most ${FIRST_LOAD_KIB} KiB`,
    isMet: kib <= FIRST_LOAD_KIB,
  });
  reportRow({
    section: SECTION,
    what: `script that has come when the first finding is shown: bloom strip, seed shelf and saving as well; ${scripts.size} files`,
    size: "the sample plan",
    value: await kibOf(scripts.keys()),
    unit: "KiB gzip",
  });
  await page.close();
});

test("time to a usable sheet on a slow machine", async () => {
  await build({
    configFile: false,
    root: folder,
    base: "./",
    logLevel: "silent",
    define: { "process.env.NODE_ENV": '"production"' },
    build: { outDir: join(folder, "built") },
  });
  const bareKib = readdirSync(join(folder, "built/assets")).reduce(
    (sum, name) => sum + gzipSync(readFileSync(join(folder, "built/assets", name))).length / 1024,
    0,
  );
  const server = await preview({
    configFile: false,
    root: folder,
    logLevel: "silent",
    build: { outDir: join(folder, "built") },
    preview: { host: "127.0.0.1", port: 0 },
  });
  try {
    const address = server.httpServer.address();
    if (address === null || typeof address === "string") throw new Error("Nothing is served.");
    const bareUrl = `http://127.0.0.1:${address.port}/`;
    const [bare, ours]: [number[], number[]] = [[], []];
    // By turns, so that what else the machine does falls upon both.
    for (let run = 0; run < RUNS; run += 1) {
      bare.push(await loadMs(bareUrl, [".there"]));
      ours.push(await loadMs(siteUrl(), [".finding", "canvas[data-drawn-at]"]));
    }
    const [bareMs, ourMs] = [median(bare), median(ours)];
    reportRow({
      section: SECTION,
      what: `time to a drawn sheet with findings, processor ${SLOWER} times slower, against a bare React page; of ${bareKib.toFixed(0)} KiB`,
      size: "the sample plan",
      value: ourMs / bareMs,
      unit: "x",
      budget: `goal: at most ${GOAL_TIMES} x`,
      isMet: ourMs / bareMs <= GOAL_TIMES,
    });
    reportRow({
      section: SECTION,
      what: `time to a drawn sheet with findings, processor ${SLOWER} times slower`,
      size: "the sample plan",
      value: ourMs,
      unit: "ms",
    });
  } finally {
    await server.close();
  }
});

/** Milliseconds until all of these stand on a page that was never visited before. */
async function loadMs(url: string, selectors: readonly string[]): Promise<number> {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate: SLOWER });
  await page.goto(url, { waitUntil: "commit" });
  const ms = await page.evaluate(async (wanted) => {
    while (!wanted.every((selector) => document.querySelector(selector))) {
      await new Promise((resolve) => {
        requestAnimationFrame(resolve);
      });
    }
    return performance.now();
  }, selectors);
  await context.close();
  return ms;
}

function median(times: readonly number[]): number {
  return times.toSorted((a, b) => a - b)[Math.floor(times.length / 2)] ?? 0;
}
