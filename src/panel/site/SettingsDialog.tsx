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
import * as texts from "./words.ts";
import { levelNames } from "../../core/words/level-words.ts";

/** What holds for the whole plan. Every field applies at once, as one step to undo. */
export function SettingsDialog({ onClose }: { readonly onClose: () => void }) {
  const plan = useShownPlan();
  const setLevel = (level: PurityLevel) =>
    commit(changePlan({ level }, texts.setLevel(levelNames[level])));
  const setUnits = (units: Plan["units"]) =>
    commit(changePlan({ units }, texts.showLengthsIn(unitWords[units])));
  return (
    <Dialog title={texts.planSettings} onClose={onClose} isWide>
      <div className="fields">
        <ChoiceField
          label={texts.purityLevel}
          value={plan.level}
          choices={choicesOf(levelWords)}
          onPick={setLevel}
          hint={texts.decidesPublishedIsolationDistances}
        />
        <ChoiceField
          label={texts.units}
          value={plan.units}
          choices={choicesOf(unitWords)}
          onPick={setUnits}
          hint={texts.onlyShownAnyUnit}
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
      label={texts.wheelOverTheSheet}
      value={wheel}
      choices={choicesOf(wheelWords)}
      onPick={chooseWheel}
      hint={texts.keptBrowserPinchingCtrl}
    />
  );
}

const wheelWords: Readonly<Record<WheelChoice, string>> = {
  guess: texts.wheelGuess,
  zoom: texts.wheelZooms,
  pan: texts.wheelPans,
};
