/** Starts a proof on its own thread and brings its answer back. */
import { type WorkerListener, askWorker } from "./ask-worker.ts";
import type { ProveAnswer, ProveRequest } from "./prove-worker.ts";
import * as words from "./words.ts";

/** Returns what ends it without an answer. */
export function startProving(
  request: ProveRequest,
  { onAnswer, onFault }: WorkerListener<ProveAnswer>,
): () => void {
  const worker = new Worker(new URL("./prove-worker.ts", import.meta.url), { type: "module" });
  return askWorker<ProveAnswer>(worker, request, {
    onAnswer,
    onFault: (reason) => onFault(reason || words.proofNotStarted),
  }).cancel;
}
