import type { PlotFate } from "../../core/seasons/plot-fate.ts";
import { unshelvedPlots } from "../../core/seasons/unshelved.ts";
import type { Plan } from "../../core/model/plan.ts";
import { headOfSeedList, unshelvedWords } from "../../core/seasons/next-season-report.ts";

interface NextSeasonSeedProps {
  readonly plan: Plan;
  readonly next: Plan;
  readonly plots: readonly PlotFate[];
  /** The day it is made on. */
  readonly on: number;
}

/** What heads the seed list of the season after, and the harvests that are on no shelf yet. */
export function NextSeasonSeed({ plan, next, plots, on }: NextSeasonSeedProps) {
  const head = headOfSeedList(next);
  const missing = unshelvedWords(unshelvedPlots(plan, plots, on));
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
      {missing !== "" && <p className="caution-text">! {missing}</p>}
    </section>
  );
}
