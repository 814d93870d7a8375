/** Hands a made file to the browser to keep. */
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
