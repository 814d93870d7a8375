import { useState } from "react";
import type { DayWindow } from "../../core/calendar/bloom-window.ts";
import type { DayNumber } from "../../core/model/day.ts";
import { DayField } from "./DayField.tsx";
import * as texts from "./field-words.ts";

interface WindowFieldProps {
  readonly label: string;
  readonly value: DayWindow | undefined;
  readonly onApply: (window: DayWindow | undefined) => void;
}

/** First and last day. One alone waits for the other; emptying either takes the window away. */
export function WindowField({ label, value, onApply }: WindowFieldProps) {
  const [pending, setPending] = useState<Partial<DayWindow>>({});
  const set = (end: "first" | "last", day: DayNumber | undefined) => {
    if (day === undefined) {
      setPending({});
      if (value) onApply(undefined);
      return null;
    }
    const both = { ...(value ?? pending), [end]: day };
    const { first, last } = both;
    if (first === undefined || last === undefined) {
      setPending(both);
      return null;
    }
    if (first > last) return texts.lastBeforeFirst;
    setPending({});
    onApply({ first, last });
    return null;
  };
  const waiting = texts.typeOtherDay;
  const first = value?.first ?? pending.first;
  const last = value?.last ?? pending.last;
  const isHalf = (first === undefined) !== (last === undefined);
  return (
    <fieldset className="field-group">
      <legend>{label}</legend>
      <div className="field-pair">
        <DayField
          label={texts.firstDay}
          value={first}
          onApply={(day) => set("first", day)}
          {...(isHalf && first === undefined ? { hint: waiting } : {})}
        />
        <DayField
          label={texts.lastDay}
          value={last}
          onApply={(day) => set("last", day)}
          {...(isHalf && last === undefined ? { hint: waiting } : {})}
        />
      </div>
    </fieldset>
  );
}
