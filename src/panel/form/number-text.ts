/** Numbers as people type them. One strict reader: never `Number("")`, never half of a text. */
import * as words from "./field-words.ts";

export type ReadNumber =
  | { readonly ok: true; readonly value: number }
  | { readonly ok: false; readonly reason: string };

/** Other scripts' digits, the minus sign and the decimal comma to plain ASCII. */
function plain(text: string): string {
  return text
    .normalize("NFKC")
    .replace(/\u2212/g, "-")
    .replace(",", ".")
    .trim();
}

/** A whole number from 0 up, such as plants or rows. */
export function readCount(text: string): ReadNumber {
  const body = plain(text);
  if (!/^\d+$/.test(body)) return { ok: false, reason: words.typeWholeNumber };
  const value = Number(body);
  if (value > 1_000_000) return { ok: false, reason: words.overMillion };
  return { ok: true, value };
}

/** A turn in degrees clockwise, from -360 to 360; a degree sign may follow. */
export function readTurn(text: string): ReadNumber {
  const body = plain(text.trim().replace(/(?:°|deg|degrees)$/i, ""));
  if (!/^-?(\d+(\.\d*)?|\.\d+)$/.test(body)) {
    return { ok: false, reason: words.typeDegrees };
  }
  const value = Number(body);
  if (Math.abs(value) > 360) return { ok: false, reason: words.turnTooLarge };
  return { ok: true, value };
}

/** A turn for reading and typing back, to a tenth of a degree. */
export function turnText(turnDeg: number): string {
  const rounded = Math.round(turnDeg * 10) / 10;
  return `${rounded === 0 ? 0 : rounded}°`;
}

/** A scale written as `1:50`, `1 : 50` or `50`. */
export function readRatio(text: string): ReadNumber {
  const body = plain(text.replace(/^\s*1\s*:\s*/, ""));
  if (!/^\d+(\.\d+)?$/.test(body)) return { ok: false, reason: words.typeScale };
  const value = Number(body);
  if (value < 1 || value > 10_000) return { ok: false, reason: words.scaleOutOfRange };
  return { ok: true, value };
}
