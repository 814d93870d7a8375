import type { NeighbourChoice } from "../../core/seasons/neighbours-ahead.ts";
import { type NextSeasonChoices, neighbourChoice } from "../../core/seasons/season-choices.ts";
import { neighbourWords } from "../../core/seasons/season-words.ts";
import type { Plan } from "../../core/model/plan.ts";
import { choicesOf } from "../state/plan-words.ts";
import { RowChoice } from "./NextSeasonPlots.tsx";

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
    <section aria-label="What stands around">
      <h3>What stands around</h3>
      <p className="soft">
        Hedges, buildings and the like stay. Of a pollen source to be asked again the bloom dates,
        variety, cutting and cover are dropped: until they are known again, none of them keeps
        anything apart.
      </p>
      {sources.length > 0 && (
        <div className="table-scroll csv-table" role="region" tabIndex={0} aria-label="Sources">
          <table>
            <thead>
              <tr>
                <th scope="col">Pollen source</th>
                <th scope="col">Next season</th>
              </tr>
            </thead>
            <tbody>
              {sources.map((source) => (
                <tr key={source.id}>
                  <th scope="row">{source.label}</th>
                  <td>
                    <RowChoice
                      label={`${source.label}: next season`}
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
