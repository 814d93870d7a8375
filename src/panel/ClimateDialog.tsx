import { type FormEvent, useMemo, useState } from "react";
import { patched } from "../core/edits/edit.ts";
import { changePlan } from "../core/edits/object-edits.ts";
import { readNormals } from "../core/exports/read-normals.ts";
import { type TemperatureUnit } from "../core/exports/temperature-text.ts";
import type { Climate, Site } from "../core/model/plan.ts";
import { problemText } from "../core/model/problem.ts";
import { ChoiceField } from "./ChoiceField.tsx";
import { ClimateChart } from "./ClimateChart.tsx";
import { ClimatePaste } from "./ClimatePaste.tsx";
import { ClimateProblems } from "./ClimateProblems.tsx";
import { ClimateRecord } from "./ClimateRecord.tsx";
import { ClimateTable } from "./ClimateTable.tsx";
import { Dialog } from "./Dialog.tsx";
import { FrostFields } from "./FrostFields.tsx";
import { TextField } from "./TextField.tsx";
import { type ClimateDraft, cellFaults, cellsOf, climateOf, draftOf, hasCells, withCell } from "./climate-draft.ts";
import { commit } from "./plan-actions.ts";
import { temperatureUnits } from "./plan-words.ts";
import { useShownPlan } from "./use-shown-plan.ts";

/** The site's temperatures, kept as one step to undo, and its frosts. */
export function ClimateDialog({ onClose }: { readonly onClose: () => void }) {
  const { site, units } = useShownPlan();
  const kept = site.climate;
  const [unit, setUnit] = useState<TemperatureUnit>(units === "ft" ? "F" : "C");
  const [draft, setDraft] = useState(() => draftOf(kept, unit));
  const [isTried, setTried] = useState(false);
  const [problems, setProblems] = useState<readonly string[]>([]);
  const faults = useMemo(() => cellFaults(draft, unit), [draft, unit]);
  const change = (next: ClimateDraft) => {
    setProblems([]);
    setDraft(next);
  };
  const pickUnit = (next: TemperatureUnit) => {
    // Kept numbers are shown in the other unit; numbers just typed are only read differently.
    const before = draftOf(kept, unit);
    const isTouched = String([draft.min, draft.max]) !== String([before.min, before.max]);
    if (!isTouched) setDraft({ ...draft, ...cellsOf(kept?.normals, next) });
    setUnit(next);
  };
  const paste = (text: string) => {
    const read = readNormals(text, unit);
    setProblems(read.ok ? [] : read.problems.map(problemText));
    if (read.ok) setDraft({ ...draft, ...cellsOf(read.value, unit) });
  };
  const keepClimate = (climate: Climate | undefined, title: string) => {
    commit(changePlan({ site: patched<Site>(site, { climate }) }, title));
    onClose();
  };
  const keep = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    setTried(true);
    if (faults.length > 0) {
      setProblems(faults.map((fault) => fault.reason));
      return;
    }
    keepClimate(climateOf(draft, unit, kept), "Set the climate of the site");
  };
  return (
    <Dialog title="Climate of the site" onClose={onClose} isWide>
      <form className="fields" noValidate onSubmit={keep}>
        <p>
          With temperatures of the nearest station, bloom is counted in heat where the heat to first
          flower is known. Normals are the usual year: in a warm one bloom comes earlier, in a cold
          one later.
        </p>
        <TextField
          label="Station and years"
          value={draft.station}
          isWide
          onApply={(text) => tooLong(text) ?? done(change({ ...draft, station: text.trim() }))}
        />
        <TextField
          label="Source"
          value={draft.source}
          isWide
          onApply={(text) => tooLong(text) ?? done(change({ ...draft, source: text.trim() }))}
        />
        <ChoiceField
          label="Temperatures in"
          value={unit}
          choices={temperatureUnits}
          onPick={pickUnit}
        />
        <ClimateTable
          draft={draft}
          unit={unit}
          faults={isTried ? faults : []}
          onType={(end, month, text) => change(withCell(draft, end, month, text))}
          onPaste={paste}
        />
        <ClimatePaste onPaste={paste} />
        <ClimateProblems problems={problems} />
        {hasCells(draft) && faults.length === 0 && (
          <ClimateChart normals={climateOf(draft, unit, kept)?.normals ?? EMPTY_NORMALS} />
        )}
        <ClimateRecord
          days={draft.days}
          unit={unit}
          onRead={(days) => change({ ...draft, days })}
        />
        <fieldset className="field-group">
          <legend>Frosts</legend>
          <p className="field-hint">
            Frost dates are asked for, never worked out from normals: a mean says little about the
            one cold night. Take them from your own notes, a neighbour or the station.
          </p>
          <FrostFields site={site} />
        </fieldset>
        <p className="dialog-actions">
          <button type="submit" className="primary">
            Keep the climate
          </button>
          {kept && (
            <button
              type="button"
              onClick={() => keepClimate(undefined, "Take the climate away")}
            >
              Take the climate away
            </button>
          )}
        </p>
      </form>
    </Dialog>
  );
}

const EMPTY_NORMALS = { minC: Array<number>(12).fill(0), maxC: Array<number>(12).fill(0) };

function tooLong(text: string): string | null {
  return text.length > 200 ? "At most 200 letters" : null;
}

function done(_applied: void): null {
  return null;
}
