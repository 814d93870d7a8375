import { useEffect, useState } from "react";
import type { PrintId } from "../../core/files/print-list.ts";
import type { PaperMade } from "../../store/threads/paper-job.ts";
import type { Making } from "../form/use-making.ts";
import { useKept } from "../state/plan-actions.ts";
import { type PrintChoice, layOut } from "./print-choice.ts";

/** Of a plan larger than this the pages are laid out when asked for, not at once. */
const MOST_PLANTINGS = 400;

export interface LaidOut {
  readonly state: Making<PaperMade>;
  /** Lays them out of a large plan; null where they come by themselves. */
  readonly ask: (() => void) | null;
  readonly stop: () => void;
}

/**
 * The pages of all that can be printed, laid out anew whenever a choice changes; a run that is no
 * longer wanted is ended. @param parts null: nothing is laid out @param of what they are made besides: other words, other pages
 */
export function usePages(
  parts: readonly PrintId[] | null,
  choice: PrintChoice,
  of: string,
): LaidOut {
  const { layout } = useKept();
  const isLarge = layout.plantings.length > MOST_PLANTINGS;
  const [isAsked, setAsked] = useState(!isLarge);
  const [state, setState] = useState<Making<PaperMade>>({ kind: "idle" });
  useEffect(() => {
    if (parts === null || !isAsked || of === "") return;
    const controller = new AbortController();
    const { signal } = controller;
    const say = (next: Making<PaperMade>) => {
      if (!signal.aborted) setState(next);
    };
    say({ kind: "making", done: 0, total: 0 });
    const lay = async () => {
      try {
        const onProgress = (done: number, total: number) => say({ kind: "making", done, total });
        const made = await layOut(parts, choice, onProgress, signal);
        if (made) say({ kind: "made", made });
      } catch (fault) {
        say({ kind: "failed", reason: fault instanceof Error ? fault.message : String(fault) });
      }
    };
    void lay();
    return () => controller.abort();
  }, [parts, choice, isAsked, of]);
  return {
    state: isAsked && parts !== null ? state : { kind: "idle" },
    ask: isAsked ? null : () => setAsked(true),
    stop: () => setAsked(false),
  };
}
