import { useState } from "react";
import {
  type DailyTemperatures,
  readDailyTemperatures,
} from "../../core/calendar/read-daily-temperatures.ts";
import type { TemperatureUnit } from "../../core/calendar/temperature-text.ts";
import { problemText } from "../../core/model/problem.ts";
import { ClimateProblems } from "./ClimateProblems.tsx";
import { recordWords } from "./climate-draft.ts";
import * as texts from "./words.ts";

/** A record longer than this is no garden's. */
const MAX_BYTES = 2_000_000;

interface ClimateRecordProps {
  readonly days: DailyTemperatures | undefined;
  readonly unit: TemperatureUnit;
  readonly onRead: (days: DailyTemperatures | undefined) => void;
}

/** A station's own days, from a file of date, minimum, maximum. */
export function ClimateRecord({ days, unit, onRead }: ClimateRecordProps) {
  const [problems, setProblems] = useState<readonly string[]>([]);
  const open = async (file: File) => {
    if (file.size > MAX_BYTES) {
      setProblems([texts.recordTooLarge(file.name)]);
      return;
    }
    const read = readDailyTemperatures(await file.text(), file.name, unit);
    setProblems(read.ok ? [] : read.problems.map(problemText));
    if (read.ok) onRead(read.value);
  };
  return (
    <fieldset className="field-group">
      <legend>{texts.recordOfDays}</legend>
      <p className="field-hint">{texts.textFileColumnsDate}</p>
      <p>{days ? recordWords(days) : texts.noRecord}</p>
      <p className="dialog-actions">
        <label className="file-button">
          {texts.readAFile}
          {unit === "C" ? "°C" : "°F"}) ...
          <input
            type="file"
            accept=".csv,.tsv,.txt,text/csv,text/plain"
            className="visually-hidden"
            onChange={(event) => {
              const [file] = event.target.files ?? [];
              event.target.value = "";
              if (file) void open(file);
            }}
          />
        </label>
        {days && (
          <button type="button" onClick={() => onRead(undefined)}>
            {texts.deleteTheRecord}
          </button>
        )}
      </p>
      <ClimateProblems problems={problems} />
    </fieldset>
  );
}
