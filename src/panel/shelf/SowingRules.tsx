import { changePlan } from "../../core/edits/object-edits.ts";
import { EMERGENCE, USUAL_SPARE } from "../../core/lots/sowing.ts";
import type { Plan } from "../../core/model/plan.ts";
import { commit, useKept } from "../state/plan-actions.ts";
import { ValueField } from "../form/NumberField.tsx";
import * as texts from "./words.ts";

/** How much more is sown than must stand, for the whole plan. */
export function SowingRules() {
  const { plan } = useKept();
  const { sowing = {} } = plan;
  const set = (changes: NonNullable<Plan["sowing"]>) => {
    commit(changePlan({ sowing: { ...sowing, ...changes } }, texts.changeSowing));
    return null;
  };
  const percent = (value: number | undefined) =>
    value === undefined ? undefined : Math.round(value * 1000) / 10;
  const emergence = (key: "emergence" | "trayEmergence") => (value: number | undefined) => {
    if (value !== undefined && (value <= 0 || value > 100)) return texts.typePercentage;
    return set({ [key]: value === undefined ? undefined : value / 100 });
  };
  return (
    <details className="lots-rules">
      <summary>{texts.howMuchIsSown}</summary>
      <p className="lots-note">
        {texts.seedsPlantsXSpare(EMERGENCE.good * 100, EMERGENCE.fair * 100, EMERGENCE.poor * 100)}
      </p>
      <div className="fields">
        <ValueField
          label={texts.comesUpOutdoors}
          value={percent(sowing.emergence)}
          placeholder={`${EMERGENCE.fair * 100}`}
          onApply={emergence("emergence")}
        />
        <ValueField
          label={texts.comesUpInTrays}
          value={percent(sowing.trayEmergence)}
          placeholder={`${EMERGENCE.good * 100}`}
          onApply={emergence("trayEmergence")}
        />
        <ValueField
          label={texts.sparePlants}
          value={percent(sowing.spare)}
          placeholder={`${USUAL_SPARE * 100}`}
          onApply={(value) => {
            if (value !== undefined && (value < 0 || value > 1000)) return "Type 0 to 1000";
            return set({ spare: value === undefined ? undefined : value / 100 });
          }}
        />
      </div>
    </details>
  );
}
