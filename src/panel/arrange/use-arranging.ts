/** One run of the arranger as a dialog goes through it. */
import { useCallback, useEffect, useRef, useState } from "react";
import { type ArrangeRun, startArranging } from "../../store/threads/arrange.ts";
import type {
  ArrangeAnswer,
  ArrangeProgress,
  ArrangeRequest,
} from "../../store/threads/arrange-worker.ts";

export type ArrangeStage =
  | { readonly kind: "ready" }
  | { readonly kind: "running"; readonly progress: ArrangeProgress | null }
  | { readonly kind: "answered"; readonly answer: ArrangeAnswer }
  | { readonly kind: "failed"; readonly reason: string };

export interface Arranging {
  readonly stage: ArrangeStage;
  readonly start: (request: ArrangeRequest) => void;
  /** Ends the search with the best so far. */
  readonly stop: () => void;
  /** Forgets run and answer. */
  readonly reset: () => void;
}

export function useArranging(): Arranging {
  const run = useRef<ArrangeRun | null>(null);
  const [stage, setStage] = useState<ArrangeStage>({ kind: "ready" });
  useEffect(() => () => run.current?.cancel(), []);
  const start = useCallback((request: ArrangeRequest) => {
    run.current?.cancel();
    setStage({ kind: "running", progress: null });
    run.current = startArranging(request, {
      onProgress: (progress) => setStage({ kind: "running", progress }),
      onAnswer: (answer) => setStage({ kind: "answered", answer }),
      onFault: (reason) => setStage({ kind: "failed", reason }),
    });
  }, []);
  const stop = useCallback(() => run.current?.stop(), []);
  const reset = useCallback(() => {
    run.current?.cancel();
    run.current = null;
    setStage({ kind: "ready" });
  }, []);
  return { stage, start, stop, reset };
}
