/** Mixed-integer models written column by column and row by row, as the solver takes them. */
import type { ModelData } from "highs";

export interface Column {
  /** What a one in it costs. */
  readonly cost: number;
  /** From 0 up to so much. */
  readonly most: number;
  /** Whether it is a whole number; else any between. */
  readonly isWhole: boolean;
}

/** A sum of columns that lies between two bounds, both inclusive. */
export interface Row {
  /** Columns and what each counts for; one named twice counts for both. */
  readonly terms: readonly (readonly [column: number, factor: number])[];
  readonly lower: number;
  readonly upper: number;
}

export function modelData(columns: readonly Column[], rows: readonly Row[]): ModelData {
  const starts = [0];
  const indices: number[] = [];
  const values: number[] = [];
  for (const { terms } of rows) {
    const sums = new Map<number, number>();
    for (const [column, factor] of terms) sums.set(column, (sums.get(column) ?? 0) + factor);
    indices.push(...sums.keys());
    values.push(...sums.values());
    starts.push(indices.length);
  }
  const numCols = columns.length;
  return {
    numCols,
    numRows: rows.length,
    colCost: Float64Array.from(columns, ({ cost }) => cost),
    colLower: new Float64Array(numCols),
    colUpper: Float64Array.from(columns, ({ most }) => most),
    rowLower: Float64Array.from(rows, ({ lower }) => lower),
    rowUpper: Float64Array.from(rows, ({ upper }) => upper),
    matrix: {
      format: "csr",
      numRows: rows.length,
      numCols,
      starts: Int32Array.from(starts),
      indices: Int32Array.from(indices),
      values: Float64Array.from(values),
    },
    integrality: Int32Array.from(columns, ({ isWhole }) => (isWhole ? 1 : 0)),
  };
}
