/** Codes of lots, as a person writes them and a machine reads them back. */

/** Two codes are the same when this is: whatever the case, and whatever spaces stand around. */
export function foldedCode(code: string): string {
  return code.normalize("NFC").trim().toUpperCase();
}

/** The first of `code`, `code-2`, `code-3` ... that is not taken. @param taken folded codes */
export function freeCode(code: string, taken: ReadonlySet<string> | ReadonlyMap<string, unknown>) {
  let free = code;
  for (let number = 2; taken.has(foldedCode(free)); number += 1) free = `${code}-${number}`;
  return free;
}
