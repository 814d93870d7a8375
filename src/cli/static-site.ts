/**
 * The built site over plain http: what lies in its folder and nothing else. Files are listed once;
 * an address that is none of them is answered 404, however it is spelled.
 */
import { createHash } from "node:crypto";
import { readFileSync, readdirSync } from "node:fs";
import { type IncomingMessage, type ServerResponse, createServer, type Server } from "node:http";
import { extname, join, sep } from "node:path";
import { gzipSync } from "node:zlib";

const TYPES: ReadonlyMap<string, string> = new Map([
  [".css", "text/css; charset=utf-8"],
  [".html", "text/html; charset=utf-8"],
  [".js", "text/javascript; charset=utf-8"],
  [".json", "application/json"],
  [".png", "image/png"],
  [".svg", "image/svg+xml"],
  [".ttf", "font/ttf"],
  [".txt", "text/plain; charset=utf-8"],
  [".wasm", "application/wasm"],
  [".webmanifest", "application/manifest+json"],
]);

/** Types that are small already. */
const IS_PACKED = new Set([".png"]);
/** Files whose names change with what is in them. */
const NEVER_CHANGES = /^\/assets\//;
const YEAR_SECONDS = 365 * 24 * 3600;

/** What a page cannot say of itself, and what it needs of the device. */
const HEADERS = {
  "Content-Security-Policy": "frame-ancestors 'none'",
  "Permissions-Policy": "camera=(self), geolocation=(self)",
  "Referrer-Policy": "no-referrer",
  "X-Content-Type-Options": "nosniff",
};

interface SiteFile {
  readonly bytes: Buffer;
  readonly gzipped: Buffer | null;
  readonly headers: Readonly<Record<string, string>>;
}

/** A server of the files in a folder; it listens nowhere yet. */
export function siteServer(folder: string): Server {
  const places = placesIn(folder);
  const read = new Map<string, SiteFile>();
  return createServer((request, response) => {
    if (request.method !== "GET" && request.method !== "HEAD") {
      refuse(response, 405, "This server only gives files.");
      return;
    }
    const path = pathOf(request);
    const place = places.get(path);
    if (place === undefined) {
      refuse(response, 404, "There is no such file here.");
      return;
    }
    try {
      const file = read.get(path) ?? fileAt(path, place);
      read.set(path, file);
      send(request, response, file);
    } catch {
      refuse(response, 500, "The file could not be read.");
    }
  });
}

/** Addresses of a folder's files, and where they lie; maps for finding faults stay behind. */
function placesIn(folder: string): ReadonlyMap<string, string> {
  const places = new Map<string, string>();
  for (const entry of readdirSync(folder, { recursive: true, withFileTypes: true })) {
    if (!entry.isFile() || entry.name.endsWith(".map")) continue;
    const place = join(entry.parentPath, entry.name);
    places.set(`/${place.slice(folder.length).split(sep).filter(Boolean).join("/")}`, place);
  }
  const index = places.get("/index.html");
  if (index !== undefined) places.set("/", index);
  return places;
}

/** The path of an address as the site's files are called; empty for one that cannot be read. */
function pathOf({ url = "/" }: IncomingMessage): string {
  try {
    return decodeURIComponent(url.split(/[?#]/, 1)[0] ?? "");
  } catch {
    return "";
  }
}

function fileAt(path: string, place: string): SiteFile {
  const bytes = readFileSync(place);
  const extension = extname(place);
  return {
    bytes,
    gzipped: IS_PACKED.has(extension) ? null : gzipSync(bytes),
    headers: {
      ...HEADERS,
      "Cache-Control": NEVER_CHANGES.test(path)
        ? `public, max-age=${YEAR_SECONDS}, immutable`
        : "no-cache",
      "Content-Type": TYPES.get(extension) ?? "application/octet-stream",
      ETag: `"${createHash("sha256").update(bytes).digest("base64url").slice(0, 22)}"`,
      Vary: "Accept-Encoding",
    },
  };
}

function send(request: IncomingMessage, response: ServerResponse, file: SiteFile): void {
  if (request.headers["if-none-match"] === file.headers["ETag"]) {
    response.writeHead(304, file.headers).end();
    return;
  }
  const takesGzip = /\bgzip\b/.test(request.headers["accept-encoding"] ?? "");
  const body = takesGzip && file.gzipped ? file.gzipped : file.bytes;
  response.writeHead(200, {
    ...file.headers,
    ...(body === file.gzipped ? { "Content-Encoding": "gzip" } : {}),
    "Content-Length": body.length,
  });
  response.end(request.method === "HEAD" ? undefined : body);
}

function refuse(response: ServerResponse, status: number, words: string): void {
  response.writeHead(status, { ...HEADERS, "Content-Type": "text/plain; charset=utf-8" });
  response.end(`${words}\n`);
}
