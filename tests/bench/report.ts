/**
 * Where every benchmark hands in what it measured. `npm run bench` gathers the rows, prints one
 * table and writes docs/benchmarks.md; a benchmark run by itself says its rows on the console.
 */
import { appendFileSync } from "node:fs";

export interface Row {
  /** Part of the table, as .config/bench.mjs lists them; a new one comes last. */
  readonly section: string;
  /** What was measured, and against what: "all pairs, against JSTS"; remarks after a semicolon. */
  readonly what: string;
  /** How much of it: "10,000 plantings, 8 crossing groups". */
  readonly size: string;
  /** A number, shown with four significant digits, or words when there is none: "absent". */
  readonly value: number | string;
  /** Of the value: "x", "ms", "MB", "KiB gzip"; "" for words. */
  readonly unit: string;
  /** Given where a larger value is the better one. */
  readonly moreIsBetter?: true;
  /** In words, when there is one: "at least 5 x". */
  readonly budget?: string;
  /** Whether the budget is met; given whenever a budget is. */
  readonly isMet?: boolean;
}

/** Hands in one row. */
export function reportRow(row: Row): void {
  const file = process.env["WIDEBERTH_BENCH_ROWS"];
  if (file) appendFileSync(file, `${JSON.stringify(row)}\n`);
  const value = typeof row.value === "number" ? Number(row.value.toPrecision(4)) : row.value;
  const verdict = row.budget ? ` (${row.budget}: ${row.isMet ? "met" : "MISSED"})` : "";
  console.log(`${row.section} | ${row.what} | ${row.size} | ${value} ${row.unit}${verdict}`);
}
