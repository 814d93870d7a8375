import { useState } from "react";
import { METRES_PER_FOOT, formatArea } from "../../core/model/length.ts";
import type { Plan } from "../../core/model/plan.ts";
import { setYears } from "../../core/renewal/years-edits.ts";
import type { PlanYears } from "../../core/renewal/years-of-plan.ts";
import { LEAST_SEASONS, MOST_SEASONS } from "../../core/renewal/years-settings.ts";
import { ChoiceField } from "../form/ChoiceField.tsx";
import { CountField, ValueField } from "../form/NumberField.tsx";
import { commit } from "../state/plan-actions.ts";
import { endChoices, yearsPageWords as words } from "./years-page-words.ts";

type Change = Parameters<typeof setYears>[0];

function set(change: Change): null {
  commit(setYears(change, words.undo.settings));
  return null;
}

const seasonChoices = Array.from({ length: MOST_SEASONS - LEAST_SEASONS + 1 }, (_, at) => {
  const value = String(LEAST_SEASONS + at);
  return { value, label: value };
});

interface YearsSettingsProps {
  readonly plan: Plan;
  readonly years: PlanYears;
}

/** What the lay-out goes by; each change is judged at once. */
export function YearsSettings({ plan, years: { settings, bedsM2, years } }: YearsSettingsProps) {
  // Folded away where years are laid out already: they are what is looked at then.
  const [isOpen, setOpen] = useState(() => years.every((bits) => bits === 0));
  const isMetric = plan.units === "m";
  const square = isMetric ? 1 : METRES_PER_FOOT * METRES_PER_FOOT;
  const shownGround =
    settings.groundM2 === null ? undefined : Number((settings.groundM2 / square).toFixed(1));
  const setGround = (area: number | undefined) => {
    if (area !== undefined && !(area > 0 && area < 1e8)) return words.groundRefused;
    return set({ groundM2: area === undefined ? undefined : area * square });
  };
  return (
    <details
      className="years-settings"
      open={isOpen}
      onToggle={(event) => setOpen(event.currentTarget.open)}
    >
      <summary>{words.settings}</summary>
      <div className="years-fields">
        <ChoiceField
          label={words.seasons}
          value={String(settings.seasons)}
          choices={seasonChoices}
          onPick={(text) => set({ seasons: Number(text) })}
        />
        <ChoiceField
          label={words.end}
          value={settings.end}
          choices={endChoices}
          onPick={(end) => set({ end })}
        />
        <CountField
          label={words.cages}
          value={settings.cages}
          onApply={(cages) => set({ cages: atMost(cages, MOST_COVERS) })}
        />
        <CountField
          label={words.bags}
          value={settings.bags}
          onApply={(bags) => set({ bags: atMost(bags, MOST_COVERS) })}
        />
        <CountField
          label={words.most}
          value={settings.mostVarieties ?? undefined}
          hint={words.mostHint}
          onApply={(most) =>
            set({ mostVarieties: most === 0 ? undefined : atMost(most, MOST_COVERS) })
          }
        />
        <ValueField
          label={words.ground(isMetric ? words.squareMetres : words.squareFeet)}
          value={shownGround}
          hint={words.groundHint(bedsM2 === null ? null : formatArea(bedsM2, plan.units))}
          onApply={setGround}
        />
      </div>
    </details>
  );
}

/** As many as a plan file takes. */
const MOST_COVERS = 10_000;

function atMost(count: number | undefined, most: number): number | undefined {
  return count === undefined ? undefined : Math.min(count, most);
}
