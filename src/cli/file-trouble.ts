const WORDS: ReadonlyMap<string, string> = new Map([
  ["ENOENT", "there is no such file"],
  ["EISDIR", "this is a folder, not a file"],
  ["ENOTDIR", "part of the path is not a folder"],
  ["EACCES", "no permission"],
  ["EPERM", "no permission"],
  ["EROFS", "the disk is read-only"],
  ["ENOSPC", "the disk is full"],
]);

/** Why a file could not be read or written, in plain words. */
export function fileTrouble(error: unknown): string {
  const code = error instanceof Error && "code" in error ? String(error.code) : "";
  return WORDS.get(code) ?? (error instanceof Error ? error.message : String(error));
}
