import { LengthField } from "./LengthField.tsx";
import { TurnField } from "./NumberField.tsx";
import * as texts from "./field-words.ts";

interface Size {
  readonly widthM: number;
  readonly lengthM: number;
}

/** As it is, or undefined where several differ. */
type Shown<Values> = { readonly [Key in keyof Values]: Values[Key] | undefined };

interface SizeFieldsProps {
  readonly sizes: Shown<Size>;
  /** Its length stands among other fields already. */
  readonly isLengthElsewhere?: boolean | undefined;
  readonly placeholder?: string | undefined;
  /** What each is called, where a rectangle is not the only thing with a size. */
  readonly labels?: readonly [width: string, length: string];
  readonly onSet: (change: Partial<Size>) => null;
}

/** Width and length. */
export function SizeFields(props: SizeFieldsProps) {
  const {
    sizes,
    isLengthElsewhere,
    placeholder,
    labels = [texts.width, texts.length],
    onSet,
  } = props;
  return (
    <div className="field-pair">
      <LengthField
        label={labels[0]}
        value={sizes.widthM}
        placeholder={placeholder}
        isSize
        onApply={(widthM) => onSet({ widthM })}
      />
      {isLengthElsewhere === true ? null : (
        <LengthField
          label={labels[1]}
          value={sizes.lengthM}
          placeholder={placeholder}
          isSize
          onApply={(lengthM) => onSet({ lengthM })}
        />
      )}
    </div>
  );
}

interface RectangleSizes extends Size {
  readonly turnDeg: number;
}

interface RectangleSizeFieldsProps {
  readonly sizes: Shown<RectangleSizes>;
  readonly isLengthElsewhere?: boolean | undefined;
  readonly placeholder?: string;
  readonly turnHint?: string;
  readonly onSet: (change: Partial<RectangleSizes>) => null;
}

/** Width, length and turn of a rectangle. */
export function RectangleSizeFields(props: RectangleSizeFieldsProps) {
  const { sizes, isLengthElsewhere, placeholder, turnHint, onSet } = props;
  return (
    <>
      <SizeFields
        sizes={sizes}
        isLengthElsewhere={isLengthElsewhere}
        placeholder={placeholder}
        onSet={onSet}
      />
      <TurnField
        label={texts.turnClockwise}
        value={sizes.turnDeg}
        placeholder={placeholder}
        hint={turnHint}
        onApply={(turnDeg) => {
          onSet({ turnDeg });
        }}
      />
    </>
  );
}

interface Place {
  readonly x: number;
  readonly y: number;
}

interface PlaceFieldsProps {
  readonly place: Place;
  /** What its x and its y are called; left out, they are those of its middle. */
  readonly labels?: readonly [string, string];
  readonly onSet: (change: Partial<Place>) => null;
}

/** Where something lies on the sheet. */
export function PlaceFields({ place, labels, onSet }: PlaceFieldsProps) {
  const [right, up] = labels ?? [texts.middleRight, texts.middleUp];
  return (
    <div className="field-pair">
      <LengthField label={right} value={place.x} isCoordinate onApply={(x) => onSet({ x })} />
      <LengthField label={up} value={place.y} isCoordinate onApply={(y) => onSet({ y })} />
    </div>
  );
}
