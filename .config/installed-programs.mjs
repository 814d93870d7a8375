/** Installs the programs the tests drive, with Debian's package manager, when they are missing. */
import { spawnSync } from "node:child_process";
import { findChromium } from "./find-chromium.mjs";
import { findProgram } from "./find-program.mjs";

const programs = {
  chromium: { package: "chromium", find: findChromium },
  pdftoppm: { package: "poppler-utils", find: () => findProgram("pdftoppm") },
};

/** Finds or installs each of these programs and says where it is; false when one stays missing. */
export function installPrograms(names) {
  const missing = names.filter((name) => !programs[name].find());
  if (missing.length > 0) aptInstall(missing.map((name) => programs[name].package));
  for (const name of names) {
    const path = programs[name].find();
    console.log(path ? `${name}: ${path}` : `${name}: missing. ${howToInstall(name)}`);
  }
  return names.every((name) => programs[name].find());
}

function howToInstall(name) {
  const byHand = `Install it: apt-get install ${programs[name].package} (as root)`;
  return name === "chromium" ? `${byHand}, or set WIDEBERTH_CHROMIUM to a Chromium.` : `${byHand}.`;
}

/** Installs Debian packages where that can be done; says what went wrong. */
export function aptInstall(packages) {
  if (!findProgram("apt-get")) return;
  if (!isRoot() && !findProgram("sudo")) {
    console.log("Installing packages takes root or sudo: here is neither.");
    return;
  }
  console.log(`Installing ${packages.join(", ")} with apt-get ...`);
  // One source out of reach fails the update; what the others have may do.
  if (!aptGet("update")) console.log("The lists of packages could not all be renewed.");
  aptGet("install", "-y", ...packages);
}

function aptGet(...args) {
  const settings = ["DEBIAN_FRONTEND=noninteractive", "apt-get", ...args];
  const command = isRoot() ? ["env", ...settings] : ["sudo", "-n", "env", ...settings];
  const { status, stdout, stderr } = spawnSync(command[0], command.slice(1), {
    encoding: "utf8",
    maxBuffer: 1e8,
  });
  if (status !== 0) console.log(`${stdout}${stderr}`.trim().split("\n").slice(-8).join("\n"));
  return status === 0;
}

function isRoot() {
  return process.getuid?.() === 0;
}
