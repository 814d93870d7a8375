import { useState } from "react";
import { monthName } from "../../core/model/day.ts";
import { placeFaults } from "../../core/model/lot-problems.ts";
import { storagePlace as placeSchema } from "../../core/model/lot-schema.ts";
import type { StoragePlace } from "../../core/model/plan.ts";
import { expectedText } from "../../core/model/read-plan.ts";
import { ChoiceField } from "../form/ChoiceField.tsx";
import { FormProblem } from "../form/Field.tsx";
import { onFormSubmit } from "../form/use-form.ts";
import { NoteField, TextField } from "../form/TextField.tsx";
import { ValueField } from "../form/NumberField.tsx";
import * as texts from "./words.ts";

type Condition = NonNullable<StoragePlace["conditions"]>[number];
/** A condition as it is typed; it may still lack something. */
type TypedCondition = { readonly [Key in keyof Condition]?: Condition[Key] | undefined };

const months = Array.from({ length: 12 }, (_, at) => ({
  value: String(at + 1),
  label: monthName(at + 1),
}));

interface PlaceFormProps {
  readonly place: StoragePlace;
  readonly isNew: boolean;
  readonly onKeep: (place: StoragePlace) => void;
  readonly onLeave: () => void;
}

/** One storage place: its name, and its air through the year. */
export function PlaceForm({ place, isNew, onKeep, onLeave }: PlaceFormProps) {
  const [name, setName] = useState(place.name);
  const [note, setNote] = useState(place.note ?? "");
  const [conditions, setConditions] = useState<readonly TypedCondition[]>(
    place.conditions ?? (isNew ? [{ fromMonth: 1 }] : []),
  );
  const [problem, setProblem] = useState<string | null>(null);
  const set = (at: number, changes: TypedCondition) => {
    setProblem(null);
    setConditions((before) =>
      before.map((each, index) => (index === at ? { ...each, ...changes } : each)),
    );
    return null;
  };
  const keep = () => {
    const typed = wholePlace(place.id, name, note, conditions);
    if (typeof typed === "string") setProblem(typed);
    else onKeep(typed);
  };
  return (
    <form className="fields" noValidate onSubmit={onFormSubmit(keep)}>
      <TextField
        label={texts.name}
        value={name}
        isWide
        placeholder={texts.tinInThePantry}
        onApply={(text) => {
          setName(text.trim());
          setProblem(null);
          return null;
        }}
      />
      {conditions.map((condition, at) => (
        <ConditionFields
          key={at}
          condition={condition}
          isOnly={conditions.length === 1}
          onSet={(changes) => set(at, changes)}
          onRemove={() => setConditions((before) => before.filter((_, index) => index !== at))}
        />
      ))}
      <p>
        <button
          type="button"
          className="act"
          disabled={conditions.length >= 12}
          onClick={() =>
            setConditions((before) => [...before, { fromMonth: before.length === 0 ? 1 : 7 }])
          }
        >
          {conditions.length === 0 ? texts.sayHowWarmDamp : texts.anotherPartYear}
        </button>
      </p>
      <NoteField label={texts.note} value={note} onApply={setNote} />
      <FormProblem problem={problem} />
      <PlaceActions isNew={isNew} onLeave={onLeave} />
    </form>
  );
}

function PlaceActions({ isNew, onLeave }: Pick<PlaceFormProps, "isNew" | "onLeave">) {
  return (
    <p className="dialog-actions">
      <button type="submit" className="primary">
        {isNew ? texts.addThePlace : texts.apply}
      </button>
      <button type="button" onClick={onLeave}>
        {texts.backToThePlaces}
      </button>
    </p>
  );
}

interface ConditionFieldsProps {
  readonly condition: TypedCondition;
  readonly isOnly: boolean;
  readonly onSet: (changes: TypedCondition) => null;
  readonly onRemove: () => void;
}

const airs = [
  { value: "open", label: texts.openToAir },
  { value: "sealed", label: texts.sealedDry },
] as const;

function ConditionFields({ condition, isOnly, onSet, onRemove }: ConditionFieldsProps) {
  const [isSealed, setSealed] = useState(condition.moisturePct !== undefined);
  return (
    <fieldset className="field-group">
      <legend>{isOnly ? texts.allYear : texts.from(monthName(condition.fromMonth ?? 1))}</legend>
      {!isOnly && (
        <ChoiceField
          label={texts.fromTheFirstOf}
          value={String(condition.fromMonth ?? 1)}
          choices={months}
          onPick={(month) => onSet({ fromMonth: Number(month) })}
        />
      )}
      <ValueField
        label={texts.temperatureC}
        value={condition.temperatureC}
        onApply={(temperatureC) => onSet({ temperatureC })}
      />
      <ChoiceField
        label={texts.seedLies}
        value={isSealed ? "sealed" : "open"}
        choices={airs}
        onPick={(air) => {
          setSealed(air === "sealed");
          onSet({ humidityPct: undefined, moisturePct: undefined });
        }}
      />
      {isSealed ? (
        <ValueField
          label={texts.moistureOfTheSeed}
          value={condition.moisturePct}
          hint={texts.measuredFreshWeight}
          onApply={(moisturePct) => onSet({ moisturePct })}
        />
      ) : (
        <ValueField
          label={texts.humidityOfTheAir}
          value={condition.humidityPct}
          onApply={(humidityPct) => onSet({ humidityPct })}
        />
      )}
      <p>
        <button type="button" className="act" onClick={onRemove}>
          {texts.deletePartYear}
        </button>
      </p>
    </fieldset>
  );
}

/** The place, or why it cannot be kept. */
function wholePlace(
  id: string,
  name: string,
  note: string,
  conditions: readonly TypedCondition[],
): StoragePlace | string {
  if (name === "") return texts.typePlaceName;
  const isOnly = conditions.length === 1;
  const whole: Condition[] = [];
  for (const { fromMonth = 1, temperatureC, humidityPct, moisturePct } of conditions) {
    if (temperatureC === undefined) return texts.typeCelsius;
    const base = { fromMonth: isOnly ? 1 : fromMonth, temperatureC };
    if (humidityPct !== undefined) whole.push({ ...base, humidityPct });
    else if (moisturePct !== undefined) whole.push({ ...base, moisturePct });
    else return texts.typeHumidity;
  }
  const place: StoragePlace = {
    id,
    name,
    ...(whole.length === 0 ? {} : { conditions: whole }),
    ...(note === "" ? {} : { note }),
  };
  const read = placeSchema.safeParse(place);
  if (!read.success) {
    const [issue] = read.error.issues;
    return texts.fieldExpected(
      fieldWords(String(issue?.path.at(-1) ?? "")),
      issue ? expectedText(issue) : texts.somethingElse,
    );
  }
  const [fault] = placeFaults(place);
  return fault ? texts.sameMonthTwice : place;
}

function fieldWords(field: string): string {
  switch (field) {
    case "temperatureC":
      return texts.temperatureField;
    case "humidityPct":
      return texts.humidityField;
    case "moisturePct":
      return texts.moistureField;
    default:
      return texts.nameField;
  }
}
