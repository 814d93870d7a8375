/** What the square code of a label, or a code typed by hand, points to in a plan. */
import { lotBook } from "../lots/lot-book.ts";
import { foldedCode } from "../model/lot-code.ts";
import type { Bed, Layout, Lot, Plan, Planting } from "../model/plan.ts";

export interface LabelTarget {
  readonly lots: readonly Lot[];
  readonly planting: Planting | null;
  readonly bed: Bed | null;
  /** Codes the label names that are not in the plan. */
  readonly missing: readonly string[];
}

/** As the labels are printed: `P:B07-2 L:26-BN-014`, in capitals; see label-facts.ts. */
const LABEL = /^P:(.*?)(?: L:(.*))?$/;

/**
 * Reads a label of stakes or packets (plot, then lots), or a code alone: of a lot, a planting or a
 * bed. Whatever the case. @param layout whose plantings and beds are looked through
 */
export function readLabel(text: string, plan: Pick<Plan, "lots">, layout: Layout): LabelTarget {
  const body = foldedCode(text);
  const shelf = lotBook(plan.lots);
  const match = LABEL.exec(body);
  if (!match) {
    const lot = shelf.ofCode(body);
    const { planting, bed } = onSheet(body, layout);
    const isKnown = lot !== undefined || planting !== null || bed !== null;
    return { lots: lot ? [lot] : [], planting, bed, missing: isKnown ? [] : [text.trim()] };
  }
  const [, plotCode = "", lotText = ""] = match;
  const { planting, bed } = onSheet(plotCode, layout);
  const codes = lotText === "" ? [] : lotCodes(lotText, shelf.codes);
  const lots = codes.flatMap((code) => shelf.ofCode(code) ?? []);
  return {
    lots,
    planting,
    bed,
    missing: [
      ...(planting || bed || plotCode === "" ? [] : [plotCode]),
      ...codes.filter((code) => !shelf.codes.has(code)),
    ],
  };
}

/** Several codes stand with commas between; one that has a comma itself is taken whole. */
function lotCodes(text: string, known: ReadonlySet<string>): readonly string[] {
  const whole = foldedCode(text);
  if (known.has(whole)) return [whole];
  return text
    .split(",")
    .map(foldedCode)
    .filter((code) => code !== "");
}

function onSheet(code: string, layout: Layout) {
  const planting = layout.plantings.find((each) => foldedCode(each.code) === code) ?? null;
  const bed = planting
    ? null
    : (layout.beds.find((each) => foldedCode(each.code) === code) ?? null);
  return { planting, bed };
}
