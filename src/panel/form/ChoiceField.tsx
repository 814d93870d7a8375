import { type ReactNode, memo, useState } from "react";
import { Field, useFieldParts } from "./Field.tsx";
import type { Choice } from "../state/plan-words.ts";
import * as texts from "./field-words.ts";

interface ChoiceFieldProps<Value extends string> {
  readonly label: string;
  /** Null where several selected objects differ. */
  readonly value: Value | null;
  readonly choices: readonly Choice<Value>[];
  readonly onPick: (value: Value) => void;
  readonly hint?: ReactNode;
}

/** One of a few values. */
export function ChoiceField<Value extends string>(props: ChoiceFieldProps<Value>) {
  const { label, value, choices, onPick, hint } = props;
  const parts = useFieldParts(hint);
  const [isUsed, setUsed] = useState(false);
  const isFolded = !isUsed && choices.length > MANY_CHOICES;
  const use = () => setUsed(true);
  return (
    <Field label={label} parts={parts}>
      <select
        {...parts.control}
        onFocus={use}
        onPointerDown={use}
        value={value ?? ""}
        onChange={(event) => {
          const picked = choices.find((choice) => choice.value === event.target.value);
          if (picked) onPick(picked.value);
        }}
      >
        {value === null && <option value="">{texts.differs}</option>}
        <Options choices={isFolded ? choices.filter((each) => each.value === value) : choices} />
      </select>
    </Field>
  );
}

/** Of more than these only the one picked is there until the field is used: laying them all out takes long. */
const MANY_CHOICES = 200;

interface OptionsProps {
  readonly choices: readonly Choice<string>[];
}

/** Some lists of varieties are long: made anew only when they change. */
const Options = memo(function Options({ choices }: OptionsProps) {
  return choices.map(({ value, label }) => (
    <option key={value} value={value}>
      {label}
    </option>
  ));
});

interface CheckFieldProps {
  readonly label: string;
  readonly isOn: boolean;
  readonly onSet: (isOn: boolean) => void;
}

export function CheckField({ label, isOn, onSet }: CheckFieldProps) {
  return (
    <label className="check-field">
      <input type="checkbox" checked={isOn} onChange={(event) => onSet(event.target.checked)} />
      {label}
    </label>
  );
}
