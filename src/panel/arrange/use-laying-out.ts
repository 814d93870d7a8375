/** One run of laying out the seed list, begun when its dialog opens. */
import { useEffect, useState } from "react";
import { startLayingOut } from "../../store/threads/lay-out.ts";
import type { LayOutAnswer, LayOutRequest } from "../../store/threads/lay-out-worker.ts";
import { COULD_NOT_START } from "./lay-out-words.ts";

export type LayingOutStage =
  | { readonly kind: "running"; readonly share: number }
  | { readonly kind: "done"; readonly answer: LayOutAnswer }
  | { readonly kind: "failed"; readonly reason: string };

/** @param request the same object as long as the same is asked for */
export function useLayingOut(request: LayOutRequest): LayingOutStage {
  const [stage, setStage] = useState<LayingOutStage>({ kind: "running", share: 0 });
  useEffect(
    () =>
      startLayingOut(request, {
        onProgress: ({ share }) => setStage({ kind: "running", share }),
        onAnswer: (answer) => setStage({ kind: "done", answer }),
        onFault: (reason) => setStage({ kind: "failed", reason: reason || COULD_NOT_START }),
      }),
    [request],
  );
  return stage;
}
