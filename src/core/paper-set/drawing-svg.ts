/** The map as SVG: the whole page, or the ground alone. The same marks as on paper. */
import { ratioText } from "../page/drawing-ratio.ts";
import { noteWidth } from "../map/list-pages.ts";
import type { CheckedLayout } from "../checks/checked-layout.ts";
import { mapTitle } from "../map/map-text.ts";
import { withNotesBelow } from "./notes-below.ts";
import { pageFrame } from "../page/page-frame.ts";
import { type PdfFonts, pdfWriter } from "../page/pdf-writer.ts";
import { sheetAndNotes } from "./plot-map.ts";
import { oneSheetSettings } from "./suggested-map.ts";
import { svgPage } from "../page/svg-writer.ts";

/** The map on one page, at the finest ratio that takes one sheet, with its notes below. */
export function pageSvg(input: CheckedLayout, printedAt: string, fonts: PdfFonts): Promise<string> {
  const { page, notes, title, ruler } = onePage(input, printedAt, fonts);
  return Promise.resolve(svgPage(withNotesBelow(page, notes), title, ruler));
}

/** The ground alone, cut out of that page: its size is true at the ratio named in the title. */
export function drawingSvg(
  input: CheckedLayout,
  printedAt: string,
  fonts: PdfFonts,
): Promise<string> {
  const { page, title, ruler, frame } = onePage(input, printedAt, fonts);
  const ground = page.marks.filter((mark) => mark.kind === "group");
  return Promise.resolve(svgPage(page, title, ruler, { marks: ground, box: frame.drawing }));
}

function onePage(input: CheckedLayout, printedAt: string, fonts: PdfFonts) {
  const { ruler } = pdfWriter("", "", fonts);
  const settings = oneSheetSettings(input, printedAt);
  const frame = pageFrame(settings.paper, settings.orientation);
  const { page, notes } = sheetAndNotes(input, settings, ruler, noteWidth(frame));
  const ratio = ratioText(settings.ratio, input.plan.units);
  const title = `${mapTitle(input.plan)}, ${input.layout.name}, ${ratio}`;
  return { page, notes, ruler, frame, title };
}
