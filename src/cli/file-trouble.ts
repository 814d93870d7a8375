/** Why a file could not be read or written, in plain words. */
export function fileTrouble(error: unknown): string {
  const code = error instanceof Error && "code" in error ? String(error.code) : "";
  const words: Readonly<Record<string, string>> = {
    ENOENT: "there is no such file",
    EISDIR: "this is a folder, not a file",
    ENOTDIR: "part of the path is not a folder",
    EACCES: "no permission",
    EPERM: "no permission",
    EROFS: "the disk is read-only",
    ENOSPC: "the disk is full",
  };
  return words[code] ?? (error instanceof Error ? error.message : String(error));
}
