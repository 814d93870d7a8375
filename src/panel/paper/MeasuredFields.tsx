import { useState } from "react";
import {
  type MeasureName,
  faultText,
  measureFaults,
  measureList,
  measureNames,
  measuredSize,
  measuresOf,
} from "../../core/labels/label-measures.ts";
import { type LabelSize, labelFolds } from "../../core/labels/label-sizes.ts";
import { storedMeasures } from "../../store/window/label-memory.ts";
import { ChoiceField } from "../form/ChoiceField.tsx";
import { ValueField } from "../form/NumberField.tsx";
import { foldWords, labelWords } from "./label-words.ts";

interface MeasuredFieldsProps {
  readonly size: LabelSize;
  readonly onSet: (size: LabelSize) => void;
}

/** A bought sheet, one field for each measure; what does not go together is named by its field. */
export function MeasuredFields({ size, onSet }: MeasuredFieldsProps) {
  const [measures, setMeasures] = useState(() => measuresOf(size));
  const faults = measureFaults(measures);
  const set = (change: Partial<typeof measures>) => {
    const next = { ...measures, ...change };
    setMeasures(next);
    // One measure after the other is typed: for a while they may not go together.
    if (measureFaults(next).length === 0) storedMeasures.save(next);
    onSet(measuredSize(next));
    return null;
  };
  const field = (name: MeasureName) => (
    <ValueField
      key={name}
      label={measureNames[name]}
      value={measures[name]}
      onApply={(value) => (value === undefined ? labelWords.missing : set({ [name]: value }))}
    />
  );
  return (
    <fieldset className="fields">
      <legend>{labelWords.measures}</legend>
      {measureList.map(field)}
      <ChoiceField
        label={labelWords.fold}
        value={measures.fold}
        choices={labelFolds.map((value) => ({ value, label: foldWords[value] }))}
        onPick={(fold) => set({ fold })}
      />
      {faults.length > 0 && (
        <ul className="field-reason" role="alert">
          {faults.map((fault) => (
            <li key={`${fault.field} ${fault.words}`}>{faultText(fault)}</li>
          ))}
        </ul>
      )}
    </fieldset>
  );
}
