import { useState } from "react";
import type { AlignFrame } from "../../core/edits/align.ts";
import { alignLabels } from "../commands/align-step-words.ts";
import { alignSides } from "../commands/align-words.ts";
import { ChoiceField } from "../form/ChoiceField.tsx";
import { withLoaded } from "../commands/command.ts";
import { LengthField } from "../form/LengthField.tsx";
import * as texts from "./words.ts";
import "./beds.css";

const frames: readonly { readonly value: AlignFrame; readonly label: string }[] = [
  { value: "first", label: texts.alongFirst },
  { value: "sheet", label: texts.alongSheet },
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
        label={texts.lineUpAlong}
        value={frame}
        choices={frames}
        onPick={setFrame}
        hint={texts.lineUpAlongHint}
      />
      <p className="button-grid" role="group" aria-label={texts.lineUp}>
        {alignSides.map(({ side }) => (
          <button
            key={side}
            type="button"
            onClick={() =>
              void withLoaded(loadActions, (actions) => actions.alignSelection(side, frame))
            }
          >
            {alignLabels[side]}
          </button>
        ))}
      </p>
      <LengthField
        label={texts.gap}
        value={gapM}
        placeholder={texts.equal}
        hint={texts.gapHint}
        onClear={() => setGap(undefined)}
        onApply={(metres) => {
          setGap(metres);
          return null;
        }}
      />
      <p className="button-grid" role="group" aria-label={texts.space}>
        <button type="button" onClick={() => spread("across")}>
          {texts.spaceAcross}
        </button>
        <button type="button" onClick={() => spread("along")}>
          {texts.spaceAlong}
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
