/** What the square code on stakes, packets and bed cards holds; labels/read-label.ts reads it. */

/** `P:B07-2 L:26-BN-014`: plain, without an address, in capitals. @param lot empty: none */
export function plotCode(code: string, lot: string): string {
  return `P:${code}${lot === "" ? "" : ` L:${lot}`}`.toUpperCase();
}
