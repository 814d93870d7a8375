/** Starts laying out the seed list on its own thread and brings progress and answer back. */
import { type WorkerListener, askWorker } from "./ask-worker.ts";
import type { LayOutAnswer, LayOutProgress, LayOutRequest } from "./lay-out-worker.ts";

/** Returns what ends it without an answer. */
export function startLayingOut(
  request: LayOutRequest,
  listener: WorkerListener<LayOutAnswer, LayOutProgress>,
): () => void {
  const worker = new Worker(new URL("./lay-out-worker.ts", import.meta.url), { type: "module" });
  return askWorker<LayOutAnswer, LayOutProgress>(worker, request, listener).cancel;
}
