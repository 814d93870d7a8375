import { layoutDifferences } from "../../core/compare/layout-differences.ts";
import { changeWords, differenceName } from "../../core/compare/compare-words.ts";
import type { Layout, Plan } from "../../core/model/plan.ts";
import * as texts from "./words.ts";

interface CompareDifferencesProps {
  readonly plan: Plan;
  readonly from: Layout;
  readonly others: readonly Layout[];
}

/** What each layout has otherwise than the first, in words. */
export function CompareDifferences({ plan, from, others }: CompareDifferencesProps) {
  return (
    <div className="differences">
      {others.map((layout) => (
        <DifferenceList key={layout.id} plan={plan} from={from} to={layout} />
      ))}
    </div>
  );
}

interface DifferenceListProps {
  readonly plan: Plan;
  readonly from: Layout;
  readonly to: Layout;
}

function DifferenceList({ plan, from, to }: DifferenceListProps) {
  const differences = layoutDifferences(from, to);
  return (
    <section aria-label={texts.differencesOfFrom(to.name, from.name)}>
      <h2>
        {to.name} <span className="region-note">{texts.differsFrom(from.name)}</span>
      </h2>
      {differences.length === 0 ? (
        <p>{texts.inNothing}</p>
      ) : (
        <ul className="plain-list">
          {differences.map((difference) => (
            <li key={`${difference.what} ${difference.id}`}>
              <b>{differenceName(difference, plan)}</b>: {changeWords(difference, plan).join(", ")}
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
