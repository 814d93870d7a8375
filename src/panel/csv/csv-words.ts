/** What a list read from CSV would do to the plan, in words. */
import type { RejectedRow } from "../../core/exchange/csv-list.ts";
import { formOf } from "../../core/words/plurals.ts";

/** What a row that can be used does: adds, changes, or leaves things as they are. */
export interface UsableRow {
  readonly change: "new" | "changed" | "same";
}

/** `3 new, 2 changed, 5 as they are; 1 row cannot be used.` */
export function csvSummary({
  accepted,
  rejected,
}: {
  readonly accepted: readonly UsableRow[];
  readonly rejected: readonly RejectedRow[];
}): string {
  if (accepted.length + rejected.length === 0) return "No rows.";
  const counted = (change: UsableRow["change"], words: string) => {
    const count = accepted.filter((row) => row.change === change).length;
    return count === 0 ? [] : [`${count} ${words}`];
  };
  const parts = [
    ...counted("new", "new"),
    ...counted("changed", "changed"),
    ...counted("same", "as they are"),
  ];
  const used = parts.length === 0 ? "Nothing to take" : parts.join(", ");
  if (rejected.length === 0) return `${used}; every row can be used.`;
  const faulty = formOf(rejected.length, { one: "1 row", other: `${rejected.length} rows` });
  return `${used}; ${faulty} cannot be used.`;
}

/** Rows that would change the plan. */
export function rowsToTake<Row extends UsableRow>(accepted: readonly Row[]): readonly Row[] {
  return accepted.filter(({ change }) => change !== "same");
}
