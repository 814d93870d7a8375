/** What the dialog that prints has been told, and what it asks the thread that makes paper. */
import {
  type PrintId,
  printFileName,
  printHindrance,
  printParts,
} from "../../core/files/print-list.ts";
import type { LabelChoice } from "../../core/labels/label-pages.ts";
import type { Layout, Plan } from "../../core/model/plan.ts";
import { plotMapFileName } from "../../core/page/file-name.ts";
import type { Orientation, PaperName } from "../../core/page/paper.ts";
import type { PaperJob, PaperMade, WantedPdf } from "../../store/threads/paper-job.ts";
import { downloadMade } from "../form/download.ts";
import { askPaper } from "../state/ask-paper.ts";
import { readNow } from "../state/plan-actions.ts";
import { paperFile, plotMapPdf, seasonPdf } from "./paper-words.ts";

export interface PrintChoice {
  readonly paper: PaperName;
  readonly orientation: Orientation;
  readonly ratio: number;
  readonly mostSheets: number;
  readonly cardsPerPage: 2 | 4;
  readonly stakes: LabelChoice;
  readonly packets: LabelChoice;
}

type Progress = (done: number, total: number) => void;

/** Parts of which there is something to print. */
export function printableParts(plan: Plan, layout: Layout): readonly PrintId[] {
  return printParts.map(({ id }) => id).filter((id) => printHindrance(id, plan, layout) === null);
}

/** Pages of the parts as pictures, with their remarks. */
export function layOut(
  parts: readonly PrintId[],
  settings: PrintChoice,
  onProgress: Progress,
  signal: AbortSignal,
): Promise<PaperMade | null> {
  const job: PaperJob = { what: "print", parts, settings, wants: "pages" };
  return askPaper(job, { followsReading: true, onProgress, signal });
}

/** One PDF of all plain paper, and one for each sort of labels; the names of what was downloaded. */
export async function savePrint(
  parts: readonly PrintId[],
  settings: PrintChoice,
  onProgress: Progress,
  signal: AbortSignal,
): Promise<readonly string[] | null> {
  const wants = wantedPdfs(parts, settings);
  const made = await askPaper(
    { what: "print", parts, settings, wants },
    { followsReading: true, onProgress, signal },
  );
  return made && downloadMade(made);
}

function wantedPdfs(parts: readonly PrintId[], { paper }: PrintChoice): readonly WantedPdf[] {
  const { plan, layout } = readNow();
  const chosen = printParts.filter(({ id }) => parts.includes(id));
  const plain = chosen.filter(({ labels }) => labels === undefined).map(({ id }) => id);
  const isMapAlone = plain.length === 1 && plain[0] === "map";
  const sheets: readonly WantedPdf[] =
    plain.length === 0
      ? []
      : [
          {
            name: isMapAlone
              ? plotMapFileName(plan, layout, paper)
              : printFileName(plan, layout, paperFile(paper)),
            title: isMapAlone ? plotMapPdf : seasonPdf,
            ids: plain,
          },
        ];
  const labels = chosen.filter((part) => part.labels !== undefined);
  return [
    ...sheets,
    ...labels.map(({ id, title }) => ({
      name: printFileName(plan, layout, id === "shelf" ? "shelf packets" : id),
      title,
      ids: [id],
    })),
  ];
}
