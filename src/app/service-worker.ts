/**
 * Keeps the program on the device, so that it opens, edits, checks and prints without a network.
 *
 * Every file of one build is fetched before the build counts as installed, and each is compared
 * with the sum the build wrote down: a server in the middle of an update, or one that answers with
 * some other page, never leaves half a program. A new build waits until the grower takes it, or
 * until every tab is closed. The files of the build before stay for tabs still open on it. Plans
 * are not in here; nothing in this file touches them.
 */

interface SiteFiles {
  /** Another for every build that differs in any file. */
  readonly version: string;
  /** Address relative to this file -> SHA-256 of the content, in base64. */
  readonly files: Readonly<Record<string, string>>;
}

/** The parts of a service worker's surroundings that are used here. */
interface WorkerScope {
  readonly location: { readonly href: string; readonly origin: string };
  readonly clients: { readonly claim: () => Promise<void> };
  readonly skipWaiting: () => Promise<void>;
  addEventListener(type: "install" | "activate", listen: (event: LastingEvent) => void): void;
  addEventListener(type: "message", listen: (event: MessageEvent<unknown>) => void): void;
  addEventListener(type: "fetch", listen: (event: RequestEvent) => void): void;
}
interface LastingEvent extends Event {
  readonly waitUntil: (work: Promise<unknown>) => void;
}
interface RequestEvent extends LastingEvent {
  readonly request: Request;
  readonly respondWith: (answer: Promise<Response>) => void;
}

const worker = globalThis as unknown as WorkerScope;
// The build writes the list here, so that this file changes whenever any other does.
const site = JSON.parse("__SITE_FILES__") as SiteFiles;
const FOLDER = "./";
const home = new URL(FOLDER, worker.location.href);
const PREFIX = `wideberth ${home.pathname} `;
const cacheName = `${PREFIX}${site.version}`;

worker.addEventListener("install", (event) => event.waitUntil(fetchEveryFile()));
worker.addEventListener("activate", (event) => event.waitUntil(takeCharge()));
worker.addEventListener("message", (event) => {
  if (event.data === "take-over") void worker.skipWaiting();
});
worker.addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method === "GET" && request.url.startsWith(home.href)) {
    event.respondWith(answer(request));
  }
});

/** The page itself is asked for by its folder: some servers answer to nothing else. */
function addressOf(path: string): string {
  return new URL(path === "index.html" ? FOLDER : path, home).href;
}

async function fetchEveryFile(): Promise<void> {
  const cache = await caches.open(cacheName);
  await Promise.all(
    Object.entries(site.files).map(async ([path, sum]) => {
      const address = addressOf(path);
      // What an interrupted installation had fetched is not fetched again.
      if (await cache.match(address)) return;
      const response = await fetch(address, { cache: "no-cache", integrity: `sha256-${sum}` });
      if (!response.ok) throw new Error(`${path}: ${response.status}`);
      const { headers } = response;
      // A copy without the trace of a redirection, which browsers refuse for pages.
      await cache.put(address, new Response(await response.blob(), { headers }));
    }),
  );
}

/** Serves open tabs from now on, and lets go of all builds but this and the one before. */
async function takeCharge(): Promise<void> {
  const others = (await caches.keys()).filter(
    (name) => name.startsWith(PREFIX) && name !== cacheName,
  );
  await Promise.all(others.slice(0, -1).map((name) => caches.delete(name)));
  await worker.clients.claim();
}

async function answer(request: Request): Promise<Response> {
  const url = new URL(request.url);
  const isPage = url.pathname === home.pathname || url.pathname === `${home.pathname}index.html`;
  const address = isPage ? home.href : request.url;
  const cache = await caches.open(cacheName);
  const own = await cache.match(address, { ignoreSearch: true });
  // Names carry a sum of the content, so a part of another build is found under its own name.
  return own ?? (await caches.match(address, { ignoreSearch: true })) ?? fetch(request);
}
