import { usePlanStore } from "../../store/plan/plan-store.ts";
import { DayField } from "../form/DayField.tsx";
import { useShownPlan } from "../state/use-shown-plan.ts";
import { today } from "../state/today.ts";
import { grownWords as words } from "./grown-words.ts";
import { readAsGrownOn, readAsPlanned, usualDay } from "./read-plan-as.ts";
import "./grown.css";

/** As planned, or as grown on a day: for the sheet, the findings, the bloom strip and paper alike. */
export function ReadingSwitch() {
  const reading = usePlanStore((state) => state.reading);
  const plan = useShownPlan();
  return (
    <div className="reading-switch" role="group" aria-label={words.legend}>
      <span className="reading-choice">
        <button type="button" aria-pressed={reading === null} onClick={readAsPlanned}>
          {words.planned}
        </button>
        <button
          type="button"
          aria-pressed={reading !== null}
          onClick={() => readAsGrownOn(reading?.on ?? usualDay(plan, today()))}
        >
          {words.grown}
        </button>
      </span>
      {reading && (
        <DayField
          label={words.day}
          value={reading.on}
          onApply={(on) => {
            if (on === undefined) return words.dayNeeded;
            readAsGrownOn(on);
            return null;
          }}
        />
      )}
    </div>
  );
}
