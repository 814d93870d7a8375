import type { Shape } from "../../core/model/plan.ts";
import { ChoiceField } from "../form/ChoiceField.tsx";
import { LengthField } from "../form/LengthField.tsx";
import { ParsedField } from "../form/ParsedField.tsx";
import { PlaceFields } from "../form/RectangleFields.tsx";
import { useKept } from "../state/plan-actions.ts";
import { readBearing } from "./bearing-text.ts";
import { type SourcePlace, type TypedSource, measuredFrom } from "./source-form.ts";
import { sourceWords as words } from "./source-words.ts";

interface SourcePlaceFieldsProps {
  readonly typed: TypedSource;
  readonly given: Shape | null;
  readonly onSet: (change: Partial<TypedSource>) => null;
}

/** Where it lies: where it was pressed, by distance and direction from something of ours, by x and y. */
export function SourcePlaceFields({ typed, given, onSet }: SourcePlaceFieldsProps) {
  const choices: readonly { readonly value: SourcePlace; readonly label: string }[] = [
    ...(given
      ? [
          {
            value: "given" as const,
            label: given.shape === "point" ? words.pressed : words.drawn,
          },
        ]
      : []),
    { value: "measured", label: words.measured },
    { value: "typed", label: words.typed },
  ];
  return (
    <>
      <ChoiceField
        label={words.place}
        value={typed.place}
        choices={choices}
        onPick={(place) => onSet({ place })}
      />
      {typed.place === "measured" && <MeasuredFields typed={typed} onSet={onSet} />}
      {typed.place === "typed" && <PlaceFields place={typed} onSet={onSet} />}
      {!(typed.place === "given" && given?.shape !== "point") && (
        <LengthField
          label={words.across}
          value={typed.acrossM}
          placeholder={words.single}
          isSize
          onApply={(acrossM) => onSet({ acrossM })}
          onClear={() => onSet({ acrossM: undefined })}
          hint={words.acrossHint}
        />
      )}
    </>
  );
}

function MeasuredFields({ typed, onSet }: Omit<SourcePlaceFieldsProps, "given">) {
  const { layout } = useKept();
  const choices = [
    ...measuredFrom(layout).map(({ id, code }) => ({ value: id, label: code })),
    { value: "", label: words.origin },
  ];
  const read = (text: string) => {
    const value = readBearing(text);
    return value === null
      ? ({ ok: false, reason: words.badDirection } as const)
      : ({ ok: true, value } as const);
  };
  return (
    <>
      <ChoiceField
        label={words.from}
        value={typed.from}
        choices={choices}
        onPick={(from) => onSet({ from })}
      />
      <LengthField
        label={words.distance}
        value={typed.distanceM}
        onApply={(distanceM) => onSet({ distanceM })}
      />
      <ParsedField
        label={words.direction}
        value={typed.bearingDeg}
        textOf={(degrees) => `${degrees}°`}
        read={read}
        onApply={(bearingDeg) => onSet({ bearingDeg })}
        hint={words.directionHint}
      />
    </>
  );
}
