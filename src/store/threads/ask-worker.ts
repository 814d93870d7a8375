/** One request to a thread of its own: progress while it works, one answer, or why there is none. */

export interface WorkerListener<Answer, Progress = never> {
  readonly onProgress?: (progress: Progress) => void;
  readonly onAnswer: (answer: Answer) => void;
  /** @param reason of the fault in the thread; empty when the browser gives none */
  readonly onFault: (reason: string) => void;
}

export interface WorkerRun {
  /** Sends a further message, such as to stop with what it has. */
  readonly say: (message: unknown) => void;
  /** Ends it without an answer. */
  readonly cancel: () => void;
}

interface Marked {
  readonly kind: "progress";
}

/**
 * Asks a worker that was just made; it ends with its answer or fault. Messages of the kind
 * `progress` are progress, any other is the answer.
 */
export function askWorker<Answer, Progress extends Marked = never>(
  worker: Worker,
  request: unknown,
  listener: WorkerListener<Answer, Progress>,
): WorkerRun {
  worker.addEventListener("message", ({ data }: MessageEvent<Answer | Progress>) => {
    if (isProgress(data)) {
      listener.onProgress?.(data);
      return;
    }
    worker.terminate();
    listener.onAnswer(data);
  });
  worker.addEventListener("error", ({ message }) => {
    worker.terminate();
    listener.onFault(message);
  });
  worker.postMessage(request);
  return {
    say: (message) => worker.postMessage(message),
    cancel: () => worker.terminate(),
  };
}

function isProgress(data: unknown): data is Marked {
  return typeof data === "object" && data !== null && "kind" in data && data.kind === "progress";
}
