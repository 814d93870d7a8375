import { Suspense, lazy, useMemo } from "react";
import { alongBedOf } from "../../core/beds/bed-stretch.ts";
import { changePlantings } from "../../core/edits/object-edits.ts";
import { sowFromCodes } from "../../core/edits/sown-lots.ts";
import { lotsToSow } from "../../core/lots/lot-book.ts";
import { codesText } from "../../core/lots/named-lots.ts";
import type { Planting } from "../../core/model/plan.ts";
import { BedOfPlanting } from "./BedOfPlanting.tsx";
import { EntryList } from "../record/EntryList.tsx";
import { BloomFields } from "../bloom/BloomFields.tsx";
import { ChoiceField } from "../form/ChoiceField.tsx";
import { CrossingList } from "../findings/CrossingList.tsx";
import { CrossingShareFold } from "../findings/CrossingShareFold.tsx";
import { HarvestOffer } from "../grown/HarvestOffer.tsx";
import { IsolationFields } from "./IsolationFields.tsx";
import { OutlineFields } from "./OutlineFields.tsx";
import { PlantCountFields } from "./PlantCountFields.tsx";
import { nameProblem } from "../form/name-problem.ts";
import { NoteField, TextField } from "../form/TextField.tsx";
import { codeProblem } from "../beds/new-bed.ts";
import { choicesOf, purposeWords } from "../state/plan-words.ts";
import { useShownLayout, useShownPlan } from "../state/use-shown-plan.ts";
import { commit } from "../state/plan-actions.ts";
import * as texts from "./dialog-words.ts";
import * as steps from "./step-words.ts";
import { Sentence } from "../state/Sentence.tsx";

type PlantingChanges = Parameters<typeof changePlantings>[2];

interface VarietyOfPlantingProps {
  readonly planting: Planting;
  readonly onPick: (variety: string) => void;
}

/** The seed list as choices. */
function VarietyOfPlanting({ planting, onPick }: VarietyOfPlantingProps) {
  const { varieties } = useShownPlan();
  const choices = useMemo(
    () => varieties.map(({ id, name }) => ({ value: id, label: name })),
    [varieties],
  );
  return (
    <ChoiceField label={texts.variety} value={planting.variety} choices={choices} onPick={onPick} />
  );
}

/** What is sown is reckoned only when it is looked at. */
const SowingLine = lazy(async () => ({
  default: (await import("../shelf/SowingLine.tsx")).SowingLine,
}));

const GroundDays = lazy(async () => ({
  default: (await import("./GroundDays.tsx")).GroundDays,
}));

export function PlantingParticulars({ planting }: { readonly planting: Planting }) {
  const layout = useShownLayout();
  const layoutId = layout.id;
  const { code } = planting;
  const change = (changes: PlantingChanges, title: string) =>
    commit(changePlantings(layoutId, [planting.id], changes, title));
  const rename = (text: string) => {
    const problem = codeProblem(layout, text, planting.id);
    if (problem !== null) return problem;
    change({ code: text.trim() }, steps.rename(code, text.trim()));
    return null;
  };
  return (
    <div className="fields">
      <h3>
        <Sentence
          words={texts.plantingHeading}
          parts={{ code: <span className="code">{code}</span> }}
        />
      </h3>
      <VarietyOfPlanting
        planting={planting}
        onPick={(variety) => change({ variety }, steps.changeVariety(code))}
      />
      <TextField label={texts.code} value={code} onApply={rename} />
      <ChoiceField
        label={texts.purpose}
        value={planting.purpose}
        choices={choicesOf(purposeWords)}
        onPick={(purpose) => change({ purpose }, steps.changePurpose(code))}
      />
      <PlantCountFields planting={planting} />
      <h4>{texts.place}</h4>
      <BedOfPlanting planting={planting} />
      <OutlineFields
        id={planting.id}
        name={code}
        outline={planting.outline}
        isLengthElsewhere={alongBedOf(planting, layout.beds) !== null}
      />
      <h4>{texts.bloom}</h4>
      <BloomFields planting={planting} onChange={change} />
      <Suspense fallback={null}>
        <GroundDays planting={planting} onChange={change} />
      </Suspense>
      <h4>{texts.isolation}</h4>
      <IsolationFields planting={planting} onChange={change} />
      <CrossingList id={planting.id} />
      {planting.purpose === "seed" && <CrossingShareFold key={planting.id} planting={planting} />}
      <EntryList of={planting.id} plot={code} isOurs />
      <HarvestOffer plantingId={planting.id} />
      <Records planting={planting} onChange={change} />
    </div>
  );
}

interface RecordsProps {
  readonly planting: Planting;
  readonly onChange: (changes: PlantingChanges, title: string) => void;
}

function Records({ planting, onChange }: RecordsProps) {
  const plan = useShownPlan();
  const layoutId = useShownLayout().id;
  const { code } = planting;
  return (
    <>
      <h4>{texts.records}</h4>
      <TextField
        label={texts.lot}
        value={codesText(lotsToSow(plan, planting, undefined))}
        onApply={(text) => {
          const problem = nameProblem(text, { tooLong: texts.lotCodesTooLong });
          if (problem !== null) return problem;
          commit(sowFromCodes(layoutId, planting.id, text, steps.setLot(code)));
          return null;
        }}
      />
      {plan.lots.length > 0 && (
        <Suspense fallback={null}>
          <SowingLine planting={planting} />
        </Suspense>
      )}
      <NoteField
        label={texts.note}
        value={planting.note ?? ""}
        onApply={(text) => onChange({ note: text === "" ? undefined : text }, steps.noteOn(code))}
      />
    </>
  );
}
