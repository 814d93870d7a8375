/** Stake labels and seed packet labels as a PDF. */
import type { CheckedLayout } from "../checks/checked-layout.ts";
import { mapTitle } from "../map/map-text.ts";
import { type PdfFonts, pdfWriter } from "../page/pdf-writer.ts";
import type { Page, TextRuler } from "../page/scene.ts";
import { beforeUsePages, remarkWords } from "./before-use.ts";
import { type LabelChoice, labelPages } from "./label-pages.ts";
import { labelsFor } from "./label-use.ts";
import type { LabelUse } from "./label-facts.ts";
import { nothingToLabel, sheetWords } from "./packet-words.ts";

export interface LabelDocument {
  readonly pages: readonly Page[];
  /** What to look at before the labels are used. */
  readonly remarks: readonly string[];
}

/** The sheets, and after them a page to be read. Throws a RangeError when there is nothing to label. */
export function labelDocument(
  input: CheckedLayout,
  use: LabelUse,
  choice: LabelChoice,
  ruler: TextRuler,
): LabelDocument {
  const labels = labelsFor(use, input, choice.treatment);
  if (labels.length === 0) throw new RangeError(nothingToLabel[use]);
  const sheets = labelPages(labels, choice, ruler);
  return {
    pages: [...sheets.pages, ...beforeUsePages(labels, use, sheets, ruler)],
    remarks: remarkWords(sheets),
  };
}

export function labelsTitle({ plan }: CheckedLayout): string {
  return sheetWords.title(mapTitle(plan));
}

export async function labelsPdf(
  input: CheckedLayout,
  use: LabelUse,
  choice: LabelChoice,
  printedAt: string,
  fonts: PdfFonts,
): Promise<{ readonly bytes: Uint8Array; readonly remarks: readonly string[] }> {
  const writer = pdfWriter(labelsTitle(input), printedAt, fonts);
  const { pages, remarks } = labelDocument(input, use, choice, writer.ruler);
  for (const page of pages) writer.addPage(page);
  return { bytes: await writer.finish(), remarks };
}
