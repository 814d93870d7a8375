/** Comparing with a kept file. UPDATE=1 rewrites it; a failing text is left in .build/golden. */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { basename } from "node:path";
import { expect } from "vitest";
import { repository } from "../../.config/repository.mjs";

const isUpdating = process.env["UPDATE"] === "1";

/** Compares a text with a file of this folder. */
export function compareGolden(name: string, text: string): void {
  compareFile(new URL(name, import.meta.url), text);
}

/** As compareGolden, for a file kept anywhere in the repository. */
export function compareFile(file: URL, text: string): void {
  if (isUpdating) writeFileSync(file, text);
  const kept = existsSync(file) ? readFileSync(file, "utf8") : "";
  if (kept === text) return;
  const folder = `${repository}.build/golden/`;
  mkdirSync(folder, { recursive: true });
  writeFileSync(`${folder}${basename(file.pathname)}`, text);
  expect(text, `${file.pathname} differs; UPDATE=1 rewrites it`).toBe(kept);
}
