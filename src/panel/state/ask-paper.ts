/** Asks the thread that makes paper for something of the kept plan, as it is read at the moment. */
import { keptFace } from "../../store/files/extra-face.ts";
import type { PaperJob, PaperMade } from "../../store/threads/paper-job.ts";
import { makePaper } from "../../store/threads/paper.ts";
import { planNow } from "./plan-actions.ts";

type Progress = (done: number, total: number) => void;

interface PaperAsked {
  /** Goes by the field record where the window does; else always as planned. */
  readonly followsReading: boolean;
  readonly onProgress?: Progress;
  readonly signal?: AbortSignal;
}

/** What was made, not downloaded yet; null when it was stopped. */
export async function askPaper(
  job: PaperJob,
  { followsReading, onProgress = () => undefined, signal }: PaperAsked,
): Promise<PaperMade | null> {
  const { kept, grown } = planNow();
  const now = new Date();
  const face = await keptFace();
  return makePaper(
    {
      plan: kept.plan,
      layoutId: kept.layout.id,
      grownOn: (followsReading ? grown?.grownOn : undefined) ?? null,
      printedAt: printedAt(now),
      stamp: now.toISOString().replace(/[-:]|\.\d+/g, ""),
      extraFace: face?.bytes ?? null,
      job,
    },
    onProgress,
    signal ?? new AbortController().signal,
  );
}

/** Local date and time as `2027-02-14 10:02`. */
function printedAt(now: Date): string {
  const two = (value: number) => String(value).padStart(2, "0");
  const day = `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
  return `${day} ${two(now.getHours())}:${two(now.getMinutes())}`;
}
