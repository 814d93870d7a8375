import { changePlan } from "../../core/edits/object-edits.ts";
import type { Plan, PurityLevel } from "../../core/model/plan.ts";
import { type WheelChoice, useSheetPreferences } from "../../store/window/sheet-preferences.ts";
import { ChoiceField } from "../form/ChoiceField.tsx";
import { DayField } from "../form/DayField.tsx";
import { Dialog } from "../form/Dialog.tsx";
import { SiteFields } from "./SiteFields.tsx";
import { TextField } from "../form/TextField.tsx";
import { choicesOf, levelWords, unitWords } from "../state/plan-words.ts";
import { useShownPlan } from "../state/use-shown-plan.ts";
import { commit } from "../state/plan-actions.ts";

/** What holds for the whole plan. Every field applies at once, as one step to undo. */
export function SettingsDialog({ onClose }: { readonly onClose: () => void }) {
  const plan = useShownPlan();
  const setLevel = (level: PurityLevel) => commit(changePlan({ level }, `Set level to ${level}`));
  const setUnits = (units: Plan["units"]) =>
    commit(changePlan({ units }, `Show lengths in ${unitWords[units]}`));
  return (
    <Dialog title="Plan settings" onClose={onClose} isWide>
      <div className="fields">
        <ChoiceField
          label="Purity level"
          value={plan.level}
          choices={choicesOf(levelWords)}
          onPick={setLevel}
          hint="Decides which published isolation distances apply."
        />
        <ChoiceField
          label="Units"
          value={plan.units}
          choices={choicesOf(unitWords)}
          onPick={setUnits}
          hint="Only what is shown; any unit can be typed in any field."
        />
        <WheelField />
        <SeasonFields plan={plan} />
        <SiteFields plan={plan} />
      </div>
    </Dialog>
  );
}

/** A choice of this browser: whoever opens the plan elsewhere has another wheel. */
function WheelField() {
  const wheel = useSheetPreferences((state) => state.wheel);
  const chooseWheel = useSheetPreferences((state) => state.chooseWheel);
  return (
    <ChoiceField
      label="Wheel over the sheet"
      value={wheel}
      choices={choicesOf(wheelWords)}
      onPick={chooseWheel}
      hint="Kept in this browser. Pinching, and Ctrl with the wheel, always zoom."
    />
  );
}

const wheelWords: Readonly<Record<WheelChoice, string>> = {
  guess: "Guess: a mouse zooms, a trackpad pans",
  zoom: "Zooms",
  pan: "Pans",
};

function SeasonFields({ plan }: { readonly plan: Plan }) {
  const { season } = plan;
  const set = (change: Partial<Plan["season"]>) => {
    const next = { ...season, ...change };
    if (next.first > next.last) return "The season would end before it starts";
    commit(changePlan({ season: next }, "Change the season"));
    return null;
  };
  return (
    <fieldset className="field-group">
      <legend>Season</legend>
      <TextField
        label="Name"
        value={season.name}
        onApply={(text) => {
          if (text.trim() === "") return "A season needs a name, for example 2027";
          if (text.length > 200) return "A name has at most 200 letters";
          return set({ name: text.trim() });
        }}
      />
      <DayField
        label="First day"
        value={season.first}
        onApply={(day) => (day === undefined ? "A season needs a first day" : set({ first: day }))}
      />
      <DayField
        label="Last day"
        value={season.last}
        onApply={(day) => (day === undefined ? "A season needs a last day" : set({ last: day }))}
      />
      <p className="field-hint">A season may cross New Year, for example July to June.</p>
    </fieldset>
  );
}
