import { useMemo } from "react";
import { lotsSown } from "../../core/seasons/lots-sown.ts";
import type { PlotFate } from "../../core/seasons/plot-fate.ts";
import type { NextSeasonChoices } from "../../core/seasons/season-choices.ts";
import { unshelvedPlots } from "../../core/seasons/unshelved.ts";
import type { Plan } from "../../core/model/plan.ts";
import { CheckField } from "../form/ChoiceField.tsx";
import {
  headOfSeedList,
  sownWords,
  unshelvedWords,
} from "../../core/seasons/next-season-report.ts";

interface NextSeasonSeedProps {
  readonly plan: Plan;
  readonly next: Plan;
  readonly plots: readonly PlotFate[];
  readonly choices: NextSeasonChoices;
  readonly onSet: (change: Partial<NextSeasonChoices>) => null;
}

/** What heads the seed list of the season after, and the harvests that are on no shelf yet. */
export function NextSeasonSeed({ plan, next, plots, choices, onSet }: NextSeasonSeedProps) {
  const head = headOfSeedList(next);
  const sown = useMemo(() => lotsSown(plan, choices.layout, plots), [plan, choices.layout, plots]);
  const missing = unshelvedWords(unshelvedPlots(plan, plots, choices.on));
  return (
    <section aria-label="Head of the seed list">
      <h3>Heads the seed list</h3>
      {head.length === 0 ? (
        <p className="soft">Nothing waits in store, and no lot on the shelf asks to be renewed.</p>
      ) : (
        <ul className="plain-list">
          {head.map(({ id, name, reason }) => (
            <li key={id}>
              <strong>{name}</strong>: {reason}
            </li>
          ))}
        </ul>
      )}
      {sown.length > 0 && (
        <>
          <CheckField
            label="Take off the shelf what this season's plots were sown with, by the sowing list"
            isOn={choices.takesSown}
            onSet={(takesSown) => onSet({ takesSown })}
          />
          <p className="field-hint">
            {`${sownWords(sown)}. Leave it off where lots were weighed or counted since.`}
          </p>
        </>
      )}
      <CheckField
        label="Want as many plants again of what need not be renewed"
        isOn={choices.keepsWanted}
        onSet={(keepsWanted) => onSet({ keepsWanted })}
      />
      {missing !== "" && <p className="caution-text">! {missing}</p>}
    </section>
  );
}
