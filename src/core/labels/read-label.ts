/** What the square code of a label, or a code typed by hand, points to in a plan. */
import { lotBook } from "../lots/lot-book.ts";
import { foldedCode } from "../model/lot-code.ts";
import type { Bed, Layout, Lot, Plan, Planting } from "../model/plan.ts";

export interface LabelTarget {
  readonly lots: readonly Lot[];
  readonly planting: Planting | null;
  readonly bed: Bed | null;
  /** The layout its planting or bed stands in. */
  readonly layout: Layout | null;
  /** Codes the label names that are not in the plan. */
  readonly missing: readonly string[];
}

/** As the labels are printed: `P:B07-2 L:26-BN-014`, in capitals; see lots/plot-code.ts. */
const LABEL = /^P:(.*?)(?: L:(.*))?$/;

/**
 * Reads a label of stakes or packets (plot, then lots), or a code alone: of a lot, a planting or a
 * bed. Whatever the case. @param layout whose plantings and beds go before those of other layouts
 */
export function readLabel(
  text: string,
  plan: Pick<Plan, "lots" | "layouts">,
  layout: Layout,
): LabelTarget {
  const layouts = [layout, ...plan.layouts.filter(({ id }) => id !== layout.id)];
  const body = foldedCode(text);
  const shelf = lotBook(plan.lots);
  const match = LABEL.exec(body);
  if (!match) {
    const lot = shelf.ofCode(body);
    // A lot's own code: a plot of the same code in a layout not on screen is no rival.
    const plot = onSheets(body, lot ? [layout] : layouts);
    const isKnown = lot !== undefined || plot.layout !== null;
    return { lots: lot ? [lot] : [], ...plot, missing: isKnown ? [] : [text.trim()] };
  }
  const [, plotCode = "", lotText = ""] = match;
  const plot = onSheets(plotCode, layouts);
  const codes = lotText === "" ? [] : lotCodes(lotText, shelf.codes);
  const lots = codes.flatMap((code) => shelf.ofCode(code) ?? []);
  return {
    lots,
    ...plot,
    missing: [
      ...(plot.layout || plotCode === "" ? [] : [plotCode]),
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

/** The planting of that code, else the bed, in the first of the layouts that has one. */
function onSheets(
  code: string,
  layouts: readonly Layout[],
): Pick<LabelTarget, "planting" | "bed" | "layout"> {
  for (const layout of layouts) {
    const planting = layout.plantings.find((each) => foldedCode(each.code) === code);
    if (planting) return { planting, bed: null, layout };
    const bed = layout.beds.find((each) => foldedCode(each.code) === code);
    if (bed) return { planting: null, bed, layout };
  }
  return { planting: null, bed: null, layout: null };
}
