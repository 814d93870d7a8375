/** `npm run soak`: the long tests. Fifty killed browsers, ten thousand commits, a monkey: half an hour or more. */
import { spawnSync } from "node:child_process";
import { installPackages } from "./installed-packages.mjs";
import { installPrograms } from "./installed-programs.mjs";
import { repository, tool } from "./repository.mjs";

if (!installPackages() || !installPrograms(["chromium"])) process.exit(1);
const { status } = spawnSync(tool("vitest"), ["run", "--project=soak"], {
  cwd: repository,
  stdio: "inherit",
});
process.exitCode = status ?? 1;
