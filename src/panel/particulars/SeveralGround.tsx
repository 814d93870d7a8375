import { changeSurrounding } from "../../core/edits/object-edits.ts";
import { outlineArea, outlineOf } from "../../core/geometry/outline.ts";
import { outlinePerimeter } from "../../core/geometry/perimeter.ts";
import { formatArea, formatLength } from "../../core/model/length.ts";
import type { Surrounding } from "../../core/model/plan.ts";
import { ChoiceField } from "../form/ChoiceField.tsx";
import { commit } from "../state/plan-actions.ts";
import { choicesOf, floweringWords, surroundingWords } from "../state/plan-words.ts";
import { type SelectedObjects, sharedValue } from "../state/selected-objects.ts";
import { useShownPlan } from "../state/use-shown-plan.ts";
import * as texts from "./dialog-words.ts";
import * as steps from "./step-words.ts";

type Change = Parameters<typeof changeSurrounding>[1];

/** Fields several surroundings share. */
export function SeveralSurroundings({ items }: { readonly items: readonly Surrounding[] }) {
  const what = steps.groundCount(items.length);
  const change = (changes: Change, title: string) =>
    commit({
      title,
      apply: (plan) =>
        items.reduce((next, { id }) => changeSurrounding(id, changes, "").apply(next), plan),
    });
  const sources = items.every((item) => item.what === "pollen" || item.kind !== undefined);
  return (
    <div className="fields">
      <h3>{what}</h3>
      <ChoiceField
        label={texts.whatTheyAre}
        value={sharedValue(items, (item) => item.what)?.value ?? null}
        // A pollen source needs its kind: only what has one already can become one.
        choices={choicesOf(surroundingWords).filter(({ value }) => value !== "pollen" || sources)}
        onPick={(sort) => change({ what: sort }, steps.changeWhatTheyAre(what))}
      />
      {items.every((item) => item.what === "pollen") && (
        <ChoiceField
          label={texts.flowering}
          value={sharedValue(items, (item) => item.flowering)?.value ?? null}
          choices={choicesOf(floweringWords)}
          onPick={(flowering) => change({ flowering }, steps.changeFlowering(what))}
        />
      )}
    </div>
  );
}

/** Ground and edges of all that is selected, each kind by itself: beds hold their plantings. */
export function GroundSums({ selected }: { readonly selected: SelectedObjects }) {
  const unit = useShownPlan().units;
  const sums = [
    { name: texts.bedsTogether, items: selected.beds },
    { name: texts.plantingsTogether, items: selected.plantings },
    { name: texts.surroundingsTogether, items: selected.surroundings },
  ].flatMap(({ name, items }) => {
    const outlines = items.map(({ outline }) => outlineOf(outline));
    const areaM2 = outlines.reduce((sum, outline) => sum + outlineArea(outline), 0);
    const aroundM = outlines.reduce((sum, outline) => sum + outlinePerimeter(outline), 0);
    return aroundM === 0 ? [] : [{ name, areaM2, aroundM }];
  });
  return sums.map(({ name, areaM2, aroundM }) => (
    <div key={name} className="field">
      <span className="field-name">{name}</span>
      <span className="field-value">
        {texts.areaAndEdge(formatArea(areaM2, unit), formatLength(aroundM, unit))}
      </span>
    </div>
  ));
}
