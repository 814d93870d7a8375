/**
 * Folders that tests work in for as long as they run. They lie in the repository: what lies in the
 * machine's folder for temporary files may be cleared away by anyone, and once was, which left a
 * benchmark of half an hour without the site it measured.
 */
import { mkdirSync, mkdtempSync, readdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import { repository } from "./repository.mjs";

/** A new empty folder; the path. Folders that a run which was stopped left behind are taken away. */
export function workFolder(name: string): string {
  const parent = join(repository, ".build", "at-work");
  mkdirSync(parent, { recursive: true });
  for (const left of readdirSync(parent)) {
    if (!isRunning(Number(/-(\d+)-[^-]*$/.exec(left)?.[1]))) {
      rmSync(join(parent, left), { recursive: true, force: true });
    }
  }
  return mkdtempSync(join(parent, `${name}-${process.pid}-`));
}

/** Whether a process of that number is there. */
function isRunning(pid: number): boolean {
  if (!Number.isInteger(pid)) return false;
  try {
    return process.kill(pid, 0);
  } catch (error) {
    // It is another user's.
    return (error as NodeJS.ErrnoException).code === "EPERM";
  }
}
