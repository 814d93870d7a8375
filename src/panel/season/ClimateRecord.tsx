import { useState } from "react";
import {
  type DailyTemperatures,
  readDailyTemperatures,
} from "../../core/calendar/read-daily-temperatures.ts";
import type { TemperatureUnit } from "../../core/calendar/temperature-text.ts";
import { problemText } from "../../core/model/problem.ts";
import { ClimateProblems } from "./ClimateProblems.tsx";
import { recordWords } from "./climate-draft.ts";

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
      setProblems([`${file.name}: larger than 2 MB, expected one line for each day.`]);
      return;
    }
    const read = readDailyTemperatures(await file.text(), file.name, unit);
    setProblems(read.ok ? [] : read.problems.map(problemText));
    if (read.ok) onRead(read.value);
  };
  return (
    <fieldset className="field-group">
      <legend>Record of days</legend>
      <p className="field-hint">
        A text file with the columns date (2027-05-20), min, max. Recorded days go before the
        normals; without normals other years get the mean of the same dates. With several years, up
        to forty, findings that heat and time decide can be tried on each of them.
      </p>
      <p>{days ? recordWords(days) : "No record."}</p>
      <p className="dialog-actions">
        <label className="file-button">
          Read a file ({unit === "C" ? "°C" : "°F"}) ...
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
            Delete the record
          </button>
        )}
      </p>
      <ClimateProblems problems={problems} />
    </fieldset>
  );
}
