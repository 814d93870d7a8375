/**
 * What the built site has that the one under development has not: a content security policy, and
 * the list of its files inside the service worker.
 */
import { createHash } from "node:crypto";
import { readFileSync, readdirSync, writeFileSync } from "node:fs";
import { join, sep } from "node:path";
import type { Plugin } from "vite";
import { LICENCES_FILE } from "./licences.ts";

/** The worker's name never changes: browsers look for new versions under it. */
export const WORKER_FILE = "service-worker.js";

/**
 * Nothing from anywhere else, no script or style inside the page, no frames, no forms. A server
 * that can send headers should send `frame-ancestors 'none'` too: a page cannot say that of itself.
 */
const POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' blob: data:",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
].join("; ");

/** The plugin of the built site. */
export function offlineSite(): Plugin {
  let isSite = false;
  return {
    name: "wideberth-offline-site",
    apply: "build",
    enforce: "post",
    configResolved: ({ build }) => {
      isSite = !build.ssr;
    },
    transformIndexHtml: () => [
      {
        tag: "meta",
        attrs: { "http-equiv": "Content-Security-Policy", content: POLICY },
        injectTo: "head-prepend",
      },
    ],
    writeBundle: {
      order: "post",
      sequential: true,
      handler: ({ dir }) => {
        if (isSite && dir !== undefined) listFiles(dir);
      },
    },
  };
}

/** Writes the list of the site's files, each with its sum, into the service worker. */
function listFiles(dir: string): void {
  const paths = readdirSync(dir, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) =>
      join(entry.parentPath, entry.name)
        .slice(dir.length + 1)
        .split(sep)
        .join("/"),
    )
    .filter((path) => ![WORKER_FILE, LICENCES_FILE].includes(path) && !path.endsWith(".map"))
    .sort();
  const files = Object.fromEntries(
    paths.map((path) => [path, sumOf(readFileSync(join(dir, path)), "base64")]),
  );
  const version = sumOf(JSON.stringify(files), "hex").slice(0, 16);
  const workerPath = join(dir, WORKER_FILE);
  const text = readFileSync(workerPath, "utf8");
  const list = JSON.stringify(JSON.stringify({ version, files }));
  const filled = text.replace(/["'`]__SITE_FILES__["'`]/, () => list);
  if (filled === text) throw new Error("The service worker has no place for the list of files.");
  writeFileSync(workerPath, filled);
}

function sumOf(content: string | Buffer, encoding: "base64" | "hex"): string {
  return createHash("sha256").update(content).digest(encoding);
}
