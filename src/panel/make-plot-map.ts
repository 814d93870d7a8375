/** Makes the plot map; its machinery and fonts are fetched here, when one is asked for. */
import boldUrl from "@expo-google-fonts/noto-sans/700Bold/NotoSans_700Bold.ttf?url";
import regularUrl from "@expo-google-fonts/noto-sans/400Regular/NotoSans_400Regular.ttf?url";
import type { Orientation, PaperName } from "../core/exports/paper.ts";
import { layoutOf } from "../store/plan-store.ts";
import { downloadBytes } from "./download.ts";
import { planNow } from "./plan-actions.ts";

export interface PlotMapChoice {
  readonly paper: PaperName;
  readonly orientation: Orientation;
  readonly ratio: number;
}

export interface MadePlotMap {
  readonly fileName: string;
  readonly pages: number;
  /** Codes that found no room on the map; they stand in the plot list. */
  readonly unplacedLabels: readonly string[];
}

async function fetchFont(url: string): Promise<Uint8Array> {
  const answer = await fetch(url);
  if (!answer.ok) throw new Error(`The font for the map could not be loaded (${answer.status})`);
  return new Uint8Array(await answer.arrayBuffer());
}

/** Makes and downloads the map of the layout on screen; null when it was cancelled. */
export async function makePlotMap(
  choice: PlotMapChoice,
  onProgress: (done: number, total: number) => void,
  signal: AbortSignal,
): Promise<MadePlotMap | null> {
  const [{ plotMapPdf, plotMapFileName }, regular, bold] = await Promise.all([
    import("../core/exports/plot-map.ts"),
    fetchFont(regularUrl),
    fetchFont(boldUrl),
  ]);
  if (signal.aborted) return null;
  const { plan, layoutId, result, book } = planNow();
  const layout = layoutOf(plan, layoutId);
  const made = await plotMapPdf(
    { plan, layout, result, book },
    { ...choice, printedAt: printedAt(new Date()) },
    { regular, bold },
    onProgress,
    signal,
  );
  if (signal.aborted) return null;
  const fileName = plotMapFileName(plan, layout);
  downloadBytes(new Uint8Array(made.bytes), fileName, "application/pdf");
  return { fileName, pages: made.pages, unplacedLabels: made.unplacedLabels };
}

/** Local date and time as `2027-02-14 10:02`. */
function printedAt(now: Date): string {
  const two = (value: number) => String(value).padStart(2, "0");
  const day = `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
  return `${day} ${two(now.getHours())}:${two(now.getMinutes())}`;
}
