/** The pages of the plot map as pictures for the screen: the same marks as in the PDF. */
import { fetchFonts, printedAt } from "./make-file.ts";
import type { PlotMapChoice } from "./make-plot-map.ts";
import { checkedNow } from "./plan-actions.ts";

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

/** Null when it was stopped. */
export async function makePlotPreview(
  choice: PlotMapChoice,
  signal: AbortSignal,
): Promise<PlotPreview | null> {
  const [{ plotMapPages }, { pdfWriter }, { svgPage }, fonts] = await Promise.all([
    import("../core/exports/plot-map.ts"),
    import("../core/exports/pdf-writer.ts"),
    import("../core/exports/svg-writer.ts"),
    fetchFonts(),
  ]);
  const { plan, layout, result, book } = checkedNow();
  const { ruler } = pdfWriter("", "", fonts);
  const settings = { ...choice, printedAt: printedAt(new Date()) };
  const pages: PreviewPage[] = [];
  const problems = [
    ...(plan.site.name === "" ? ["The site has no name."] : []),
    ...(plan.season.name === "" ? ["The season has no name."] : []),
    ...(layout.plantings.length === 0 ? ["Nothing is planted in this layout."] : []),
  ];
  for (const part of plotMapPages({ plan, layout, result, book }, settings, ruler).parts) {
    const made = part();
    for (const page of made.pages) {
      pages.push({ name: page.name, svg: svgPage(page, page.name, ruler) });
    }
    if (made.unplaced.length > 0) {
      problems.push(`No room on the map for: ${made.unplaced.join(", ")}; see the plot list.`);
    }
    // Lets the screen be drawn, and a press on Cancel be heard.
    await new Promise((resolve) => setTimeout(resolve));
    if (signal.aborted) return null;
  }
  const conflicts = result.findings.filter(({ severity }) => severity === "conflict").length;
  if (conflicts > 0) {
    problems.push(conflicts === 1 ? "1 conflict is open." : `${conflicts} conflicts are open.`);
  }
  return { pages, problems };
}
