/** Starts a proof on its own thread and brings its answer back. */
import type { ProveAnswer, ProveRequest } from "./prove-worker.ts";

export interface ProveListener {
  readonly onAnswer: (answer: ProveAnswer) => void;
  readonly onFault: (reason: string) => void;
}

/** Returns what ends it without an answer. */
export function startProving(request: ProveRequest, listener: ProveListener): () => void {
  const worker = new Worker(new URL("./prove-worker.ts", import.meta.url), { type: "module" });
  worker.addEventListener("message", ({ data }: MessageEvent<ProveAnswer>) => {
    worker.terminate();
    listener.onAnswer(data);
  });
  worker.addEventListener("error", ({ message }) => {
    worker.terminate();
    listener.onFault(message || "The proof could not be started.");
  });
  worker.postMessage(request);
  return () => worker.terminate();
}
