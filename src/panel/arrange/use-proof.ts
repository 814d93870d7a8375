/** One proof that a dialog asks for. */
import { useCallback, useEffect, useRef, useState } from "react";
import { startProving } from "../../store/threads/prove.ts";
import type { ProveAnswer, ProveRequest } from "../../store/threads/prove-worker.ts";

export type ProofStage =
  | { readonly kind: "ready" }
  | { readonly kind: "running" }
  | { readonly kind: "answered"; readonly answer: ProveAnswer }
  | { readonly kind: "failed"; readonly reason: string };

export interface Proving {
  readonly stage: ProofStage;
  readonly start: (request: ProveRequest) => void;
  /** Ends it without an answer. */
  readonly stop: () => void;
}

export function useProof(): Proving {
  const end = useRef<(() => void) | null>(null);
  const [stage, setStage] = useState<ProofStage>({ kind: "ready" });
  useEffect(() => () => end.current?.(), []);
  const start = useCallback((request: ProveRequest) => {
    end.current?.();
    setStage({ kind: "running" });
    end.current = startProving(request, {
      onAnswer: (answer) => setStage({ kind: "answered", answer }),
      onFault: (reason) => setStage({ kind: "failed", reason }),
    });
  }, []);
  const stop = useCallback(() => {
    end.current?.();
    setStage({ kind: "ready" });
  }, []);
  return { stage, start, stop };
}
