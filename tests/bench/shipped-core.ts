/**
 * The core in one file, as command line and page have it. The test runner puts an object between
 * every two modules, which costs the innermost loops much of their time; the libraries it is
 * measured against do not pay that.
 */
import { rmSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { build } from "vite";
import { workFolder } from "../../.config/work-folder.ts";
import type { core } from "./core-entry.ts";

export async function shippedCore(): Promise<typeof core> {
  const folder = workFolder("core");
  try {
    await build({
      configFile: false,
      logLevel: "warn",
      ssr: { noExternal: true },
      build: {
        ssr: fileURLToPath(new URL("core-entry.ts", import.meta.url)),
        outDir: folder,
        target: "node20",
        rolldownOptions: { output: { entryFileNames: "core.mjs" } },
      },
    });
    const made: unknown = await import(
      /* @vite-ignore */ pathToFileURL(join(folder, "core.mjs")).href
    );
    return (made as { readonly core: typeof core }).core;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
