import { Suspense, lazy } from "react";
import { changeBed } from "../../core/edits/object-edits.ts";
import type { Bed } from "../../core/model/plan.ts";
import { OutlineFields } from "./OutlineFields.tsx";
import { NoteField, TextField } from "../form/TextField.tsx";
import { codeProblem } from "../beds/new-bed.ts";
import { useShownLayout, useWording } from "../state/use-shown-plan.ts";
import { commit, windowNow } from "../state/plan-actions.ts";
import { cutBed, numberBeds, shareBed } from "../beds/commands.ts";
import { CommandButton } from "../commands/CommandButton.tsx";
import * as texts from "./dialog-words.ts";
import * as steps from "./step-words.ts";
import { Sentence } from "../state/Sentence.tsx";

const GroundYears = lazy(async () => ({
  default: (await import("../earlier-crops/GroundYears.tsx")).GroundYears,
}));

export function BedParticulars({ bed }: { readonly bed: Bed }) {
  const layout = useShownLayout();
  const layoutId = layout.id;
  const rename = (text: string) => {
    const problem = codeProblem(layout, text, bed.id);
    if (problem !== null) return problem;
    const code = text.trim();
    commit(changeBed(layoutId, bed.id, { code }, steps.renameBed(bed.code, code)));
    return null;
  };
  const setNote = (text: string) => {
    const note = text === "" ? undefined : text;
    commit(changeBed(layoutId, bed.id, { note }, steps.noteOnBed(bed.code)));
  };
  return (
    <div className="fields">
      <h3>
        <Sentence
          words={texts.bedHeading}
          parts={{ code: <span className="code">{bed.code}</span> }}
        />
      </h3>
      <TextField label={texts.code} value={bed.code} onApply={rename} />
      {layout.beds.length > 1 && (
        <p className="field-hint">
          <CommandButton of={numberBeds} className="act">
            {texts.numberAllTheBeds}
          </CommandButton>
        </p>
      )}
      <OutlineFields id={bed.id} name={texts.bedCode(bed.code)} outline={bed.outline} />
      <NoteField label={texts.note} value={bed.note ?? ""} onApply={setNote} />
      <PlantingsInside bed={bed} />
      <Suspense fallback={null}>
        <GroundYears bed={bed} />
      </Suspense>
      {bed.outline.shape === "rectangle" && (
        <div className="offers">
          <CommandButton of={shareBed}>{texts.shareAmongVarieties}</CommandButton>
          <CommandButton of={cutBed}>{texts.cutInTwo}</CommandButton>
        </div>
      )}
    </div>
  );
}

function PlantingsInside({ bed }: { readonly bed: Bed }) {
  const layout = useShownLayout();
  const wording = useWording();
  const inside = layout.plantings.filter((planting) => planting.bed === bed.id);
  return (
    <>
      <h4>{texts.plantingsInIt}</h4>
      {inside.length === 0 ? (
        <p className="soft">{texts.none}</p>
      ) : (
        <ul className="plain-list">
          {inside.map((planting) => (
            <li key={planting.id}>
              <button
                type="button"
                className="link"
                onClick={() => windowNow().select([planting.id])}
              >
                {wording.nameOf(planting.id)}
              </button>
            </li>
          ))}
        </ul>
      )}
    </>
  );
}
