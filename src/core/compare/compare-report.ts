/** What `wideberth compare` prints: one object for programs, the same in words, and as CSV. */
import { type Comparison, compareLayouts } from "./compare-layouts.ts";
import { type Difference, layoutDifferences } from "./layout-differences.ts";
import type { CheckedLayout } from "../checks/checked-layout.ts";
import type { Plan } from "../model/plan.ts";
import { comparedWords, differenceText, measureText, measureTitle } from "./compare-words.ts";
import { csvFile } from "../formats/csv-file.ts";

export interface CompareInput {
  readonly file: string;
  readonly plan: Plan;
  /** Of that plan; the others are held against the first. */
  readonly compared: readonly CheckedLayout[];
}

/** One measure. Field names are a contract: see docs/command-line.md. */
interface ReportMeasure {
  readonly name: string;
  readonly unit: string;
  readonly better: "less" | "more" | "neither";
  readonly values: readonly (number | null)[];
  /** Names of the layouts with the better value; empty when all are equal. */
  readonly best: readonly string[];
}

interface ReportDifferences {
  readonly from: string;
  readonly to: string;
  readonly differences: readonly (Difference & { readonly words: string })[];
}

export interface CompareReport {
  readonly file: string;
  readonly plan: string;
  readonly layouts: readonly string[];
  /** Layout that moves are counted from. */
  readonly base: string;
  readonly measures: readonly ReportMeasure[];
  /** Of every further layout against the first one given. */
  readonly differences: readonly ReportDifferences[];
}

export function compareReport({ file, plan, compared }: CompareInput): CompareReport {
  const comparison = compareLayouts(compared);
  const names = comparison.layouts.map(({ name }) => name);
  const [first, ...others] = compared.map(({ layout }) => layout);
  return {
    file,
    plan: plan.title,
    layouts: names,
    base: comparison.base.name,
    measures: comparison.measures.map(({ name, unit, better, values, isBest }) => ({
      name,
      unit,
      better,
      values,
      best: names.filter((_, index) => isBest[index]),
    })),
    differences: others.map((to) => ({
      from: first?.name ?? "",
      to: to.name,
      differences: (first ? layoutDifferences(first, to) : []).map((entry) => ({
        ...entry,
        words: differenceText(entry, plan),
      })),
    })),
  };
}

/** A table with a star beside the better values, then the differences. */
export function compareReportText(input: CompareInput): string {
  const { plan, compared } = input;
  const comparison = compareLayouts(compared);
  const layouts = compared.map(({ layout }) => layout);
  const rows = [
    ["", ...layouts.map(({ name }) => name)],
    ...comparison.measures.map((measure) => [
      measureTitle(measure.name, comparison),
      ...measure.values.map(
        (value, index) =>
          `${measureText(value, measure, plan.units)}${measure.isBest[index] ? " *" : ""}`,
      ),
    ]),
  ];
  const widths = (rows[0] ?? []).map((_, column) =>
    Math.max(...rows.map((row) => (row[column] ?? "").length)),
  );
  const table = rows.map((row) =>
    row
      .map((cell, column) => cell.padEnd(widths[column] ?? 0))
      .join("  ")
      .trimEnd(),
  );
  const [first, ...others] = layouts;
  const lists = others.flatMap((to) => {
    const differences = first ? layoutDifferences(first, to) : [];
    const lines = differences.map((entry) => `  ${differenceText(entry, plan)}`);
    return [
      "",
      comparedWords.against(to.name, first?.name ?? ""),
      ...(lines.length > 0 ? lines : [`  ${comparedWords.noDifference}`]),
    ];
  });
  return [plan.title, "", ...table, "", comparedWords.better, ...lists, ""].join("\n");
}

/** The measures as CSV (RFC 4180), numbers in metres; no cell is read as a formula. */
export function compareCsv(comparison: Comparison): string {
  return csvFile(
    ["Measure", "Unit", "Better", ...comparison.layouts.map(({ name }) => name)],
    comparison.measures.map((measure) => [
      measureTitle(measure.name, comparison),
      measure.unit,
      measure.better,
      ...measure.values,
    ]),
  );
}
