/** Makes the printed comparison; its machinery and fonts are fetched when one is asked for. */
import { compareFileName } from "../../core/page/file-name.ts";
import { type PaperName, usualPaper } from "../../core/page/paper.ts";
import type { Layout, Plan } from "../../core/model/plan.ts";
import { downloadBytes } from "../form/download.ts";
import { fetchFonts, printedAt } from "../paper/make-file.ts";
import { planNow } from "../state/plan-actions.ts";

export interface CompareChoice {
  readonly plan: Plan;
  /** The others are held against the first. */
  readonly layouts: readonly Layout[];
  readonly isOverlaid: boolean;
  /** Null: the usual one for the plan's unit. */
  readonly paper: PaperName | null;
}

/** Makes and downloads the pages; what became of it in words, or null when it was cancelled. */
export async function makeCompare(
  { plan, layouts, isOverlaid, paper }: CompareChoice,
  onProgress: (done: number, total: number) => void,
  signal: AbortSignal,
): Promise<string | null> {
  const [{ comparePdf }, fonts] = await Promise.all([
    import("../../core/compare/compare-pdf.ts"),
    fetchFonts(),
  ]);
  if (signal.aborted) return null;
  const { book } = planNow();
  const print = {
    paper: paper ?? usualPaper(plan.units),
    isOverlaid,
    printedAt: printedAt(new Date()),
  };
  const made = await comparePdf(
    { plan, layouts, book },
    print,
    fonts,
    async (done, total) => {
      onProgress(done, total);
      // Room for the window to draw, and for a press on Cancel.
      await new Promise((resolve) => setTimeout(resolve));
    },
    signal,
  );
  const fileName = compareFileName(plan, layouts);
  downloadBytes(new Uint8Array(made.bytes), fileName, "application/pdf");
  return `Made ${fileName}, ${made.pages} pages on ${print.paper}.`;
}
