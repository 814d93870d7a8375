/** Codes that stand on stakes: beds `B07`, plantings `B07-2`. Given codes are never changed unasked. */
import type { Bed, Layout } from "../model/plan.ts";

/** The next code of the series the last bed belongs to: after `B07` comes `B08`. */
export function nextBedCode(layout: Layout): string {
  const taken = new Set(layout.beds.map((bed) => bed.code));
  const last = layout.beds.at(-1)?.code ?? "A00";
  const match = /^(.*?)(\d+)$/.exec(last);
  const [prefix, digits] = match ? [match[1] ?? "", match[2] ?? ""] : [`${last}-`, "0"];
  for (let number = Number(digits) + 1; ; number += 1) {
    const code = `${prefix}${String(number).padStart(Math.max(2, digits.length), "0")}`;
    if (!taken.has(code)) return code;
  }
}

/** The lowest free `BED-n` in a bed; without a bed `P-n`. */
export function nextPlantingCode(layout: Layout, bed: Bed | undefined): string {
  const prefix = `${bed?.code ?? "P"}-`;
  const taken = new Set(layout.plantings.map((planting) => planting.code));
  for (let number = 1; ; number += 1) {
    if (!taken.has(`${prefix}${number}`)) return `${prefix}${number}`;
  }
}

/** Whether a planting's code was made from its bed's code, so that it follows to another bed. */
export function isCodeOfBed(code: string, bed: Bed | undefined): boolean {
  const prefix = `${bed?.code ?? "P"}-`;
  return code.startsWith(prefix) && /^\d+$/.test(code.slice(prefix.length));
}

/** Codes that plantings changed between two states of a layout: "B02-1 is now A05-1"; stakes must follow. */
export function codeChanges(before: Layout, after: Layout): readonly string[] {
  const old = new Map(before.plantings.map((planting) => [planting.id, planting.code]));
  return after.plantings.flatMap(({ id, code }) => {
    const was = old.get(id);
    return was === undefined || was === code ? [] : [`${was} is now ${code}`];
  });
}
