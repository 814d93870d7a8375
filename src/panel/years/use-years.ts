/** One lay-out of the years as the page goes through it. */
import { useCallback, useEffect, useRef, useState } from "react";
import type { Years } from "../../core/renewal/years-problem.ts";
import { startYears } from "../../store/threads/years.ts";
import type { YearsAnswered, YearsRequest } from "../../store/threads/years-worker.ts";

export type YearsStage =
  | { readonly kind: "ready" }
  /** `first`: the answer at once, while the solver works. */
  | { readonly kind: "running"; readonly first: Years | null }
  | { readonly kind: "answered"; readonly answer: YearsAnswered }
  | { readonly kind: "failed"; readonly reason: string };

export interface LayingYears {
  readonly stage: YearsStage;
  readonly start: (request: YearsRequest, onAnswer: (years: Years) => void) => void;
  /** Ends it without an answer. */
  readonly stop: () => void;
}

export function useYears(): LayingYears {
  const end = useRef<(() => void) | null>(null);
  const [stage, setStage] = useState<YearsStage>({ kind: "ready" });
  useEffect(() => () => end.current?.(), []);
  const start = useCallback((request: YearsRequest, onAnswer: (years: Years) => void) => {
    end.current?.();
    setStage({ kind: "running", first: null });
    end.current = startYears(request, {
      onProgress: ({ years }) => setStage({ kind: "running", first: years }),
      onAnswer: (answer) => {
        onAnswer(answer.years);
        setStage({ kind: "answered", answer });
      },
      onFault: (reason) => setStage({ kind: "failed", reason }),
    });
  }, []);
  const stop = useCallback(() => {
    end.current?.();
    setStage({ kind: "ready" });
  }, []);
  return { stage, start, stop };
}
