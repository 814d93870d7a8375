/** Starts the arranger on its own thread and brings its progress and answer back. */
import type { ArrangeAnswer, ArrangeProgress, ArrangeRequest } from "./arrange-worker.ts";

export interface ArrangeListener {
  readonly onProgress: (progress: ArrangeProgress) => void;
  readonly onAnswer: (answer: ArrangeAnswer) => void;
  readonly onFault: (reason: string) => void;
}

export interface ArrangeRun {
  /** Ends the search early; the answer is the best so far. */
  readonly stop: () => void;
  /** Ends it without an answer. */
  readonly cancel: () => void;
}

export function startArranging(request: ArrangeRequest, listener: ArrangeListener): ArrangeRun {
  const worker = new Worker(new URL("./arrange-worker.ts", import.meta.url), { type: "module" });
  worker.addEventListener("message", ({ data }: MessageEvent<ArrangeProgress | ArrangeAnswer>) => {
    if (data.kind === "progress") {
      listener.onProgress(data);
      return;
    }
    worker.terminate();
    listener.onAnswer(data);
  });
  worker.addEventListener("error", ({ message }) => {
    worker.terminate();
    listener.onFault(message || "The arranger could not be started.");
  });
  worker.postMessage(request);
  return {
    stop: () => worker.postMessage("stop"),
    cancel: () => worker.terminate(),
  };
}
