/** Starts the lay-out of the years on its own thread and brings its answers back. */
import { type WorkerListener, askWorker } from "./ask-worker.ts";
import type { YearsAnswered, YearsProgress, YearsRequest } from "./years-worker.ts";

/** Returns what ends it without a further answer. */
export function startYears(
  request: YearsRequest,
  listener: WorkerListener<YearsAnswered, YearsProgress>,
): () => void {
  const worker = new Worker(new URL("./years-worker.ts", import.meta.url), { type: "module" });
  return askWorker<YearsAnswered, YearsProgress>(worker, request, listener).cancel;
}
