/** Series of codes for many objects at once. Codes already given are passed over, never changed. */

import { LIMITS } from "../model/limits.ts";
import { trailingDigits } from "../model/trailing-digits.ts";

/** A code split into what stands before its last number, and the number's digits. */
function splitCode(code: string): { readonly prefix: string; readonly digits: string } {
  const digits = trailingDigits(code);
  return digits === ""
    ? { prefix: `${code}-`, digits }
    : { prefix: code.slice(0, code.length - digits.length), digits };
}

/** The first code of a series that is free: the code itself, else counting up from it. */
export function firstFreeCode(code: string, taken: ReadonlySet<string>): string {
  return taken.has(code) ? codeAfter(code, taken) : code;
}

/**
 * The next free code of the series a code belongs to: after `B07` comes `B08`. Numbers of any
 * length are counted exactly; where the next code would be longer than a code may be, what stands
 * before the number is shortened.
 */
export function codeAfter(code: string, taken: ReadonlySet<string>): string {
  const { prefix, digits } = splitCode(code);
  for (let number = digits === "" ? 2n : BigInt(digits) + 1n; ; number += 1n) {
    const text = String(number).padStart(digits.length, "0").slice(-LIMITS.name);
    const next = `${prefix.slice(0, LIMITS.name - text.length)}${text}`;
    if (!taken.has(next)) return next;
  }
}

/** The first code of the next block: after `A03` comes `B01`, after `Z3` comes `AA1`. */
export function nextBlockCode(code: string): string {
  const { prefix, digits } = splitCode(code);
  const { head, block, tail } = lastLetters(prefix);
  const first = "1".padStart(Math.max(1, digits.length), "0");
  return `${head}${block === "" ? "B" : letterAfter(block)}${tail}${first}`.slice(0, LIMITS.name);
}

/** A text split around the last letters in it; by hand, for the reason of `trailingDigits`. */
function lastLetters(text: string): { readonly head: string; block: string; tail: string } {
  const isLetter = (at: number) => /^[A-Za-z]$/.test(text.charAt(at));
  let end = text.length;
  while (end > 0 && !isLetter(end - 1)) end -= 1;
  let start = end;
  while (start > 0 && isLetter(start - 1)) start -= 1;
  return { head: text.slice(0, start), block: text.slice(start, end), tail: text.slice(end) };
}

function letterAfter(letters: string): string {
  const last = letters.at(-1) ?? "";
  const rest = letters.slice(0, -1);
  if (last !== "z" && last !== "Z")
    return `${rest}${String.fromCodePoint((last.codePointAt(0) ?? 64) + 1)}`;
  const first = last === "z" ? "a" : "A";
  return `${rest === "" ? first : letterAfter(rest)}${first}`;
}
