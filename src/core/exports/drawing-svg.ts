/** The map as SVG: the whole page, or the ground alone. The same marks as on paper. */
import { ratioText } from "./drawing-ratio.ts";
import type { PlotMapInput } from "./map-items.ts";
import { mapTitle } from "./map-text.ts";
import { pageFrame } from "./page-frame.ts";
import { type PdfFonts, pdfWriter } from "./pdf-writer.ts";
import { plotMapPages } from "./plot-map.ts";
import type { Page, TextRuler } from "./scene.ts";
import { oneSheetSettings } from "./suggested-map.ts";
import { svgPage } from "./svg-writer.ts";

/** The map on one page, at the finest ratio that takes one sheet. */
export function pageSvg(input: PlotMapInput, printedAt: string, fonts: PdfFonts): Promise<string> {
  const { page, title, ruler } = onePage(input, printedAt, fonts);
  return Promise.resolve(svgPage(page, title, ruler));
}

/** The ground alone, cut out of that page: its size is true at the ratio named in the title. */
export function drawingSvg(
  input: PlotMapInput,
  printedAt: string,
  fonts: PdfFonts,
): Promise<string> {
  const { page, title, ruler } = onePage(input, printedAt, fonts);
  const { paper, orientation } = oneSheetSettings(input, printedAt);
  const { drawing } = pageFrame(paper, orientation);
  const ground = page.marks.filter((mark) => mark.kind === "group");
  return Promise.resolve(svgPage(page, title, ruler, { marks: ground, box: drawing }));
}

function onePage(
  input: PlotMapInput,
  printedAt: string,
  fonts: PdfFonts,
): { readonly page: Page; readonly title: string; readonly ruler: TextRuler } {
  const { ruler } = pdfWriter("", "", fonts);
  const settings = oneSheetSettings(input, printedAt);
  const [page] = plotMapPages(input, settings, ruler).parts[0]?.().pages ?? [];
  if (!page) throw new RangeError("There is nothing to draw");
  const ratio = ratioText(settings.ratio, input.plan.units);
  return { page, ruler, title: `${mapTitle(input.plan)}, ${input.layout.name}, ${ratio}` };
}
