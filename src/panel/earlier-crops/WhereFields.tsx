import { CheckField, ChoiceField } from "../form/ChoiceField.tsx";
import { PlaceFields, RectangleSizeFields } from "../form/RectangleFields.tsx";
import { useShownLayout } from "../state/use-shown-plan.ts";
import type { GroundDraft } from "./earlier-crop-words.ts";
import * as texts from "./words.ts";

interface WhereFieldsProps {
  readonly draft: GroundDraft;
  readonly isNew: boolean;
  readonly onSet: (change: Partial<GroundDraft>) => null;
}

/** On which ground: whole beds, a typed rectangle, or where it is now. */
export function WhereFields({ draft, isNew, onSet }: WhereFieldsProps) {
  const layout = useShownLayout();
  const choices = [
    ...(isNew ? [] : [{ value: "as-is" as const, label: texts.whereItIs }]),
    ...(layout.beds.length > 0
      ? [{ value: "beds" as const, label: isNew ? texts.wholeBeds : texts.wholeBed }]
      : []),
    { value: "rectangle" as const, label: texts.typedRectangle },
  ];
  const toggle = (id: string, isOn: boolean) => {
    const others = isNew ? draft.beds.filter((each) => each !== id) : [];
    onSet({ beds: isOn ? [...others, id] : others });
  };
  const setRectangle = (change: Partial<GroundDraft["rectangle"]>) =>
    onSet({ rectangle: { ...draft.rectangle, ...change } });
  return (
    <>
      <ChoiceField
        label={texts.where}
        value={draft.where}
        choices={choices}
        onPick={(where) => onSet({ where })}
      />
      {draft.where === "beds" && (
        <fieldset className="compare-choice">
          <legend>{texts.bedsOf(layout.name)}</legend>
          {layout.beds.map(({ id, code }) => (
            <CheckField
              key={id}
              label={code}
              isOn={draft.beds.includes(id)}
              onSet={(isOn) => toggle(id, isOn)}
            />
          ))}
        </fieldset>
      )}
      {draft.where === "rectangle" && (
        <>
          <RectangleSizeFields sizes={draft.rectangle} onSet={setRectangle} />
          <PlaceFields place={draft.rectangle} onSet={setRectangle} />
        </>
      )}
    </>
  );
}
