/** Hands made files to the browser to keep. */
import type { PaperMade } from "../../store/threads/paper-job.ts";

export function downloadBytes(
  bytes: Uint8Array<ArrayBuffer>,
  fileName: string,
  type: string,
): void {
  const url = URL.createObjectURL(new Blob([bytes], { type }));
  const link = document.createElement("a");
  link.href = url;
  link.download = fileName;
  link.click();
  // The browser has begun reading by the next minute; then the memory is given back.
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
}

/** Hands all that was made to the browser; gives the names. */
export function downloadMade({ files }: PaperMade): readonly string[] {
  for (const { name, bytes, mimeType } of files) {
    downloadBytes(new Uint8Array(bytes), name, mimeType);
  }
  return files.map(({ name }) => name);
}
