/** One run of clearing after another, as the panel goes through them; the first begins at once. */
import { useCallback, useEffect, useRef, useState } from "react";
import { startClearing } from "../../store/threads/clear.ts";
import type { ClearAnswer, ClearRequest } from "../../store/threads/clear-worker.ts";
import { COULD_NOT_START } from "./clearing-words.ts";

export type ClearingStage =
  | { readonly kind: "running"; readonly left: number | null }
  | { readonly kind: "done"; readonly answer: ClearAnswer; readonly request: ClearRequest }
  | { readonly kind: "failed"; readonly reason: string };

/** @param first what is looked for when the panel opens */
export function useClearing(first: () => ClearRequest) {
  const cancel = useRef<(() => void) | null>(null);
  const begin = useRef(first);
  const [stage, setStage] = useState<ClearingStage>({ kind: "running", left: null });
  const start = useCallback((request: ClearRequest) => {
    cancel.current?.();
    setStage({ kind: "running", left: null });
    cancel.current = startClearing(request, {
      onProgress: ({ left }) => setStage({ kind: "running", left }),
      onAnswer: (answer) => setStage({ kind: "done", answer, request }),
      onFault: (reason) => setStage({ kind: "failed", reason: reason || COULD_NOT_START }),
    });
  }, []);
  useEffect(() => {
    start(begin.current());
    return () => cancel.current?.();
  }, [start]);
  return { stage, start };
}
