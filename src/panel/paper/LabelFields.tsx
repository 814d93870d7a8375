import { useState } from "react";
import { measuredSize } from "../../core/labels/label-measures.ts";
import type { LabelChoice, PrinterOffset } from "../../core/labels/label-pages.ts";
import { labelSizes } from "../../core/labels/label-sizes.ts";
import type { LabelUse } from "../../core/labels/label-facts.ts";
import { offsetProblem, storedMeasures, storedOffset } from "../../store/window/label-memory.ts";
import { CheckField, ChoiceField } from "../form/ChoiceField.tsx";
import { ValueField } from "../form/NumberField.tsx";
import { TextField } from "../form/TextField.tsx";
import { LabelSheetPicture } from "./LabelSheetPicture.tsx";
import { MeasuredFields } from "./MeasuredFields.tsx";
import { labelWords } from "./label-words.ts";
import "./paper.css";

const MEASURED = "measured";
const MOST_TREATMENT = 120;

interface LabelFieldsProps {
  readonly use: LabelUse;
  readonly choice: LabelChoice;
  readonly onSet: (choice: LabelChoice) => void;
}

/** Which labels are printed on, from which one on, and what else stands on them. */
export function LabelFields({ use, choice, onSet }: LabelFieldsProps) {
  const { size } = choice;
  return (
    <>
      <ChoiceField
        label={labelWords.sheet}
        value={size.id}
        choices={[
          ...labelSizes.map(({ id, title }) => ({ value: id, label: title })),
          { value: MEASURED, label: labelWords.measured },
        ]}
        onPick={(id) => {
          const own = labelSizes.find((each) => each.id === id);
          onSet({ ...choice, size: own ?? measuredSize(storedMeasures.load()) });
        }}
        hint={labelWords.sheetHint}
      />
      {size.id === MEASURED && (
        <MeasuredFields size={size} onSet={(next) => onSet({ ...choice, size: next })} />
      )}
      <LabelSheetPicture size={size} startAt={choice.startAt} />
      <TextField
        label={labelWords.start}
        value={String(choice.startAt)}
        isNumeric
        onApply={(text) => {
          if (!/^[1-9]\d{0,3}$/.test(text.trim())) return labelWords.startProblem;
          onSet({ ...choice, startAt: Number(text) });
          return null;
        }}
      />
      <OffsetFields choice={choice} onSet={onSet} />
      {use === "packets" && (
        <TextField
          label={labelWords.treated}
          value={choice.treatment}
          onApply={(text) => {
            onSet({ ...choice, treatment: text.trim().slice(0, MOST_TREATMENT) });
            return null;
          }}
        />
      )}
      <CheckField
        label={labelWords.code}
        isOn={choice.hasQr}
        onSet={(hasQr) => onSet({ ...choice, hasQr })}
      />
    </>
  );
}

/** Belongs to the printer of this device, and is remembered there. */
function OffsetFields({ choice, onSet }: Omit<LabelFieldsProps, "use">) {
  const [offset, setOffset] = useState(() => choice.offset ?? storedOffset.load());
  const apply = (change: Partial<PrinterOffset>) => {
    const next = { ...offset, ...change };
    const problem = offsetProblem(next.right) ?? offsetProblem(next.down);
    if (problem !== null) return problem;
    storedOffset.save(next);
    setOffset(next);
    onSet({ ...choice, offset: next });
    return null;
  };
  return (
    <>
      <ValueField
        label={labelWords.right}
        value={offset.right}
        onApply={(mm = 0) => apply({ right: mm })}
      />
      <ValueField
        label={labelWords.down}
        value={offset.down}
        onApply={(mm = 0) => apply({ down: mm })}
        hint={labelWords.offsetHint}
      />
    </>
  );
}
