import { useState } from "react";
import { ratioText, standardRatios } from "../../core/page/drawing-ratio.ts";
import {
  type Orientation,
  type PaperName,
  orientations,
  paperNames,
} from "../../core/page/paper.ts";
import { ChoiceField } from "../form/ChoiceField.tsx";
import { readRatio } from "../form/number-text.ts";
import { TextField } from "../form/TextField.tsx";
import { paperWords } from "./paper-words.ts";

interface PaperFieldsProps {
  readonly paper: PaperName;
  readonly orientation: Orientation;
  readonly onPaper: (paper: PaperName) => void;
  readonly onOrientation: (orientation: Orientation) => void;
}

/** The sheet of paper, and which way it lies. */
export function PaperFields({ paper, orientation, onPaper, onOrientation }: PaperFieldsProps) {
  return (
    <>
      <ChoiceField
        label={paperWords.paper}
        value={paper}
        choices={paperNames.map((name) => ({ value: name, label: name }))}
        onPick={onPaper}
      />
      <ChoiceField
        label={paperWords.lying}
        value={orientation}
        choices={orientations.map((name) => ({ value: name, label: name }))}
        onPick={onOrientation}
      />
    </>
  );
}

interface RatioFieldsProps {
  readonly suggested: number;
  /** Null: as suggested. */
  readonly own: number | null;
  readonly unit: "m" | "ft";
  readonly onPick: (ratio: number | null) => void;
  readonly hint: string;
}

const CUSTOM = "custom";
const SUGGESTED = "suggested";

/** Ground for paper: as suggested, a standard ratio, or any other. */
export function RatioFields({ suggested, own, unit, onPick, hint }: RatioFieldsProps) {
  const [isCustom, setCustom] = useState(false);
  const choices = [
    { value: SUGGESTED, label: paperWords.suggested(ratioText(suggested, unit)) },
    ...standardRatios(unit).map((ratio) => ({
      value: String(ratio),
      label: ratioText(ratio, unit),
    })),
    { value: CUSTOM, label: paperWords.another },
  ];
  const pick = (value: string) => {
    setCustom(value === CUSTOM);
    if (value === CUSTOM) onPick(own ?? suggested);
    else onPick(value === SUGGESTED ? null : Number(value));
  };
  const standard = own === null ? SUGGESTED : String(own);
  return (
    <>
      <ChoiceField
        label={paperWords.ratio}
        value={isCustom ? CUSTOM : standard}
        choices={choices}
        onPick={pick}
        hint={hint}
      />
      {isCustom && (
        <TextField
          label={paperWords.oneTo}
          value={ratioText(own ?? suggested, "m")}
          onApply={(text) => {
            const read = readRatio(text);
            if (!read.ok) return read.reason;
            onPick(read.value);
            return null;
          }}
        />
      )}
    </>
  );
}
