import type { ClipboardEvent } from "react";
import type { TemperatureUnit } from "../../core/calendar/temperature-text.ts";
import { type CellFault, type ClimateDraft, type End } from "./climate-draft.ts";
import { fullMonths } from "../../core/words/month-words.ts";
import { highest, lowest } from "./climate-words.ts";
import * as texts from "./words.ts";

interface ClimateTableProps {
  readonly draft: ClimateDraft;
  readonly unit: TemperatureUnit;
  readonly faults: readonly CellFault[];
  readonly onType: (end: End, month: number, text: string) => void;
  /** A whole table pasted into one field. */
  readonly onPaste: (text: string) => void;
}

const ends: readonly { readonly end: End; readonly label: string }[] = [
  { end: "min", label: lowest },
  { end: "max", label: highest },
];

/** Twelve mean daily lowest and highest temperatures. */
export function ClimateTable({ draft, unit, faults, onType, onPaste }: ClimateTableProps) {
  const paste = (event: ClipboardEvent) => {
    const text = event.clipboardData.getData("text");
    if (!/\S\s+\S|[;,]\s*-?\d/.test(text.trim())) return;
    event.preventDefault();
    onPaste(text);
  };
  return (
    <table className="climate-table">
      <caption className="visually-hidden">{texts.monthlyMeansDailyTemperatures}</caption>
      <thead>
        <tr>
          <th scope="col">{texts.month}</th>
          <th scope="col">{texts.meanDailyLowest(unit)}</th>
          <th scope="col">{texts.meanDailyHighest(unit)}</th>
        </tr>
      </thead>
      <tbody>
        {fullMonths.map((name, month) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            {ends.map(({ end, label }) => {
              const fault = faults.find((entry) => entry.end === end && entry.month === month);
              return (
                <td key={end}>
                  <input
                    type="text"
                    inputMode="decimal"
                    autoComplete="off"
                    aria-label={`${name}, ${label}`}
                    aria-invalid={fault ? true : undefined}
                    value={draft[end][month] ?? ""}
                    onChange={(event) => onType(end, month, event.target.value)}
                    onPaste={paste}
                  />
                </td>
              );
            })}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
