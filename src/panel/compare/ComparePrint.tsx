import { useEffect, useRef, useState } from "react";
import { type PaperName, paperNames, usualPaper } from "../../core/page/paper.ts";
import type { CheckedLayout } from "../../core/checks/checked-layout.ts";
import { makeCompare } from "./make-compare.ts";

interface ComparePrintProps {
  /** The others are held against the first. */
  readonly compared: readonly CheckedLayout[];
  readonly isOverlaid: boolean;
}

type Stage =
  | { readonly kind: "idle" }
  | { readonly kind: "making"; readonly done: number; readonly total: number }
  | { readonly kind: "said"; readonly words: string };

/** What is compared, as pages to print: how it is drawn now, on a paper to choose. */
export function ComparePrint({ compared, isOverlaid }: ComparePrintProps) {
  const [paper, setPaper] = useState<PaperName | null>(null);
  const { stage, start, cancel } = useMaking();
  const units = compared[0]?.plan.units ?? "m";
  return (
    <>
      <label>
        Paper{" "}
        <select
          value={paper ?? usualPaper(units)}
          onChange={(event) => {
            setPaper(paperNames.find((name) => name === event.target.value) ?? null);
          }}
        >
          {paperNames.map((name) => (
            <option key={name} value={name}>
              {name}
            </option>
          ))}
        </select>
      </label>
      {stage.kind === "making" ? (
        <button type="button" className="quiet" onClick={cancel}>
          Cancel printing
        </button>
      ) : (
        <button
          type="button"
          className="quiet"
          disabled={compared.length < 2}
          onClick={() => void start({ compared, isOverlaid, paper })}
        >
          Save to print (PDF)
        </button>
      )}
      <span role="status">
        {stage.kind === "said" && stage.words}
        {stage.kind === "making" && (
          <progress
            aria-label="Pages made"
            max={1}
            value={stage.total === 0 ? undefined : stage.done / stage.total}
          />
        )}
      </span>
    </>
  );
}

/** One file at a time; leaving the view stops it. */
function useMaking() {
  const [stage, setStage] = useState<Stage>({ kind: "idle" });
  const running = useRef<AbortController | null>(null);
  useEffect(() => () => running.current?.abort(), []);
  const start = async (choice: Parameters<typeof makeCompare>[0]) => {
    const controller = new AbortController();
    running.current = controller;
    setStage({ kind: "making", done: 0, total: 0 });
    try {
      const words = await makeCompare(
        choice,
        (done, total) => {
          if (!controller.signal.aborted) setStage({ kind: "making", done, total });
        },
        controller.signal,
      );
      if (words !== null) setStage({ kind: "said", words });
    } catch (error) {
      if (controller.signal.aborted) return;
      const reason = error instanceof Error ? error.message : String(error);
      setStage({ kind: "said", words: `Nothing was printed: ${reason}` });
    }
  };
  const cancel = () => {
    running.current?.abort();
    setStage({ kind: "idle" });
  };
  return { stage, start, cancel };
}
