/** Global setup of the browser tests: builds the site as it is shipped and serves that build. */
import { execFileSync } from "node:child_process";
import { existsSync, rmSync } from "node:fs";
import { join } from "node:path";
import { preview } from "vite";
import type { TestProject } from "vitest/node";
import { repository, tool } from "./repository.mjs";
import { workFolder } from "./work-folder.ts";

export default async function serveBuiltSite(project: TestProject): Promise<() => Promise<void>> {
  const outDir = workFolder("site");
  // A process of its own, without the test runner's NODE_ENV: React's production build is wanted.
  execFileSync(tool("vite"), ["build", "--outDir", outDir, "--logLevel", "warn"], {
    cwd: repository,
    env: { ...process.env, NODE_ENV: "production" },
    stdio: ["ignore", "ignore", "inherit"],
  });
  const server = await preview({
    configFile: join(repository, "vite.config.ts"),
    logLevel: "warn",
    build: { outDir },
    preview: { host: "127.0.0.1", port: 0 },
  });
  const address = server.httpServer.address();
  if (address === null || typeof address === "string") throw new Error("The site is not served.");
  project.provide("siteUrl", `http://127.0.0.1:${address.port}/`);
  return async () => {
    const isThere = existsSync(join(outDir, "index.html"));
    await server.close();
    rmSync(outDir, { recursive: true, force: true });
    if (!isThere) {
      throw new Error(`${outDir}, the site served to the tests, was taken away while they ran.`);
    }
  };
}
