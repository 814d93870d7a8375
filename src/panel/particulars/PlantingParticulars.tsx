import { useMemo } from "react";
import { alongBedOf } from "../../core/beds/bed-stretch.ts";
import { changePlantings } from "../../core/edits/object-edits.ts";
import { sowFromCodes } from "../../core/edits/sown-lots.ts";
import { lotsToSow } from "../../core/lots/lot-book.ts";
import { codesText } from "../../core/lots/named-lots.ts";
import type { Planting } from "../../core/model/plan.ts";
import { BedOfPlanting } from "./BedOfPlanting.tsx";
import { BloomFields } from "../bloom/BloomFields.tsx";
import { ChoiceField } from "../form/ChoiceField.tsx";
import { CrossingList } from "../findings/CrossingList.tsx";
import { CrossingShareFold } from "../findings/CrossingShareFold.tsx";
import { IsolationFields } from "./IsolationFields.tsx";
import { OutlineFields } from "./OutlineFields.tsx";
import { PlantCountFields } from "./PlantCountFields.tsx";
import { NoteField, TextField } from "../form/TextField.tsx";
import { codeProblem } from "../beds/new-bed.ts";
import { choicesOf, purposeWords } from "../state/plan-words.ts";
import { useShownLayout, useShownPlan } from "../state/use-shown-plan.ts";
import { commit } from "../state/plan-actions.ts";

export function PlantingParticulars({ planting }: { readonly planting: Planting }) {
  const plan = useShownPlan();
  const layout = useShownLayout();
  const layoutId = useShownLayout().id;
  const { code } = planting;
  const change = (changes: Parameters<typeof changePlantings>[2], title: string) =>
    commit(changePlantings(layoutId, [planting.id], changes, title));
  const rename = (text: string) => {
    const problem = codeProblem(layout, text, planting.id);
    if (problem !== null) return problem;
    change({ code: text.trim() }, `Rename ${code} to ${text.trim()}`);
    return null;
  };
  const { varieties } = plan;
  const choices = useMemo(
    () => varieties.map(({ id, name }) => ({ value: id, label: name })),
    [varieties],
  );
  return (
    <div className="fields">
      <h3>
        Planting <span className="code">{code}</span>
      </h3>
      <ChoiceField
        label="Variety"
        value={planting.variety}
        choices={choices}
        onPick={(variety) => change({ variety }, `Change variety of ${code}`)}
      />
      <TextField label="Code" value={code} onApply={rename} />
      <ChoiceField
        label="Purpose"
        value={planting.purpose}
        choices={choicesOf(purposeWords)}
        onPick={(purpose) => change({ purpose }, `Change purpose of ${code}`)}
      />
      <PlantCountFields planting={planting} />
      <h4>Place</h4>
      <BedOfPlanting planting={planting} />
      <OutlineFields
        id={planting.id}
        name={code}
        outline={planting.outline}
        isLengthElsewhere={alongBedOf(planting, layout.beds) !== null}
      />
      <h4>Bloom</h4>
      <BloomFields planting={planting} onChange={change} />
      <h4>Isolation</h4>
      <IsolationFields planting={planting} onChange={change} />
      <CrossingList id={planting.id} />
      {planting.purpose === "seed" && <CrossingShareFold key={planting.id} planting={planting} />}
      <h4>Records</h4>
      <TextField
        label="Lot"
        value={codesText(lotsToSow(plan, planting, undefined))}
        onApply={(text) => {
          if (text.length > 200) return "The codes of lots have at most 200 letters";
          commit(sowFromCodes(layoutId, planting.id, text, `Set lot of ${code}`));
          return null;
        }}
      />
      <NoteField
        label="Note"
        value={planting.note ?? ""}
        onApply={(text) => change({ note: text === "" ? undefined : text }, `Note on ${code}`)}
      />
    </div>
  );
}
