/** The core with its words files turned into the made-up language, beside the plain one. */
import { afterAll } from "vitest";
import { type ViteDevServer, createServer } from "vite";
import { repository } from "../../.config/repository.mjs";
import { madeUpWords } from "./made-up-words.ts";

let server: ViteDevServer | null = null;

/**
 * A module under src as it is once all words files are in the made-up language; what it imports is
 * turned too. @param path from the top of the repository, `src/core/files/print-set.ts`
 */
export async function madeUpModule<T>(path: string): Promise<T> {
  server ??= await createServer({
    configFile: false,
    root: repository,
    logLevel: "error",
    plugins: [madeUpWords()],
    server: { middlewareMode: true, ws: false, watch: null },
    optimizeDeps: { noDiscovery: true },
    ssr: { external: ["pdfkit"] },
  });
  return (await server.ssrLoadModule(`/${path}`)) as T;
}

/** To be called once by a test file that asks for made-up modules. */
export function closeMadeUp(): void {
  afterAll(async () => {
    await server?.close();
    server = null;
  });
}
