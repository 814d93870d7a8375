/** Starts the thread that makes paper and brings its answer back. */
import { askWorker } from "./ask-worker.ts";
import type { PaperAnswer, PaperMade, PaperProgress, PaperRequest } from "./paper-job.ts";
import * as words from "./words.ts";

/**
 * What was made; null when the signal told it to stop, which ends the thread at once. Throws with
 * the reason when it cannot be made.
 */
export function makePaper(
  request: PaperRequest,
  onProgress: (done: number, total: number) => void,
  signal: AbortSignal,
): Promise<PaperMade | null> {
  return new Promise((resolve, reject) => {
    if (signal.aborted) {
      resolve(null);
      return;
    }
    const worker = new Worker(new URL("./paper-worker.ts", import.meta.url), { type: "module" });
    const run = askWorker<PaperAnswer, PaperProgress>(worker, request, {
      onProgress: ({ done, total }) => onProgress(done, total),
      onAnswer: (answer) => {
        if (answer.kind === "failed") reject(new Error(answer.reason));
        else resolve(answer);
      },
      onFault: (reason) => reject(new Error(reason || words.printerNotStarted)),
    });
    signal.addEventListener("abort", () => {
      run.cancel();
      resolve(null);
    });
  });
}
