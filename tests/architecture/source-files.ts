/** The files of the repository as the architecture tests read them. */
import { readdirSync, readFileSync } from "node:fs";
import { repository } from "../../.config/repository.mjs";

const NOT_OURS = new Set(["node_modules", ".git", ".build"]);

/** Paths of all files under a folder of the repository ("" for all of it), from its top, sorted. */
export function filesUnder(folder: string): readonly string[] {
  return readdirSync(`${repository}${folder}`, { withFileTypes: true })
    .filter((entry) => !NOT_OURS.has(entry.name))
    .flatMap((entry) => {
      const path = folder === "" ? entry.name : `${folder}/${entry.name}`;
      return entry.isDirectory() ? filesUnder(path) : [path];
    })
    .sort();
}

export function textOf(path: string): string {
  return readFileSync(`${repository}${path}`, "utf8");
}

/** Path and text of every TypeScript file under src. */
export function sourceFiles(): ReadonlyMap<string, string> {
  const paths = filesUnder("src").filter((path) => /\.tsx?$/.test(path));
  return new Map(paths.map((path) => [path, textOf(path)]));
}

/** Entries at the top of the repository that a clone would hold, dot-files aside. */
export function topLevelEntries(): readonly string[] {
  return readdirSync(repository).filter((name) => !name.startsWith(".") && !NOT_OURS.has(name));
}
