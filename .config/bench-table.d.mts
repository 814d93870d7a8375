import type { Row } from "../tests/bench/report.ts";
export function tableLines(rows: readonly Row[]): readonly string[];
export function readTable(text: string): readonly Row[];
export function compareTables(
  rows: readonly Row[],
  earlier: readonly Row[],
): { readonly worse: readonly string[]; readonly compared: number; readonly slower: number };
