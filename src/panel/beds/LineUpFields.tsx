import { useState } from "react";
import type { AlignFrame } from "../../core/edits/align.ts";
import { alignWords } from "../commands/align-words.ts";
import { ChoiceField } from "../form/ChoiceField.tsx";
import { withLoaded } from "../commands/command.ts";
import { LengthField } from "../form/LengthField.tsx";
import "./beds.css";

const frames: readonly { readonly value: AlignFrame; readonly label: string }[] = [
  { value: "first", label: "the first selected" },
  { value: "sheet", label: "the sheet" },
];

const loadActions = () => import("../commands/object-actions.ts");

/** Lining up and spacing what is selected. */
export function LineUpFields() {
  const [frame, setFrame] = useState<AlignFrame>("first");
  const [gapM, setGap] = useState<number | undefined>(undefined);
  const [reason, setReason] = useState<string | null>(null);
  const spread = (axis: "across" | "along") =>
    void withLoaded(loadActions, (actions) => {
      setReason(actions.spreadSelection(axis, frame, gapM ?? null));
    });
  return (
    <div className="fields">
      <ChoiceField
        label="Line up along"
        value={frame}
        choices={frames}
        onPick={setFrame}
        hint="The first stays where it is; by the sheet, the outermost sides count."
      />
      <p className="button-grid" role="group" aria-label="Line up">
        {alignWords.map(({ side, words }) => (
          <button
            key={side}
            type="button"
            onClick={() =>
              void withLoaded(loadActions, (actions) => actions.alignSelection(side, frame))
            }
          >
            {words.charAt(0).toUpperCase()}
            {words.slice(1)}
          </button>
        ))}
      </p>
      <LengthField
        label="Gap"
        value={gapM}
        placeholder="equal"
        hint="From edge to edge. Left empty, the outermost two stay and the gaps between become equal."
        onClear={() => setGap(undefined)}
        onApply={(metres) => {
          setGap(metres);
          return null;
        }}
      />
      <p className="button-grid" role="group" aria-label="Space">
        <button type="button" onClick={() => spread("across")}>
          Space across
        </button>
        <button type="button" onClick={() => spread("along")}>
          Space along
        </button>
      </p>
      {reason !== null && (
        <p className="field-reason" role="alert">
          {reason}
        </p>
      )}
    </div>
  );
}
