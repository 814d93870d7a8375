import type { ReactNode } from "react";
import { TextField } from "./TextField.tsx";

export type Parsed<Value> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly reason: string };

interface ParsedFieldProps<Value> {
  readonly label: string;
  /** Undefined where none is set, or where several differ. */
  readonly value: Value | undefined;
  readonly textOf: (value: Value) => string;
  readonly read: (text: string) => Parsed<Value>;
  /** Returns why the value cannot be used, or null. */
  readonly onApply: (value: Value) => string | null;
  /** Takes an emptied field; without it an empty text is read like any other. */
  readonly onClear?: (() => string | null) | undefined;
  readonly hint?: ReactNode;
  readonly placeholder?: string | undefined;
  readonly isNumeric?: boolean;
}

/** A field whose text is read as something else: a number, a length, a date. */
export function ParsedField<Value>(props: ParsedFieldProps<Value>) {
  const { label, value, textOf, read, onApply, onClear, ...rest } = props;
  const apply = (text: string) => {
    if (onClear && text.trim() === "") return onClear();
    const parsed = read(text);
    return parsed.ok ? onApply(parsed.value) : parsed.reason;
  };
  return (
    <TextField
      {...rest}
      label={label}
      value={value === undefined ? "" : textOf(value)}
      onApply={apply}
    />
  );
}
