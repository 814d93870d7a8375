import { useState } from "react";
import type { Comparison, Measure } from "../../core/compare/compare-layouts.ts";
import { isWeighable, ownTotals } from "../../core/compare/own-totals.ts";
import { useCompareWeights } from "./compare-weights.ts";
import * as texts from "./words.ts";

/** The weight of one measure, to be written in its row. */
export function WeightCell({
  measure,
  title,
}: {
  readonly measure: Measure;
  readonly title: string;
}) {
  const { weights, setWeight } = useCompareWeights();
  const [text, setText] = useState(String(weights[measure.name] ?? ""));
  if (!isWeighable(measure)) return <td>–</td>;
  const weight = weightOf(text);
  const change = (next: string) => {
    setText(next);
    setWeight(measure.name, weightOf(next) ?? 0);
  };
  return (
    <td>
      <input
        type="text"
        inputMode="decimal"
        size={5}
        aria-label={texts.weightOf(title)}
        aria-invalid={weight === null}
        value={text}
        onChange={(event) => change(event.target.value)}
      />
    </td>
  );
}

/** A number of 0 or more; 0 for an empty field, null for anything else. */
function weightOf(text: string): number | null {
  const number = Number(text.trim().replace(",", "."));
  return Number.isFinite(number) && number >= 0 ? number : null;
}

/** The last row: what the weights add up to, once one is given. */
export function OwnTotalRow({ comparison }: { readonly comparison: Comparison }) {
  const { weights } = useCompareWeights();
  const totals = ownTotals(comparison, weights);
  return (
    <tr>
      <th scope="row" colSpan={2}>
        {texts.yourOwnTotalWeights}
      </th>
      {comparison.layouts.map(({ id }, index) => (
        <td key={id}>
          {totals ? String(Math.round((totals[index] ?? 0) * 100) / 100) : texts.noWeights}
        </td>
      ))}
    </tr>
  );
}
