import type { FormEvent } from "react";
import { patched } from "../../core/edits/edit.ts";
import { changePlan } from "../../core/edits/object-edits.ts";
import type { Climate, Site } from "../../core/model/plan.ts";
import { ChoiceField } from "../form/ChoiceField.tsx";
import { ClimateChart } from "./ClimateChart.tsx";
import { ClimatePaste } from "./ClimatePaste.tsx";
import { ClimateProblems } from "./ClimateProblems.tsx";
import { ClimateRecord } from "./ClimateRecord.tsx";
import { ClimateTable } from "./ClimateTable.tsx";
import { Dialog } from "../form/Dialog.tsx";
import { FrostFields } from "./FrostFields.tsx";
import { TextField } from "../form/TextField.tsx";
import { nameProblem } from "../form/name-problem.ts";
import { type ClimateDraft, withCell } from "./climate-draft.ts";
import { commit } from "../state/plan-actions.ts";
import { temperatureUnits } from "../state/plan-words.ts";
import { useClimateDraft } from "./use-climate-draft.ts";
import { useShownPlan } from "../state/use-shown-plan.ts";
import * as texts from "./words.ts";
import "./season.css";

/** The site's temperatures, kept as one step to undo, and its frosts. */
export function ClimateDialog({ onClose }: { readonly onClose: () => void }) {
  const { site, units } = useShownPlan();
  const drafted = useClimateDraft(site.climate, units === "ft" ? "F" : "C");
  const { draft, unit, climate, change, paste } = drafted;
  const keepClimate = (next: Climate | undefined, title: string) => {
    commit(changePlan({ site: patched<Site>(site, { climate: next }) }, title));
    onClose();
  };
  const keep = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    if (drafted.check()) keepClimate(climate, texts.setClimate);
  };
  return (
    <Dialog title={texts.climateOfTheSite} onClose={onClose} isWide>
      <form className="fields" noValidate onSubmit={keep}>
        <p>{texts.temperaturesNearestStationBloom}</p>
        <StationFields draft={draft} onChange={change} />
        <ChoiceField
          label={texts.temperaturesIn}
          value={unit}
          choices={temperatureUnits}
          onPick={drafted.pickUnit}
        />
        <ClimateTable
          draft={draft}
          unit={unit}
          faults={drafted.faults}
          onType={(end, month, text) => change(withCell(draft, end, month, text))}
          onPaste={paste}
        />
        <ClimatePaste onPaste={paste} />
        <ClimateProblems problems={drafted.problems} />
        {climate?.normals && <ClimateChart normals={climate.normals} />}
        <ClimateRecord
          days={draft.days}
          unit={unit}
          onRead={(days) => change({ ...draft, days })}
        />
        <Frosts site={site} />
        <p className="dialog-actions">
          <button type="submit" className="primary">
            {texts.apply}
          </button>
          {site.climate && (
            <button type="button" onClick={() => keepClimate(undefined, texts.deleteClimateStep)}>
              {texts.deleteTheClimate}
            </button>
          )}
        </p>
      </form>
    </Dialog>
  );
}

function Frosts({ site }: { readonly site: Site }) {
  return (
    <fieldset className="field-group">
      <legend>{texts.frosts}</legend>
      <p className="field-hint">{texts.frostDatesAskedNever}</p>
      <FrostFields site={site} />
    </fieldset>
  );
}

interface StationFieldsProps {
  readonly draft: ClimateDraft;
  readonly onChange: (next: ClimateDraft) => void;
}

/** Where the numbers come from, for whoever reads them next year. */
function StationFields({ draft, onChange }: StationFieldsProps) {
  const set = (key: "station" | "source", text: string) => {
    const problem = nameProblem(text, { tooLong: texts.originTooLong });
    if (problem === null) onChange({ ...draft, [key]: text.trim() });
    return problem;
  };
  return (
    <>
      <TextField
        label={texts.stationAndYears}
        value={draft.station}
        isWide
        onApply={(text) => set("station", text)}
      />
      <TextField
        label={texts.source}
        value={draft.source}
        isWide
        onApply={(text) => set("source", text)}
      />
    </>
  );
}
