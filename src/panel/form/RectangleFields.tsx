import { LengthField } from "./LengthField.tsx";
import { TurnField } from "./NumberField.tsx";

interface Sizes {
  readonly widthM: number;
  readonly lengthM: number;
  readonly turnDeg: number;
}

interface SizeFieldsProps {
  readonly sizes: Sizes;
  readonly turnHint?: string;
  readonly onSet: (change: Partial<Sizes>) => null;
}

/** Width, length and turn of a rectangle that is yet to be drawn. */
export function RectangleSizeFields({ sizes, turnHint, onSet }: SizeFieldsProps) {
  return (
    <>
      <div className="field-pair">
        <LengthField
          label="Width"
          value={sizes.widthM}
          isSize
          onApply={(widthM) => onSet({ widthM })}
        />
        <LengthField
          label="Length"
          value={sizes.lengthM}
          isSize
          onApply={(lengthM) => onSet({ lengthM })}
        />
      </div>
      <TurnField
        label="Turn, clockwise"
        value={sizes.turnDeg}
        hint={turnHint}
        onApply={(turnDeg) => {
          onSet({ turnDeg });
        }}
      />
    </>
  );
}

interface Middle {
  readonly x: number;
  readonly y: number;
}

interface MiddleFieldsProps {
  readonly middle: Middle;
  readonly onSet: (change: Partial<Middle>) => null;
}

/** Where its middle lies on the sheet. */
export function MiddleFields({ middle, onSet }: MiddleFieldsProps) {
  return (
    <div className="field-pair">
      <LengthField
        label="Middle, right (x)"
        value={middle.x}
        isCoordinate
        onApply={(x) => onSet({ x })}
      />
      <LengthField
        label="Middle, up (y)"
        value={middle.y}
        isCoordinate
        onApply={(y) => onSet({ y })}
      />
    </div>
  );
}
