/** A span of days as people type it: `55-65` or `60`. */
import type { Range } from "../../core/kinds/crop.ts";
import * as words from "./field-words.ts";

export type ReadRange =
  | { readonly ok: true; readonly value: Range }
  | { readonly ok: false; readonly reason: string };

const RANGE = /^(\d{1,3})(?:\s*(?:-|\u2013|to)\s*(\d{1,3}))?$/;

export function readRange(text: string): ReadRange {
  const match = RANGE.exec(
    text
      .normalize("NFKC")
      .trim()
      .replace(/days?$/i, "")
      .trim(),
  );
  if (!match) return { ok: false, reason: words.typeDays };
  const least = Number(match[1]);
  const most = match[2] === undefined ? least : Number(match[2]);
  return least <= most
    ? { ok: true, value: [least, most] }
    : { ok: false, reason: words.smallerFirst };
}

export function rangeText([least, most]: Range): string {
  return least === most ? String(least) : `${least}-${most}`;
}
