import type { Range } from "../../core/kinds/crop.ts";
import { TextField } from "./TextField.tsx";
import { rangeText, readRange } from "./range-text.ts";

interface RangeFieldProps {
  readonly label: string;
  readonly value: Range | undefined;
  /** The kind's own range, shown while none is typed. */
  readonly usual: Range | undefined;
  readonly onApply: (range: Range | undefined) => void;
}

/** A span of days, or nothing. */
export function RangeField({ label, value, usual, onApply }: RangeFieldProps) {
  const apply = (text: string) => {
    if (text.trim() === "") {
      onApply(undefined);
      return null;
    }
    const read = readRange(text);
    if (!read.ok) return read.reason;
    onApply(read.value);
    return null;
  };
  return (
    <TextField
      label={label}
      value={value === undefined ? "" : rangeText(value)}
      placeholder={usual === undefined ? "not known" : rangeText(usual)}
      isNumeric
      onApply={apply}
    />
  );
}
