import type { ReactNode } from "react";
import { formatLength, parseLength } from "../../core/model/length.ts";
import { decimalMark } from "../../store/window/decimal-mark.ts";
import { type Parsed, ParsedField } from "./ParsedField.tsx";
import { useShownPlan } from "../state/use-shown-plan.ts";
import * as texts from "./field-words.ts";

interface LengthFieldProps {
  readonly label: string;
  /** Metres; undefined where none is set or where several differ. */
  readonly value: number | undefined;
  readonly onApply: (metres: number) => string | null;
  /** Takes the value away when the field is emptied; without it an empty field is refused. */
  readonly onClear?: () => void;
  /** Coordinates may be negative, sizes and distances not. */
  readonly isCoordinate?: boolean;
  /** Sizes must be more than nothing. */
  readonly isSize?: boolean;
  readonly hint?: ReactNode;
  readonly placeholder?: string | undefined;
}

const LEAST_SIZE_M = 0.01;

/** A length in any unit, shown in the plan's. */
export function LengthField(props: LengthFieldProps) {
  const { onClear, isCoordinate = false, isSize = false, ...field } = props;
  const unit = useShownPlan().units;
  const readText = (text: string): Parsed<number> => {
    const read = parseLength(text, unit, isCoordinate, decimalMark());
    if (!read.ok) return read;
    return isSize && read.metres < LEAST_SIZE_M
      ? { ok: false, reason: texts.sizeNeeded }
      : { ok: true, value: read.metres };
  };
  const clear = () => {
    onClear?.();
    return null;
  };
  return (
    <ParsedField
      {...field}
      textOf={(metres) => formatLength(metres, unit)}
      read={readText}
      onClear={onClear && clear}
    />
  );
}
