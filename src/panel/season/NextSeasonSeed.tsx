import { useMemo } from "react";
import { lotsSown } from "../../core/seasons/lots-sown.ts";
import type { PlotFate } from "../../core/seasons/plot-fate.ts";
import type { NextSeasonChoices } from "../../core/seasons/season-choices.ts";
import { unshelvedPlots } from "../../core/seasons/unshelved.ts";
import type { Plan } from "../../core/model/plan.ts";
import { CheckField } from "../form/ChoiceField.tsx";
import { headOfSeedList, sownWords, unshelvedWords } from "../../core/seasons/next-season-words.ts";
import * as texts from "./words.ts";

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
    <section aria-label={texts.headSeedList}>
      <h3>{texts.headsTheSeedList}</h3>
      {head.length === 0 ? (
        <p className="soft">{texts.nothingWaitsStoreNo}</p>
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
            label={texts.takeOffShelfSeasons}
            isOn={choices.takesSown}
            onSet={(takesSown) => onSet({ takesSown })}
          />
          <p className="field-hint">{texts.leaveOffWhereLots(sownWords(sown))}</p>
        </>
      )}
      <CheckField
        label={texts.wantManyPlantsAgain}
        isOn={choices.keepsWanted}
        onSet={(keepsWanted) => onSet({ keepsWanted })}
      />
      {missing !== "" && <p className="caution-text">! {missing}</p>}
    </section>
  );
}
