/** Global setup of the unit tests: a folder in which the first test of the command line builds it. */
import { rmSync } from "node:fs";
import type { TestProject } from "vitest/node";
import { workFolder } from "./work-folder.ts";

export default function provideProgramFolder(project: TestProject): () => void {
  const folder = workFolder("program");
  project.provide("programFolder", folder);
  return () => rmSync(folder, { recursive: true, force: true });
}
