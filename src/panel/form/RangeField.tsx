import type { Range } from "../../core/kinds/crop.ts";
import { ParsedField } from "./ParsedField.tsx";
import { rangeText, readRange } from "./range-text.ts";
import * as texts from "./field-words.ts";

interface RangeFieldProps {
  readonly label: string;
  readonly value: Range | undefined;
  /** The kind's own range, shown while none is typed. */
  readonly usual: Range | undefined;
  readonly onApply: (range: Range | undefined) => void;
}

/** A span of days, or nothing. */
export function RangeField({ label, value, usual, onApply }: RangeFieldProps) {
  const take = (range?: Range) => {
    onApply(range);
    return null;
  };
  return (
    <ParsedField
      label={label}
      value={value}
      textOf={rangeText}
      read={readRange}
      onApply={take}
      onClear={take}
      placeholder={usual === undefined ? texts.notKnown : rangeText(usual)}
      isNumeric
    />
  );
}
