/** The command line as it is shipped: built once into a folder of its own, then run. */
import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const repository = fileURLToPath(new URL("../../", import.meta.url));

export interface Ran {
  readonly code: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

export interface BuiltProgram {
  /** A folder to write to; gone after `remove`. */
  readonly folder: string;
  readonly run: (args: readonly string[], input?: string | Uint8Array) => Ran;
  readonly runForBytes: (args: readonly string[], input: string) => Uint8Array;
  readonly remove: () => void;
}

export function buildProgram(): BuiltProgram {
  const folder = mkdtempSync(join(tmpdir(), "wideberth-"));
  const outDir = join(folder, "built");
  const vite = join(repository, "node_modules/vite/bin/vite.js");
  const options = ["--ssr", "--outDir", outDir, "--logLevel", "warn"];
  execFileSync(process.execPath, [vite, "build", ...options], { cwd: repository });
  const program = join(outDir, "wideberth.mjs");
  const spawn = (args: readonly string[], input: string | Uint8Array = "") =>
    spawnSync(process.execPath, [program, ...args], { cwd: folder, input, maxBuffer: 1e8 });
  return {
    folder,
    run: (args, input) => {
      const { status, stdout, stderr } = spawn(args, input);
      return { code: status, stdout: stdout.toString("utf8"), stderr: stderr.toString("utf8") };
    },
    runForBytes: (args, input) => spawn(args, input).stdout,
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}
