/** The pages of the plot map as pictures for the screen: the same marks as in the PDF. */
import { cutWords } from "../../core/map/beyond-map.ts";
import { isPictureWanted, PICTURE_LEFT, printedPicture } from "../../core/map/picture-mark.ts";
import { fetchFonts, printedAt } from "../form/make-file.ts";
import type { PlotMapChoice } from "./make-plot-map.ts";
import { readNow } from "../state/plan-actions.ts";

export interface PreviewPage {
  readonly name: string;
  /** The page as an SVG file. */
  readonly svg: string;
}

export interface PlotPreview {
  readonly pages: readonly PreviewPage[];
  /** What to look at before printing, in words. */
  readonly problems: readonly string[];
}

/**
 * Null when it was stopped.
 * @param onProgress parts drawn, and parts in all: each map sheet, and the pages of words
 */
export async function makePlotPreview(
  choice: PlotMapChoice,
  onProgress: (done: number, total: number) => void,
  signal: AbortSignal,
): Promise<PlotPreview | null> {
  const [{ plotMapPages }, { pdfWriter }, { svgPage }, fonts] = await Promise.all([
    import("../../core/paper-set/plot-map.ts"),
    import("../../core/page/pdf-writer.ts"),
    import("../../core/page/svg-writer.ts"),
    fetchFonts(),
  ]);
  if (signal.aborted) return null;
  const { plan, layout, result, book } = readNow();
  const { ruler } = pdfWriter("", "", fonts);
  const settings = { ...choice, printedAt: printedAt(new Date()) };
  const pages: PreviewPage[] = [];
  const problems = [
    ...(isPictureWanted(plan.picture) && !printedPicture(plan.picture) ? [`${PICTURE_LEFT}.`] : []),
    ...(plan.site.name === "" ? ["The site has no name."] : []),
    ...(plan.season.name === "" ? ["The season has no name."] : []),
    ...(layout.plantings.length === 0 ? ["Nothing is planted in this layout."] : []),
  ];
  const { parts, cut } = plotMapPages({ plan, layout, result, book }, settings, ruler);
  if (cut.length > 0) problems.push(cutWords(cut));
  for (const [index, part] of parts.entries()) {
    onProgress(index, parts.length);
    const made = part();
    for (const page of made.pages) {
      // Lets the screen be drawn, and a press on Cancel be heard.
      await new Promise((resolve) => setTimeout(resolve));
      if (signal.aborted) return null;
      pages.push({ name: page.name, svg: svgPage(page, page.name, ruler) });
    }
    if (made.unplaced.length > 0) {
      problems.push(`No room on the map for: ${made.unplaced.join(", ")}; see the plot list.`);
    }
  }
  const conflicts = result.findings.filter(({ severity }) => severity === "conflict").length;
  if (conflicts > 0) {
    problems.push(conflicts === 1 ? "1 conflict is open." : `${conflicts} conflicts are open.`);
  }
  return { pages, problems };
}
