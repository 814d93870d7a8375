/** Makes the plot map; its machinery and fonts are fetched here, when one is asked for. */
import type { CompanionId } from "../../core/map/companion-ids.ts";
import { plotMapFileName } from "../../core/page/file-name.ts";
import type { Orientation, PaperName } from "../../core/page/paper.ts";
import { downloadBytes } from "../form/download.ts";
import { fetchFonts, printedAt } from "../form/make-file.ts";
import { readNow } from "../state/plan-actions.ts";

export interface PlotMapChoice {
  readonly paper: PaperName;
  readonly orientation: Orientation;
  readonly ratio: number;
  readonly companions: readonly CompanionId[];
  /** Bed cards on a page. */
  readonly cardsPerPage?: 2 | 4;
}

export interface MadePlotMap {
  readonly fileName: string;
  readonly pages: number;
  /** Codes that found no room on the map; they stand in the plot list. */
  readonly unplacedLabels: readonly string[];
}

/** Makes and downloads the map of the layout on screen; null when it was cancelled. */
export async function makePlotMap(
  choice: PlotMapChoice,
  onProgress: (done: number, total: number) => void,
  signal: AbortSignal,
): Promise<MadePlotMap | null> {
  const [{ plotMapPdf }, fonts] = await Promise.all([
    import("../../core/paper-set/plot-map.ts"),
    fetchFonts(),
  ]);
  if (signal.aborted) return null;
  const checked = readNow();
  const made = await plotMapPdf(
    checked,
    { ...choice, printedAt: printedAt(new Date()) },
    fonts,
    onProgress,
    signal,
  );
  if (signal.aborted) return null;
  const fileName = plotMapFileName(checked.plan, checked.layout, choice.paper);
  downloadBytes(new Uint8Array(made.bytes), fileName, "application/pdf");
  return { fileName, pages: made.pages, unplacedLabels: made.unplacedLabels };
}
