import type { ReactNode } from "react";
import { TextField } from "./TextField.tsx";
import { ParsedField } from "./ParsedField.tsx";
import { readCount, readTurn, turnText } from "./number-text.ts";
import * as texts from "./field-words.ts";

interface CountFieldProps {
  readonly label: string;
  readonly value: number | undefined;
  /** Undefined when the field was emptied. */
  readonly onApply: (count: number | undefined) => void;
  readonly hint?: string | undefined;
}

/** Plants, rows: a whole number or nothing. */
export function CountField({ onApply, ...field }: CountFieldProps) {
  const take = (count?: number) => {
    onApply(count);
    return null;
  };
  return (
    <ParsedField
      {...field}
      textOf={String}
      read={readCount}
      onApply={take}
      onClear={take}
      isNumeric
    />
  );
}

interface TurnFieldProps {
  readonly label: string;
  readonly value: number | undefined;
  readonly onApply: (turnDeg: number) => void;
  readonly placeholder?: string | undefined;
  readonly hint?: string | undefined;
}

/** Degrees clockwise. */
export function TurnField({ onApply, ...field }: TurnFieldProps) {
  const take = (turnDeg: number) => {
    onApply(turnDeg);
    return null;
  };
  return <ParsedField {...field} textOf={turnText} read={readTurn} onApply={take} />;
}

interface ValueFieldProps {
  readonly label: string;
  readonly value: number | undefined;
  /** Undefined when the field was emptied. Returns why the number cannot be used, or null. */
  readonly onApply: (value: number | undefined) => string | null;
  readonly hint?: ReactNode;
  readonly placeholder?: string;
}

/** A plain number, decimal comma or point, or nothing. */
export function ValueField({ label, value, onApply, hint, placeholder }: ValueFieldProps) {
  const apply = (text: string) => {
    const body = text
      .normalize("NFKC")
      .replace(/\u2212/g, "-")
      .replace(",", ".")
      .replace("%", "")
      .trim();
    if (body === "") return onApply(undefined);
    if (!/^-?\d+(\.\d+)?$/.test(body)) return texts.typeNumber;
    return onApply(Number(body));
  };
  return (
    <TextField
      label={label}
      value={value === undefined ? "" : String(value)}
      onApply={apply}
      hint={hint}
      placeholder={placeholder}
      isNumeric
    />
  );
}
