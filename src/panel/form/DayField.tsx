import { type DayNumber, isoFromDay, shortDate } from "../../core/model/day.ts";
import * as texts from "./field-words.ts";
import { ParsedField } from "./ParsedField.tsx";
import { readDay } from "./day-text.ts";
import { useShownPlan } from "../state/use-shown-plan.ts";

interface DayFieldProps {
  readonly label: string;
  readonly value: DayNumber | undefined;
  /** Returns why the day cannot be used, or null; undefined when the field was emptied. */
  readonly onApply: (day: DayNumber | undefined) => string | null;
  readonly hint?: string;
  readonly placeholder?: string;
}

/** A date: typed as `2027-05-20` or `20 May`, said back with the month in letters. */
export function DayField({ label, value, onApply, hint, placeholder }: DayFieldProps) {
  const { season } = useShownPlan();
  return (
    <ParsedField
      label={label}
      value={value}
      textOf={isoFromDay}
      read={(text) => readDay(text, season)}
      onApply={onApply}
      onClear={() => onApply(undefined)}
      placeholder={placeholder ?? texts.dayExample}
      hint={hint ?? (value === undefined ? undefined : shortDate(value))}
    />
  );
}
