/** Series of codes for many objects at once. Codes already given are passed over, never changed. */

/** A code split into what stands before its last number, and the number's digits. */
function splitCode(code: string): { readonly prefix: string; readonly digits: string } {
  const match = /^(.*?)(\d+)$/.exec(code);
  return match
    ? { prefix: match[1] ?? "", digits: match[2] ?? "" }
    : { prefix: `${code}-`, digits: "" };
}

/** The first code of a series that is free: the code itself, else counting up from it. */
export function firstFreeCode(code: string, taken: ReadonlySet<string>): string {
  return taken.has(code) ? codeAfter(code, taken) : code;
}

/** The next free code of the series a code belongs to: after `B07` comes `B08`. */
export function codeAfter(code: string, taken: ReadonlySet<string>): string {
  const { prefix, digits } = splitCode(code);
  for (let number = digits === "" ? 2 : Number(digits) + 1; ; number += 1) {
    const next = `${prefix}${String(number).padStart(digits.length, "0")}`;
    if (!taken.has(next)) return next;
  }
}

/** The first code of the next block: after `A03` comes `B01`, after `Z3` comes `AA1`. */
export function nextBlockCode(code: string): string {
  const { prefix, digits } = splitCode(code);
  const letters = /([A-Za-z]*)([^A-Za-z]*)$/.exec(prefix);
  const block = letters?.[1] ?? "";
  const tail = letters?.[2] ?? "";
  const head = prefix.slice(0, prefix.length - block.length - tail.length);
  const first = "1".padStart(Math.max(1, digits.length), "0");
  return `${head}${block === "" ? "B" : letterAfter(block)}${tail}${first}`;
}

function letterAfter(letters: string): string {
  const last = letters.at(-1) ?? "";
  const rest = letters.slice(0, -1);
  if (last !== "z" && last !== "Z")
    return `${rest}${String.fromCodePoint((last.codePointAt(0) ?? 64) + 1)}`;
  const first = last === "z" ? "a" : "A";
  return `${rest === "" ? first : letterAfter(rest)}${first}`;
}
