import type { NextSeasonChoices } from "../../core/seasons/season-choices.ts";
import type { Fate, PlotFate } from "../../core/seasons/plot-fate.ts";
import { fateWords, wentToSeedWords } from "../../core/seasons/season-words.ts";
import type { Plan } from "../../core/model/plan.ts";
import { choicesOf } from "../state/plan-words.ts";
import { plotSummary } from "../../core/seasons/next-season-words.ts";
import * as texts from "./words.ts";

interface NextSeasonPlotsProps {
  readonly plan: Plan;
  readonly plots: readonly PlotFate[];
  readonly choices: NextSeasonChoices;
  readonly onSet: (change: Partial<NextSeasonChoices>) => null;
}

/** What became of each plot: most are over and become earlier crops of their ground. */
export function NextSeasonPlots({ plan, plots, choices, onSet }: NextSeasonPlotsProps) {
  if (plots.length === 0) return null;
  const setFate = (id: string, fate: Fate) => {
    onSet({ fates: new Map(choices.fates).set(id, fate) });
  };
  const setSeed = (id: string, told: PlotFate["wentToSeed"]) => {
    onSet({ wentToSeed: new Map(choices.wentToSeed).set(id, told) });
  };
  return (
    <section aria-label={texts.becamePlots}>
      <h3>{texts.becamePlotsName(plan.season.name)}</h3>
      <p className="soft">{plotSummary(plots)}</p>
      <div className="table-scroll csv-table" role="region" tabIndex={0} aria-label={texts.plots}>
        <table>
          <thead>
            <tr>
              <th scope="col">{texts.plot}</th>
              <th scope="col">{texts.variety}</th>
              <th scope="col">{texts.plants}</th>
              <th scope="col">{texts.whatBecameOfIt}</th>
              <th scope="col">{texts.seed}</th>
              <th scope="col">{texts.by}</th>
            </tr>
          </thead>
          <tbody>
            {plots.map((plot) => (
              <PlotRow key={plot.planting.id} plot={plot} onFate={setFate} onSeed={setSeed} />
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
}

interface PlotRowProps {
  readonly plot: PlotFate;
  readonly onFate: (id: string, fate: Fate) => void;
  readonly onSeed: (id: string, told: PlotFate["wentToSeed"]) => void;
}

function PlotRow({ plot, onFate, onSeed }: PlotRowProps) {
  const { planting, variety, kind, fate, fates, wentToSeed, isRecorded } = plot;
  const fateChoices = fates.map((value) => ({ value, label: fateWords[value] }));
  return (
    <tr>
      <th scope="row">{planting.code}</th>
      <td>
        {variety.name} <span className="soft">{kind.name}</span>
      </td>
      <td className="number">{planting.plants ?? "–"}</td>
      <td>
        <RowChoice
          label={texts.whatBecameOfItCode(planting.code)}
          value={fate}
          choices={fateChoices}
          onPick={(picked) => onFate(planting.id, picked)}
        />
      </td>
      <td>
        {fate === "over" ? (
          <RowChoice
            label={texts.seedShed(planting.code)}
            value={wentToSeed}
            choices={choicesOf(wentToSeedWords)}
            onPick={(picked) => onSeed(planting.id, picked)}
          />
        ) : (
          "–"
        )}
      </td>
      <td>{isRecorded ? texts.record : texts.plan}</td>
    </tr>
  );
}

interface RowChoiceProps<Value extends string> {
  readonly label: string;
  readonly value: Value;
  readonly choices: readonly { readonly value: Value; readonly label: string }[];
  readonly onPick: (value: Value) => void;
}

/** A choice in a row of a table, whose heading is its label to the eye. */
export function RowChoice<Value extends string>(props: RowChoiceProps<Value>) {
  const { label, value, choices, onPick } = props;
  return (
    <select
      aria-label={label}
      value={value}
      onChange={(event) => {
        const picked = choices.find((choice) => choice.value === event.target.value);
        if (picked) onPick(picked.value);
      }}
    >
      {choices.map((choice) => (
        <option key={choice.value} value={choice.value}>
          {choice.label}
        </option>
      ))}
    </select>
  );
}
