import type { Comparison } from "../../core/compare/compare-layouts.ts";
import { measureText, measureTitle } from "../../core/compare/compare-words.ts";
import type { Plan } from "../../core/model/plan.ts";
import { OwnTotalRow, WeightCell } from "./CompareWeights.tsx";
import { useCompareWeights } from "./compare-weights.ts";
import { planNow } from "../state/plan-actions.ts";
import { viewNow } from "../state/view-state.ts";

interface CompareMeasuresProps {
  readonly comparison: Comparison;
  readonly plan: Plan;
}

/** One row for each measure, the better one marked. What a row weighs is the grower's to say. */
export function CompareMeasures({ comparison, plan }: CompareMeasuresProps) {
  const { isWeighing, toggle } = useCompareWeights();
  return (
    <div className="table-scroll" role="region" tabIndex={0} aria-label="Measures">
      <table className="measures">
        <caption>Measures; ✓ marks the better one in its row, none where all are equal</caption>
        <thead>
          <tr>
            <th scope="col">Measure</th>
            {isWeighing && <th scope="col">Your weight for each</th>}
            {comparison.layouts.map(({ id, name }) => (
              <LayoutHeading key={id} id={id} name={name} />
            ))}
          </tr>
        </thead>
        <tbody>
          {comparison.measures.map((measure) => (
            <tr key={measure.name}>
              <th scope="row">{measureTitle(measure.name, comparison)}</th>
              {isWeighing && (
                <WeightCell measure={measure} title={measureTitle(measure.name, comparison)} />
              )}
              {measure.values.map((value, index) => (
                <td
                  key={comparison.layouts[index]?.id}
                  className={measure.isBest[index] ? "better" : undefined}
                >
                  {measureText(value, measure, plan.units)}
                  {measure.isBest[index] && (
                    <>
                      <span aria-hidden="true"> ✓</span>
                      <span className="visually-hidden">, better</span>
                    </>
                  )}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
        {isWeighing && (
          <tfoot>
            <OwnTotalRow comparison={comparison} />
          </tfoot>
        )}
      </table>
      <button type="button" className="quiet" aria-pressed={isWeighing} onClick={toggle}>
        Weigh measures
      </button>
    </div>
  );
}

function LayoutHeading({ id, name }: { readonly id: string; readonly name: string }) {
  const show = () => {
    planNow().showLayout(id);
    viewNow().showSheet();
  };
  return (
    <th scope="col">
      {name}{" "}
      <button
        type="button"
        className="link"
        aria-label={`Show ${name} on the sheet`}
        onClick={show}
      >
        Show
      </button>
    </th>
  );
}
