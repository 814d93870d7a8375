import type { ReactNode } from "react";
import { formatLength, parseLength } from "../../core/model/length.ts";
import { decimalMark } from "../../store/window/decimal-mark.ts";
import { TextField } from "./TextField.tsx";
import { useShownPlan } from "../state/use-shown-plan.ts";

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
  readonly placeholder?: string;
}

const LEAST_SIZE_M = 0.01;

/** A length in any unit, shown in the plan's. */
export function LengthField(props: LengthFieldProps) {
  const { label, value, onApply, onClear, isCoordinate = false, isSize = false } = props;
  const unit = useShownPlan().units;
  const apply = (text: string) => {
    if (text.trim() === "" && onClear) {
      onClear();
      return null;
    }
    const read = parseLength(text, unit, isCoordinate, decimalMark());
    if (!read.ok) return read.reason;
    if (isSize && read.metres < LEAST_SIZE_M) return "A size must be more than nothing";
    return onApply(read.metres);
  };
  return (
    <TextField
      label={label}
      value={value === undefined ? "" : formatLength(value, unit)}
      onApply={apply}
      hint={props.hint}
      placeholder={props.placeholder}
    />
  );
}
