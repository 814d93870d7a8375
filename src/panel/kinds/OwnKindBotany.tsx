import type { OwnKind } from "../../core/model/plan.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { ChoiceField } from "../form/ChoiceField.tsx";
import { nameProblem } from "../form/name-problem.ts";
import { TextField } from "../form/TextField.tsx";
import { type ChangeOwnKind, groupChoices, speciesChoices } from "./own-kind-edit.ts";
import { choicesOf } from "../state/plan-words.ts";
import { useShownPlan } from "../state/use-shown-plan.ts";
import * as texts from "./words.ts";

interface OwnKindPartProps {
  readonly own: OwnKind;
  readonly onChange: ChangeOwnKind;
}

const lifeCycleWords = { annual: "annual", biennial: "biennial", perennial: "perennial" } as const;
const carrierWords = {
  insects: texts.carriedByInsects,
  wind: texts.carriedByWind,
  "insects and wind": texts.carriedByBoth,
} as const;
const breedingWords = {
  selfing: texts.selfing,
  "mostly selfing": texts.mostlySelfing,
  outcrossing: texts.outcrossing,
} as const;

/** Another species than those of the group. */
const ANOTHER = "";

/** Names, and what decides crossing. */
export function OwnKindBotany({ own, onChange }: OwnKindPartProps) {
  const plan = useShownPlan();
  const book = usePlanStore((state) => state.book);
  const species = speciesChoices(own.group, own, book);
  const ownSpecies = own.species ?? own.botanicalName ?? own.name;
  const text = (typed: string) => (typed.trim() === "" ? undefined : typed.trim());
  return (
    <>
      <TextField
        label={texts.name}
        value={own.name}
        isWide
        onApply={(typed) => nameProblem(typed) ?? onChange({ name: typed.trim() })}
      />
      <TextField
        label={texts.botanicalName}
        value={own.botanicalName ?? ""}
        isWide
        onApply={(typed) => nameProblem(typed) ?? onChange({ botanicalName: text(typed) })}
      />
      <ChoiceField
        label={texts.crossingGroup}
        value={own.group}
        choices={groupChoices(plan, own)}
        onPick={(group) => onChange({ group, species: undefined })}
        hint={texts.kindsDifferentGroupsDo}
      />
      {species.length > 0 && (
        <ChoiceField
          label={texts.species}
          value={species.find(({ value }) => value === ownSpecies)?.value ?? ANOTHER}
          choices={[{ value: ANOTHER, label: texts.anotherSpecies }, ...species]}
          onPick={(picked) => onChange({ species: picked === ANOTHER ? undefined : picked })}
          hint={texts.oneSpeciesCrossesFreely}
        />
      )}
      <ChoiceField
        label={texts.lifeCycle}
        value={own.lifeCycle}
        choices={choicesOf(lifeCycleWords)}
        onPick={(lifeCycle) => onChange({ lifeCycle })}
      />
      <ChoiceField
        label={texts.pollenCarriedBy}
        value={own.carrier}
        choices={choicesOf(carrierWords)}
        onPick={(carrier) => onChange({ carrier })}
      />
      <ChoiceField
        label={texts.breeding}
        value={own.breeding}
        choices={choicesOf(breedingWords)}
        onPick={(breeding) => onChange({ breeding })}
      />
    </>
  );
}
