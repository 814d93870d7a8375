/** Layouts compared as a PDF, black on white. */
import { type ComparePrint, comparePages } from "./compare-pages.ts";
import type { CheckedLayout } from "../checks/checked-layout.ts";
import { mapTitle } from "../map/map-text.ts";
import { type PdfFonts, pdfWriter } from "../page/pdf-writer.ts";
import type { Progress } from "../paper-set/plot-map.ts";
import type { Page } from "../page/scene.ts";
import { comparedWords } from "./compare-words.ts";

export interface ComparePdf {
  readonly bytes: Uint8Array;
  readonly pages: number;
  /** Ground for paper, of all drawings. */
  readonly ratio: number;
}

/** Thrown when the signal says stop. */
export class CompareStopped extends Error {}

/**
 * Makes the PDF. The same layouts, settings and fonts give the same bytes.
 *
 * @param compared two or more layouts of one plan; the others are held against the first
 */
export async function comparePdf(
  compared: readonly CheckedLayout[],
  print: ComparePrint,
  fonts: PdfFonts,
  onProgress: Progress = () => undefined,
  signal?: { readonly aborted: boolean },
): Promise<ComparePdf> {
  const plan = compared[0]?.plan;
  const title = comparedWords.fileTitle(plan ? mapTitle(plan) : "");
  const writer = pdfWriter(title, print.printedAt, fonts);
  const { parts, ratio } = comparePages(compared, print, writer.ruler);
  const total = parts.length + 2;
  let done = 0;
  const step = async () => {
    done += 1;
    await onProgress(done, total);
    if (signal?.aborted === true) throw new CompareStopped(comparedWords.stopped);
  };
  const pages: Page[] = [];
  for (const part of parts) {
    pages.push(...part());
    await step();
  }
  for (const page of pages) writer.addPage(page);
  await step();
  const bytes = await writer.finish();
  await step();
  return { bytes, pages: pages.length, ratio };
}
