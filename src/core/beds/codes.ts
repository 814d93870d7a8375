/** Codes that stand on stakes: beds `B07`, plantings `B07-2`. Given codes are never changed unasked. */
import { trailingDigits } from "../model/trailing-digits.ts";
import type { Bed, Layout } from "../model/plan.ts";
import { LIMITS } from "../model/limits.ts";
import { codeAfter } from "./code-series.ts";
import * as steps from "../words/step-words.ts";

/** Characters a planting code's dash and number take at most. */
const ROOM_FOR_NUMBER = 8;

/** The next code of the series the last bed belongs to: after `B07` comes `B08`. */
export function nextBedCode(layout: Layout): string {
  const taken = new Set(layout.beds.map((bed) => bed.code));
  const last = layout.beds.at(-1)?.code ?? "A00";
  const digits = trailingDigits(last);
  // Two digits at least: a bed without a number is followed by `NAME-01`.
  const start =
    digits === ""
      ? `${last}-00`
      : `${last.slice(0, last.length - digits.length)}${digits.padStart(2, "0")}`;
  return codeAfter(start, taken);
}

/** What a planting's code begins with in a bed; a bed's code of the greatest length leaves room. */
export function plantingPrefix(bed: Pick<Bed, "code"> | undefined): string {
  return `${(bed?.code ?? "P").slice(0, LIMITS.name - ROOM_FOR_NUMBER)}-`;
}

/** The lowest free `BED-n` in a bed; without a bed `P-n`. */
export function nextPlantingCode(layout: Layout, bed: Bed | undefined): string {
  const prefix = plantingPrefix(bed);
  const taken = new Set(layout.plantings.map((planting) => planting.code));
  for (let number = 1; ; number += 1) {
    if (!taken.has(`${prefix}${number}`)) return `${prefix}${number}`;
  }
}

/** Whether a planting's code was made from its bed's code, so that it follows to another bed. */
export function isCodeOfBed(code: string, bed: Bed | undefined): boolean {
  const prefix = plantingPrefix(bed);
  return code.startsWith(prefix) && /^\d+$/.test(code.slice(prefix.length));
}

/** Codes that plantings changed between two states of a layout: "B02-1 is now A05-1"; stakes must follow. */
export function codeChanges(before: Layout, after: Layout): readonly string[] {
  const old = new Map(before.plantings.map((planting) => [planting.id, planting.code]));
  return after.plantings.flatMap(({ id, code }) => {
    const was = old.get(id);
    return was === undefined || was === code ? [] : [steps.recoded(was, code)];
  });
}
