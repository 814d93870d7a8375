import { changePlan } from "../../core/edits/object-edits.ts";
import type { Plan, PurityLevel } from "../../core/model/plan.ts";
import { type WheelChoice, useSheetPreferences } from "../../store/window/sheet-preferences.ts";
import { ChoiceField } from "../form/ChoiceField.tsx";
import { Dialog } from "../form/Dialog.tsx";
import { SeasonFields } from "./SeasonFields.tsx";
import { SiteFields } from "./SiteFields.tsx";
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
