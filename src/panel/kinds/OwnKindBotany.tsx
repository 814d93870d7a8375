import type { OwnKind } from "../../core/model/plan.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { ChoiceField } from "../form/ChoiceField.tsx";
import { nameProblem } from "../form/name-problem.ts";
import { TextField } from "../form/TextField.tsx";
import { type ChangeOwnKind, groupChoices, speciesChoices } from "./own-kind-edit.ts";
import { choicesOf } from "../state/plan-words.ts";
import { useShownPlan } from "../state/use-shown-plan.ts";

interface OwnKindPartProps {
  readonly own: OwnKind;
  readonly onChange: ChangeOwnKind;
}

const lifeCycleWords = { annual: "annual", biennial: "biennial", perennial: "perennial" } as const;
const carrierWords = {
  insects: "insects",
  wind: "wind",
  "insects and wind": "insects and wind",
} as const;
const breedingWords = {
  selfing: "selfing",
  "mostly selfing": "mostly selfing",
  outcrossing: "outcrossing",
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
        label="Name"
        value={own.name}
        isWide
        onApply={(typed) => nameProblem(typed) ?? onChange({ name: typed.trim() })}
      />
      <TextField
        label="Botanical name"
        value={own.botanicalName ?? ""}
        isWide
        onApply={(typed) => nameProblem(typed) ?? onChange({ botanicalName: text(typed) })}
      />
      <ChoiceField
        label="Crossing group"
        value={own.group}
        choices={groupChoices(plan, own)}
        onPick={(group) => onChange({ group, species: undefined })}
        hint="Kinds of different groups do not cross."
      />
      {species.length > 0 && (
        <ChoiceField
          label="Species"
          value={species.find(({ value }) => value === ownSpecies)?.value ?? ANOTHER}
          choices={[{ value: ANOTHER, label: "another one" }, ...species]}
          onPick={(picked) => onChange({ species: picked === ANOTHER ? undefined : picked })}
          hint="One species crosses freely with itself; nothing is known of another, so it counts in full."
        />
      )}
      <ChoiceField
        label="Life cycle"
        value={own.lifeCycle}
        choices={choicesOf(lifeCycleWords)}
        onPick={(lifeCycle) => onChange({ lifeCycle })}
      />
      <ChoiceField
        label="Pollen carried by"
        value={own.carrier}
        choices={choicesOf(carrierWords)}
        onPick={(carrier) => onChange({ carrier })}
      />
      <ChoiceField
        label="Breeding"
        value={own.breeding}
        choices={choicesOf(breedingWords)}
        onPick={(breeding) => onChange({ breeding })}
      />
    </>
  );
}
