/** Makes the printed comparison; its machinery and fonts are fetched when one is asked for. */
import { compareFileName } from "../../core/page/file-name.ts";
import { type PaperName, usualPaper } from "../../core/page/paper.ts";
import type { CheckedLayout } from "../../core/checks/checked-layout.ts";
import { downloadBytes } from "../form/download.ts";
import { fetchFonts, printedAt } from "../form/make-file.ts";

export interface CompareChoice {
  /** Of one plan; the others are held against the first. */
  readonly compared: readonly CheckedLayout[];
  readonly isOverlaid: boolean;
  /** Null: the usual one for the plan's unit. */
  readonly paper: PaperName | null;
}

/** Makes and downloads the pages; what became of it in words, or null when it was cancelled. */
export async function makeCompare(
  { compared, isOverlaid, paper }: CompareChoice,
  onProgress: (done: number, total: number) => void,
  signal: AbortSignal,
): Promise<string | null> {
  const [{ comparePdf }, fonts] = await Promise.all([
    import("../../core/compare/compare-pdf.ts"),
    fetchFonts(),
  ]);
  const plan = compared[0]?.plan;
  if (signal.aborted || !plan) return null;
  const print = {
    paper: paper ?? usualPaper(plan.units),
    isOverlaid,
    printedAt: printedAt(new Date()),
  };
  const made = await comparePdf(
    compared,
    print,
    fonts,
    async (done, total) => {
      onProgress(done, total);
      // Room for the window to draw, and for a press on Cancel.
      await new Promise((resolve) => setTimeout(resolve));
    },
    signal,
  );
  const fileName = compareFileName(
    plan,
    compared.map(({ layout }) => layout),
  );
  downloadBytes(new Uint8Array(made.bytes), fileName, "application/pdf");
  return `Made ${fileName}, ${made.pages} pages on ${print.paper}.`;
}
