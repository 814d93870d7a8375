import { readCount, readTurn, turnText } from "./number-text.ts";
import { TextField } from "./TextField.tsx";

interface CountFieldProps {
  readonly label: string;
  readonly value: number | undefined;
  /** Undefined when the field was emptied. */
  readonly onApply: (count: number | undefined) => void;
  readonly hint?: string | undefined;
}

/** Plants, rows: a whole number or nothing. */
export function CountField({ label, value, onApply, hint }: CountFieldProps) {
  const apply = (text: string) => {
    if (text.trim() === "") {
      onApply(undefined);
      return null;
    }
    const read = readCount(text);
    if (!read.ok) return read.reason;
    onApply(read.value);
    return null;
  };
  return (
    <TextField
      label={label}
      value={value === undefined ? "" : String(value)}
      onApply={apply}
      hint={hint}
      isNumeric
    />
  );
}

interface TurnFieldProps {
  readonly label: string;
  readonly value: number | undefined;
  readonly onApply: (turnDeg: number) => void;
  readonly placeholder?: string;
  readonly hint?: string | undefined;
}

/** Degrees clockwise. */
export function TurnField({ label, value, onApply, placeholder, hint }: TurnFieldProps) {
  const apply = (text: string) => {
    const read = readTurn(text);
    if (!read.ok) return read.reason;
    onApply(read.value);
    return null;
  };
  return (
    <TextField
      label={label}
      value={value === undefined ? "" : turnText(value)}
      onApply={apply}
      placeholder={placeholder}
      hint={hint}
    />
  );
}
