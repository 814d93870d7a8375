/** Installs the packages when node_modules does not hold what package-lock.json asks for. */
import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { repository } from "./repository.mjs";

/** Runs `npm ci` if anything is missing; npm's own words go to stderr. False when it failed. */
export function installPackages() {
  if (isInstalled()) return true;
  console.error("Installing packages (npm ci) ...");
  const { status } = spawnSync("npm", ["ci", "--no-audit", "--no-fund"], {
    cwd: repository,
    stdio: ["ignore", 2, 2],
  });
  return status === 0;
}

/** Compares versions, not file times: those say nothing after a copy or a change of branch. */
function isInstalled() {
  const wanted = readPackages("package-lock.json");
  const present = readPackages("node_modules/.package-lock.json");
  if (!wanted || !present) return false;
  return Object.entries(wanted).every(([path, { version, optional }]) => {
    if (path === "") return true;
    // Optional packages are those of other platforms.
    return present[path] ? present[path].version === version : optional === true;
  });
}

function readPackages(file) {
  try {
    return JSON.parse(readFileSync(`${repository}${file}`, "utf8")).packages;
  } catch {
    return null;
  }
}
