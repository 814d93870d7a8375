import { useState } from "react";
import { type PaperName, paperNames, usualPaper } from "../../core/page/paper.ts";
import type { CheckedLayout } from "../../core/checks/checked-layout.ts";
import { useMaking } from "../form/use-making.ts";
import { makeCompare } from "./make-compare.ts";
import * as texts from "./words.ts";

interface ComparePrintProps {
  /** The others are held against the first. */
  readonly compared: readonly CheckedLayout[];
  readonly isOverlaid: boolean;
}

/** What is compared, as pages to print: how it is drawn now, on a paper to choose. */
export function ComparePrint({ compared, isOverlaid }: ComparePrintProps) {
  const [paper, setPaper] = useState<PaperName | null>(null);
  const { state, start, cancel } = useMaking<string>();
  const units = compared[0]?.plan.units ?? "m";
  return (
    <>
      <label>
        {texts.paper}{" "}
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
      {state.kind === "making" ? (
        <button type="button" className="quiet" onClick={cancel}>
          {texts.cancelPrinting}
        </button>
      ) : (
        <button
          type="button"
          className="quiet"
          disabled={compared.length < 2}
          onClick={() =>
            void start((onProgress, signal) =>
              makeCompare({ compared, isOverlaid, paper }, onProgress, signal),
            )
          }
        >
          {texts.saveToPrintPdf}
        </button>
      )}
      <span role="status">
        {state.kind === "made" && state.made}
        {state.kind === "failed" && texts.nothingWasPrinted(state.reason)}
        {state.kind === "making" && (
          <progress
            aria-label={texts.pagesMade}
            max={1}
            value={state.total === 0 ? undefined : state.done / state.total}
          />
        )}
      </span>
    </>
  );
}
