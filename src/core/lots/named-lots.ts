/** Lots named by their codes in a text, as people type them and other files carry them. */
import { foldedCode } from "../model/lot-code.ts";
import type { Lot, Plan } from "../model/plan.ts";
import { LIMITS } from "../model/limits.ts";

const BETWEEN_CODES = "; ";

/** Codes of lots as one text: `AL-25; AL-26`. */
export function codesText(lots: readonly Pick<Lot, "code">[]): string {
  return lots.map(({ code }) => code).join(BETWEEN_CODES);
}

export interface NamedLots {
  /** The lots a text names; codes that are not known become new lots of the variety. */
  readonly named: (text: string, varietyId: string) => readonly Lot[];
  /** Lots a text names that are of other varieties. */
  readonly strangers: (text: string, varietyId: string) => readonly Lot[];
  /** Those that were new, in the order they were named. */
  readonly made: readonly Lot[];
}

/** Reads texts of codes one after another; a code new in one is known in the next. */
export function namedLots(lots: Plan["lots"]): NamedLots {
  const byCode = new Map(lots.map((lot) => [foldedCode(lot.code), lot]));
  const ids = new Set(lots.map(({ id }) => id));
  const made: Lot[] = [];
  let number = 0;
  const lotOf = (code: string, variety: string): Lot => {
    const known = byCode.get(foldedCode(code));
    if (known) return known;
    do number += 1;
    while (ids.has(`lot-${number}`));
    const lot: Lot = { id: `lot-${number}`, code: code.trim(), variety, state: "in stock" };
    made.push(lot);
    ids.add(lot.id);
    byCode.set(foldedCode(code), lot);
    return lot;
  };
  const codesOf = (text: string): readonly string[] => {
    const codes = byCode.has(foldedCode(text)) ? [text] : text.split(";");
    return codes.filter((code) => code.trim() !== "").slice(0, LIMITS.lotRefs);
  };
  return {
    made,
    named: (text, variety) => [...new Set(codesOf(text).map((code) => lotOf(code, variety)))],
    strangers: (text, variety) =>
      codesOf(text)
        .flatMap((code) => byCode.get(foldedCode(code)) ?? [])
        .filter((lot) => lot.variety !== variety),
  };
}
