/** Makes the printed comparison. */
import type { CheckedLayout } from "../../core/checks/checked-layout.ts";
import { type PaperName, usualPaper } from "../../core/page/paper.ts";
import { downloadMade } from "../form/download.ts";
import { askPaper } from "../state/ask-paper.ts";
import * as words from "./words.ts";

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
  const plan = compared[0]?.plan;
  if (!plan) return null;
  const on = paper ?? usualPaper(plan.units);
  const layoutIds = compared.map(({ layout }) => layout.id);
  const made = await askPaper(
    { what: "compare", layoutIds, paper: on, isOverlaid },
    { followsReading: false, onProgress, signal },
  );
  if (!made) return null;
  const [name = ""] = downloadMade(made);
  return words.madePages(name, made.files[0]?.pages ?? 0, on);
}
