/** Starts clearing a layout on its own thread and brings progress and answer back. */
import { type WorkerListener, askWorker } from "./ask-worker.ts";
import type { ClearAnswer, ClearProgress, ClearRequest } from "./clear-worker.ts";

/** Returns what ends it without an answer. */
export function startClearing(
  request: ClearRequest,
  listener: WorkerListener<ClearAnswer, ClearProgress>,
): () => void {
  const worker = new Worker(new URL("./clear-worker.ts", import.meta.url), { type: "module" });
  return askWorker<ClearAnswer, ClearProgress>(worker, request, listener).cancel;
}
