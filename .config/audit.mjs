/**
 * `npm run audit`: asks the package registry for known faults in what is installed. Fails on
 * serious ones in what is shipped; a registry that gives no answer is reported and is no failure.
 */
import { spawnSync } from "node:child_process";
import { repository } from "./repository.mjs";

const { stdout } = spawnSync("npm", ["audit", "--json", "--omit=dev"], {
  cwd: repository,
  encoding: "utf8",
  timeout: 60_000,
});
const counts = countsIn(stdout ?? "");
if (counts === null) {
  console.log("Dependencies not audited: the package registry gave no answer.");
} else {
  const { low, moderate, high, critical } = counts;
  console.log(
    `Dependencies audited: ${critical} critical, ${high} high, ${moderate} moderate, ${low} low.`,
  );
  process.exitCode = critical + high > 0 ? 1 : 0;
}

/** How many faults of each weight the answer lists; null when it is no such answer. */
function countsIn(text) {
  try {
    return JSON.parse(text).metadata?.vulnerabilities ?? null;
  } catch {
    return null;
  }
}
