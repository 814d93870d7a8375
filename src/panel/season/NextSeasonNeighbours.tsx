import type { NeighbourChoice } from "../../core/seasons/neighbours-ahead.ts";
import { type NextSeasonChoices, neighbourChoice } from "../../core/seasons/season-choices.ts";
import { neighbourWords } from "../../core/seasons/season-words.ts";
import type { Plan } from "../../core/model/plan.ts";
import { choicesOf } from "../state/plan-words.ts";
import { RowChoice } from "./NextSeasonPlots.tsx";
import * as texts from "./words.ts";

interface NextSeasonNeighboursProps {
  readonly plan: Plan;
  readonly choices: NextSeasonChoices;
  readonly onSet: (change: Partial<NextSeasonChoices>) => null;
}

/** Pollen sources around: what was known of them was this season's word. */
export function NextSeasonNeighbours({ plan, choices, onSet }: NextSeasonNeighboursProps) {
  const sources = plan.surroundings.filter(({ what }) => what === "pollen");
  if (plan.surroundings.length === 0) return null;
  const pick = (id: string, choice: NeighbourChoice) => {
    onSet({ neighbours: new Map(choices.neighbours).set(id, choice) });
  };
  return (
    <section aria-label={texts.whatStandsAround}>
      <h3>{texts.whatStandsAround}</h3>
      <p className="soft">{texts.hedgesBuildingsLikeStay}</p>
      {sources.length > 0 && (
        <div
          className="table-scroll csv-table"
          role="region"
          tabIndex={0}
          aria-label={texts.sources}
        >
          <table>
            <thead>
              <tr>
                <th scope="col">{texts.pollenSource}</th>
                <th scope="col">{texts.nextSeason}</th>
              </tr>
            </thead>
            <tbody>
              {sources.map((source) => (
                <tr key={source.id}>
                  <th scope="row">{source.label}</th>
                  <td>
                    <RowChoice
                      label={texts.nextSeasonLabel(source.label)}
                      value={neighbourChoice(source, choices)}
                      choices={choicesOf(neighbourWords)}
                      onPick={(choice) => pick(source.id, choice)}
                    />
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
    </section>
  );
}
