/** The Chromium of the browser tests and the address of the built site they open in it. */
import { chromium } from "playwright-core";
import type { Browser } from "playwright-core";
import { inject } from "vitest";
import { findChromium } from "../../.config/find-chromium.mjs";

declare module "vitest" {
  interface ProvidedContext {
    /** Set by the global setup of the browser tests. */
    siteUrl: string;
  }
}

export const CHROMIUM_ARGS = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

/** Starts the installed Chromium; whoever starts it closes it. */
export async function launchBrowser(): Promise<Browser> {
  const executablePath = findChromium();
  if (executablePath === null) {
    throw new Error(
      "No Chromium on the PATH: install Debian's package chromium, or set WIDEBERTH_CHROMIUM.",
    );
  }
  return chromium.launch({ executablePath, args: CHROMIUM_ARGS });
}

/** Address of the built site, ending in a slash. */
export function siteUrl(): string {
  return inject("siteUrl");
}

/** Whether a script holds the plan of a first visit: what is opened, not what opens it. */
export const isSample = (path: string) => path.includes("first-sample");

/** Paths of all scripts a page names itself. */
async function allNamed(url: string): Promise<readonly string[]> {
  const html = await (await fetch(url)).text();
  const names = html.matchAll(/(?:src|href)="([^"]+\.js)"/g);
  return [...names].map(([, path = ""]) => new URL(path, url).pathname);
}

/** Of those the entry and all that the entry cannot run without, whatever plan is opened. */
export async function namedByPage(url: string): Promise<ReadonlySet<string>> {
  return new Set((await allNamed(url)).filter((path) => !isSample(path)));
}
