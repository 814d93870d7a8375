/**
 * Commas and dots in a length: decimal marks, or marks between thousands. Told apart by where they
 * stand, by the unit (feet are written with commas between thousands, metres often with a decimal
 * comma) and by the writer's language; what can be read two ways is asked, never guessed.
 */

/** The decimal mark where somebody writes, as far as it is known. */
export type DecimalMark = "." | ",";

export type PlainMarks =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly reason: string };

/** Units whose numbers are written with commas between thousands where they are used. */
const COMMA_GROUPS: ReadonlySet<string> = new Set([
  "ft",
  "foot",
  "feet",
  "'",
  "yd",
  "yard",
  "yards",
]);

/**
 * The text with dots as decimal marks and nothing between thousands.
 * @param text plain signs only, lower case
 * @param bareUnit unit of a number without one
 */
export function plainMarks(text: string, bareUnit: string, mark?: DecimalMark): PlainMarks {
  let twoWays: string | null = null;
  const plain = text.replace(/\d+(?:[.,]\d+)*|(?:[.,]\d+)+/g, (number, at: number) => {
    const after = /^\s*([a-z'"]*)/.exec(text.slice(at + number.length))?.[1] ?? "";
    const found = plainNumber(number, after === "" ? bareUnit : after, mark);
    if (found === null) twoWays ??= askText(number, after);
    return found ?? number;
  });
  if (twoWays !== null) return { ok: false, reason: twoWays };
  // A mark at the end of a number, as in "3. m", says nothing.
  return { ok: true, text: plain.replace(/(\d)\.(?![\d.])/g, "$1").trim() };
}

/** Null where it can be read two ways; unreadable numbers are left as they are. */
function plainNumber(number: string, unit: string, mark: DecimalMark | undefined): string | null {
  // Both marks, or one mark more than once, leave one reading.
  if (/^\d{1,3}(?:,\d{3})+\.\d+$|^\d{1,3}(?:,\d{3}){2,}$/.test(number)) {
    return number.replaceAll(",", "");
  }
  if (/^\d{1,3}(?:\.\d{3})+,\d+$|^\d{1,3}(?:\.\d{3}){2,}$/.test(number)) {
    return number.replaceAll(".", "").replace(",", ".");
  }
  // Thousands never begin with a nought, and have three digits after the mark.
  if (!/^[1-9]\d{0,2}[.,]\d{3}$/.test(number)) return number.replace(",", ".");
  if (number.includes(".")) return mark === "," ? null : number;
  return COMMA_GROUPS.has(unit) && mark !== "," ? number.replace(",", "") : null;
}

function askText(number: string, unit: string): string {
  const after = unit === "" || unit === "'" || unit === '"' ? unit : ` ${unit}`;
  const whole = number.replace(/[.,]/, "");
  // Noughts at the end let the smaller reading be written with a mark that is no thousands mark.
  const decimal = String(Number(number.replace(",", ".")));
  const smaller = /\.\d{3}$/.test(decimal) ? `${decimal}0` : decimal;
  return `"${number}${after}" can be read two ways: write ${whole}${after} or ${smaller}${after}`;
}
