import { accessSync, constants } from "node:fs";
import { delimiter, join } from "node:path";

/** Absolute path of the first of these programs found on the PATH; null when there is none. */
export function findProgram(...names) {
  const folders = (process.env.PATH ?? "").split(delimiter).filter(Boolean);
  return (
    names.flatMap((name) => folders.map((folder) => join(folder, name))).find(isExecutable) ?? null
  );
}

function isExecutable(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
