/**
 * Conditions of official germination tests, 7 CFR 201.58 Table 2, and the greatest moisture of
 * hermetically sealed packs, 7 CFR 201.36c (both CFR 2015), as far as a kind of the crop base has a
 * row. Two misprints of the table are mended (celeriac 15-25 C).
 */

import type { TestConditions } from "./test-row.ts";
import { testRows } from "./test-table.ts";

const byKind = new Map(
  testRows.flatMap(([kinds, test]) => kinds.map((kind) => [kind, test] as const)),
);

/** How a kind is tested officially, by its id; undefined where no row is for it. */
export function testConditions(kindId: string): TestConditions | undefined {
  return byKind.get(kindId);
}
