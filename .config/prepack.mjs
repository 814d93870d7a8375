/** Before `npm pack`: everything the package holds is built anew, and npm's own list stays on stdout. */
import { spawnSync } from "node:child_process";
import { installPackages } from "./installed-packages.mjs";
import { repository, tool } from "./repository.mjs";

if (!installPackages()) process.exit(1);
for (const kind of [[], ["--ssr"]]) {
  const { status } = spawnSync(tool("vite"), ["build", ...kind, "--logLevel", "warn"], {
    cwd: repository,
    // The package is the production one, whoever packs it.
    env: { ...process.env, NODE_ENV: "production" },
    stdio: ["ignore", 2, 2],
  });
  if (status !== 0) process.exit(status ?? 1);
}
