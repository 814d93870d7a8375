/** The grower's own total over measures: their weights, and nothing where they gave none. */
import type { Comparison, Measure, MeasureName } from "./compare-layouts.ts";

/** What one unit of a measure (a finding, a metre, a day, a plant) counts; 0 or more. */
export type MeasureWeights = Readonly<Partial<Record<MeasureName, number>>>;

/** Whether a measure can be weighed: one of its ends must be the better one. */
export function isWeighable({ better }: Pick<Measure, "better">): boolean {
  return better !== "neither";
}

/**
 * One total for each layout, lower is better; null when nothing is weighed. A measure of which more
 * is better counts against the total; one with nothing to measure counts nothing.
 */
export function ownTotals(
  { layouts, measures }: Pick<Comparison, "layouts" | "measures">,
  weights: MeasureWeights,
): readonly number[] | null {
  const weighed = measures.filter(
    (measure) => isWeighable(measure) && (weights[measure.name] ?? 0) > 0,
  );
  if (weighed.length === 0) return null;
  return layouts.map((_, index) =>
    weighed.reduce((sum, { name, better, values }) => {
      const sign = better === "more" ? -1 : 1;
      return sum + sign * (weights[name] ?? 0) * (values[index] ?? 0);
    }, 0),
  );
}
