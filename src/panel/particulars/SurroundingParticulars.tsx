import { changeSurrounding } from "../../core/edits/object-edits.ts";
import { roundShape } from "../../core/geometry/round.ts";
import type { Surrounding } from "../../core/model/plan.ts";
import { CheckField, ChoiceField } from "../form/ChoiceField.tsx";
import { CrossingList } from "../findings/CrossingList.tsx";
import { EntryList } from "../record/EntryList.tsx";
import { KindField } from "../kinds/KindField.tsx";
import { LengthField } from "../form/LengthField.tsx";
import { OutlineFields } from "./OutlineFields.tsx";
import { NoteField, TextField } from "../form/TextField.tsx";
import { WindowField } from "../form/WindowField.tsx";
import { nameProblem } from "../form/name-problem.ts";
import { reachWords } from "./reach-words.ts";
import { choicesOf, coverWords, floweringWords, surroundingWords } from "../state/plan-words.ts";
import { commit } from "../state/plan-actions.ts";
import * as texts from "./dialog-words.ts";
import * as steps from "./step-words.ts";

type Change = (changes: Parameters<typeof changeSurrounding>[1], title: string) => void;

export function SurroundingParticulars({ surrounding }: { readonly surrounding: Surrounding }) {
  const { id, label } = surrounding;
  const change: Change = (changes, title) => commit(changeSurrounding(id, changes, title));
  const rename = (text: string) => {
    const problem = nameProblem(text, { isNeeded: texts.nameNeeded });
    if (problem !== null) return problem;
    change({ label: text.trim() }, steps.rename(label, text.trim()));
    return null;
  };
  return (
    <div className="fields">
      <h3>{label}</h3>
      <TextField label={texts.name} value={label} isWide onApply={rename} />
      <ChoiceField
        label={texts.whatItIs}
        value={surrounding.what}
        choices={choicesOf(surroundingWords)}
        onPick={(what) => change({ what }, steps.changeWhatItIs(label))}
      />
      {surrounding.what === "slope" && <p className="field-hint">{texts.slopeHint}</p>}
      {surrounding.what === "pollen" && <PollenFields surrounding={surrounding} change={change} />}
      <h4>{texts.place}</h4>
      {surrounding.outline.shape === "point" && (
        <SpreadField surrounding={surrounding} change={change} />
      )}
      <OutlineFields id={id} name={label} outline={surrounding.outline} />
      <NoteField
        label={texts.note}
        value={surrounding.note ?? ""}
        onApply={(text) => change({ note: text === "" ? undefined : text }, steps.noteOn(label))}
      />
      {surrounding.what === "pollen" && <CrossingList id={id} />}
      {surrounding.what === "pollen" && <EntryList of={id} plot={label} isOurs={false} />}
    </div>
  );
}

/** A single place grows into something round once a diameter is given: a tree's canopy, a patch. */
function SpreadField({ surrounding, change }: PollenFieldsProps) {
  const { what, label, outline } = surrounding;
  if (outline.shape !== "point") return null;
  const { x, y } = outline;
  return (
    <LengthField
      label={what === "tree" ? texts.canopyAcross : texts.diameter}
      value={undefined}
      isSize
      placeholder={texts.aSinglePlace}
      onApply={(diameterM) => {
        change({ outline: roundShape({ x, y, diameterM }) }, steps.setSize(label));
        return null;
      }}
    />
  );
}

interface PollenFieldsProps {
  readonly surrounding: Surrounding;
  readonly change: Change;
}

function PollenFields({ surrounding, change }: PollenFieldsProps) {
  const { label } = surrounding;
  const setVariety = (text: string) => {
    const problem = nameProblem(text);
    if (problem !== null) return problem;
    const varietyName = text.trim() === "" ? undefined : text.trim();
    change({ varietyName }, steps.setVariety(label));
    return null;
  };
  return (
    <>
      <KindField
        kindId={surrounding.kind}
        onPick={(kind) => change({ kind }, steps.setKind(label))}
      />
      <TextField
        label={texts.variety}
        value={surrounding.varietyName ?? ""}
        placeholder={texts.unknown}
        isWide
        onApply={setVariety}
      />
      <ChoiceField
        label={texts.flowering}
        value={surrounding.flowering}
        choices={choicesOf(floweringWords)}
        onPick={(flowering) => change({ flowering }, steps.changeFlowering(label))}
      />
      <ChoiceField
        label={texts.cover}
        value={surrounding.cover}
        choices={choicesOf(coverWords)}
        onPick={(cover) => change({ cover }, steps.changeCover(label))}
      />
      <ChoiceField
        label={reachWords.label}
        value={surrounding.reach ?? "unsaid"}
        choices={reachWords.choices}
        onPick={(reach) =>
          change({ reach: reach === "unsaid" ? undefined : reach }, reachWords.title(label))
        }
      />
      <WindowField
        label={texts.bloomDates}
        value={surrounding.bloom}
        onApply={(bloom) => change({ bloom }, steps.setBloom(label))}
      />
      <CheckField
        label={texts.everyYear}
        isOn={surrounding.everyYear === true}
        onSet={(isOn) =>
          change(
            { everyYear: isOn ? true : undefined },
            isOn ? steps.sameEveryYear(label) : steps.askEveryYear(label),
          )
        }
      />
    </>
  );
}
