import type { Comparison } from "../../core/compare/compare-layouts.ts";
import { measureText, measureTitle } from "../../core/compare/compare-words.ts";
import type { Plan } from "../../core/model/plan.ts";
import { OwnTotalRow, WeightCell } from "./CompareWeights.tsx";
import { useCompareWeights } from "./compare-weights.ts";
import { planNow } from "../state/plan-actions.ts";
import { viewNow } from "../state/view-state.ts";
import * as texts from "./words.ts";

interface CompareMeasuresProps {
  readonly comparison: Comparison;
  readonly plan: Plan;
}

/** One row for each measure, the better one marked. What a row weighs is the grower's to say. */
export function CompareMeasures({ comparison, plan }: CompareMeasuresProps) {
  const { isWeighing, toggle } = useCompareWeights();
  return (
    <div className="table-scroll" role="region" tabIndex={0} aria-label={texts.measures}>
      <table className="measures">
        <caption>{texts.measuresMarksBetterOne}</caption>
        <thead>
          <tr>
            <th scope="col">{texts.measure}</th>
            {isWeighing && <th scope="col">{texts.yourWeightForEach}</th>}
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
                      <span className="visually-hidden">, {texts.better}</span>
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
        {texts.weighMeasures}
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
      <button type="button" className="link" aria-label={texts.showOnTheSheet(name)} onClick={show}>
        {texts.show}
      </button>
    </th>
  );
}
