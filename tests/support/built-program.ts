/** The command line as it is shipped: built once for all tests of a run, then run. */
import { execFileSync, spawnSync } from "node:child_process";
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { inject } from "vitest";

declare module "vitest" {
  interface ProvidedContext {
    /** Where the program is built for all; set by the global setup of the unit tests. */
    programFolder?: string;
  }
}

const repository = fileURLToPath(new URL("../../", import.meta.url));

export interface Ran {
  readonly code: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

export interface BuiltProgram {
  /** A folder to write to; gone after `remove`. */
  readonly folder: string;
  /** Path of the program's script. */
  readonly script: string;
  readonly run: (args: readonly string[], input?: string | Uint8Array) => Ran;
  readonly runForBytes: (args: readonly string[], input: string) => Uint8Array;
  readonly remove: () => void;
}

export function buildProgram(): BuiltProgram {
  const folder = mkdtempSync(join(tmpdir(), "wideberth-"));
  const shared = inject("programFolder");
  const script = shared === undefined ? buildInto(join(folder, "built")) : builtOnce(shared);
  const spawn = (args: readonly string[], input: string | Uint8Array = "") =>
    spawnSync(process.execPath, [script, ...args], { cwd: folder, input, maxBuffer: 1e8 });
  return {
    folder,
    script,
    run: (args, input) => {
      const { status, stdout, stderr } = spawn(args, input);
      return { code: status, stdout: stdout.toString("utf8"), stderr: stderr.toString("utf8") };
    },
    runForBytes: (args, input) => spawn(args, input).stdout,
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}

/** Builds the program; the path of its script. */
function buildInto(outDir: string): string {
  const vite = join(repository, "node_modules/vite/bin/vite.js");
  const options = ["--ssr", "--outDir", outDir, "--logLevel", "warn"];
  execFileSync(process.execPath, [vite, "build", ...options], { cwd: repository });
  return join(outDir, "wideberth.mjs");
}

/** The first that asks builds, whoever asks meanwhile, in another process, waits for that. */
function builtOnce(shared: string): string {
  const outcome = join(shared, "outcome");
  if (isFirst(join(shared, "taken"))) {
    let fault = "the build was broken off";
    try {
      buildInto(join(shared, "built"));
      fault = "";
    } catch (error) {
      fault = String(error);
    } finally {
      writeFileSync(`${outcome}.part`, fault);
      // In one step, so that nobody reads half of it.
      renameSync(`${outcome}.part`, outcome);
    }
  }
  while (!existsSync(outcome)) Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 50);
  const fault = readFileSync(outcome, "utf8");
  if (fault !== "") throw new Error(`The command line could not be built: ${fault}`);
  return join(shared, "built", "wideberth.mjs");
}

/** Whether nobody was here before: a folder is made by one only. */
function isFirst(mark: string): boolean {
  try {
    mkdirSync(mark);
    return true;
  } catch {
    return false;
  }
}
