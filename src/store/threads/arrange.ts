/** Starts the arranger on its own thread and brings its progress and answer back. */
import type { ArrangeAnswer, ArrangeProgress, ArrangeRequest } from "./arrange-worker.ts";
import { type WorkerListener, askWorker } from "./ask-worker.ts";
import * as words from "./words.ts";

export type ArrangeListener = WorkerListener<ArrangeAnswer, ArrangeProgress>;

export interface ArrangeRun {
  /** Ends the search early; the answer is the best so far. */
  readonly stop: () => void;
  /** Ends it without an answer. */
  readonly cancel: () => void;
}

export function startArranging(request: ArrangeRequest, listener: ArrangeListener): ArrangeRun {
  const worker = new Worker(new URL("./arrange-worker.ts", import.meta.url), { type: "module" });
  const { say, cancel } = askWorker<ArrangeAnswer, ArrangeProgress>(worker, request, {
    ...listener,
    onFault: (reason) => listener.onFault(reason || words.arrangerNotStarted),
  });
  return { stop: () => say("stop"), cancel };
}
