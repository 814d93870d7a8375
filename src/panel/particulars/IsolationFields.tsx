import { requirementOf } from "../../core/checks/requirement.ts";
import type { Stand } from "../../core/checks/stand.ts";
import type { changePlantings } from "../../core/edits/object-edits.ts";
import type { LengthUnit } from "../../core/model/length.ts";
import type { Planting, PurityLevel } from "../../core/model/plan.ts";
import { AdjustmentFields } from "./AdjustmentFields.tsx";
import { CheckField, ChoiceField } from "../form/ChoiceField.tsx";
import { LengthField } from "../form/LengthField.tsx";
import { type Choice, choicesOf, coverWords, levelWords } from "../state/plan-words.ts";
import { requirementWords } from "../state/requirement-words.ts";
import { useShownPlan, useShownResult } from "../state/use-shown-plan.ts";
import { levelNames } from "../../core/words/level-words.ts";
import * as texts from "./dialog-words.ts";
import * as steps from "./step-words.ts";

interface IsolationFieldsProps {
  readonly planting: Planting;
  readonly onChange: (changes: Parameters<typeof changePlantings>[2], title: string) => void;
}

/** A planting's own level, or the plan's. */
export function levelChoices(planLevel: PurityLevel): readonly Choice<PurityLevel | "plan">[] {
  return [
    { value: "plan", label: texts.asThePlan(levelNames[planLevel]) },
    ...choicesOf(levelWords),
  ];
}

/** What it needs; beside a distance of the grower's own, what is published. */
function needsWords({ requirement, variety, kind, level }: Stand, unit: LengthUnit): string {
  const needs = texts.needs(requirementWords(requirement, unit));
  if (variety === null || level === null || (requirement?.from ?? "figure") === "figure") {
    return needs;
  }
  const { isolationM: _own, ...asPublished } = variety;
  const published = requirementOf({}, asPublished, kind, level);
  return texts.besidePublished(needs, requirementWords(published, unit));
}

/** Cover, level and distance of one planting. */
export function IsolationFields({ planting, onChange }: IsolationFieldsProps) {
  const plan = useShownPlan();
  const stand = useShownResult().standById.get(planting.id);
  const { code } = planting;
  const setDistance = (isolationM: number | undefined) =>
    onChange({ isolationM }, steps.setDistance(code));
  return (
    <>
      <ChoiceField
        label={texts.cover}
        value={planting.cover}
        choices={choicesOf(coverWords)}
        onPick={(cover) => onChange({ cover }, steps.changeCover(code))}
      />
      <ChoiceField
        label={texts.purityLevel}
        value={planting.level ?? "plan"}
        choices={levelChoices(plan.level)}
        onPick={(level) =>
          onChange({ level: level === "plan" ? undefined : level }, steps.changeLevel(code))
        }
      />
      <LengthField
        label={texts.ownDistance}
        value={planting.isolationM}
        placeholder={texts.asPublished}
        onApply={(metres) => {
          setDistance(metres);
          return null;
        }}
        onClear={() => setDistance(undefined)}
        hint={stand && needsWords(stand, plan.units)}
      />
      {stand && (
        <AdjustmentFields
          planting={planting}
          kindId={stand.kind.id}
          isTyped={stand.requirement !== null && stand.requirement.from !== "figure"}
          figure={stand.requirement}
          onChange={(adjustments, title) => onChange({ adjustments }, title)}
        />
      )}
      <CheckField
        label={texts.keepApart}
        isOn={planting.keepApart === true}
        onSet={(isOn) => onChange({ keepApart: isOn ? true : undefined }, steps.keepApart(code))}
      />
    </>
  );
}
