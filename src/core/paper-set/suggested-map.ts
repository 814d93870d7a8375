/** The plot map as it is offered first: on the paper of the plan's units, at the suggested ratio. */
import type { CheckedLayout } from "../checks/checked-layout.ts";
import type { PlotMapSettings } from "../map/map-text.ts";
import { oneSheetRatio, suggestSheets } from "../map/page-plan.ts";
import { usualPaper } from "../page/paper.ts";
import type { PdfFonts } from "../page/pdf-writer.ts";
import { plotMapPdf } from "./plot-map.ts";

export async function suggestedMap(
  input: CheckedLayout,
  printedAt: string,
  fonts: PdfFonts,
): Promise<Uint8Array> {
  const paper = usualPaper(input.plan.units);
  const settings = { paper, ...suggestSheets(input.plan, input.layout, paper), printedAt };
  return (await plotMapPdf(input, settings, fonts)).bytes;
}

/** Everything on one sheet, whatever ratio that takes. */
export function oneSheetSettings(input: CheckedLayout, printedAt: string): PlotMapSettings {
  const paper = usualPaper(input.plan.units);
  const ratio = oneSheetRatio(input.plan, input.layout, paper, "landscape");
  return { paper, orientation: "landscape", ratio, printedAt };
}
