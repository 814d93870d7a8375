/** What a list read from CSV would do to the plan, in words. */
import type { AcceptedRow, VarietyList } from "../../core/exchange/read-varieties-csv.ts";

/** `3 new, 2 changed, 5 as they are; 1 row cannot be used`. */
export function csvSummary({ accepted, rejected }: VarietyList): string {
  const counted = (change: AcceptedRow["change"], words: string) => {
    const count = accepted.filter((row) => row.change === change).length;
    return count === 0 ? [] : [`${count} ${words}`];
  };
  const parts = [
    ...counted("new", "new"),
    ...counted("changed", "changed"),
    ...counted("same", "as they are"),
  ];
  if (accepted.length + rejected.length === 0) return "No rows.";
  const used = parts.length === 0 ? "Nothing to take" : parts.join(", ");
  if (rejected.length === 0) return `${used}; every row can be used.`;
  const faulty = rejected.length === 1 ? "1 row" : `${rejected.length} rows`;
  return `${used}; ${faulty} cannot be used.`;
}

/** What an accepted row does: `new`, `changes plants wanted, note` or `as it is`. */
export function rowEffect({ change, columns }: AcceptedRow): string {
  switch (change) {
    case "new":
      return "new";
    case "changed":
      return `changes ${columns.join(", ")}`;
    case "same":
      return "as it is";
  }
}

/** Rows that would change the plan. */
export function rowsToTake({ accepted }: VarietyList): readonly AcceptedRow[] {
  return accepted.filter(({ change }) => change !== "same");
}

/** `Take 1 variety` or `Take 12 varieties`. */
export function takeWords(count: number): string {
  return count === 1 ? "Take 1 variety" : `Take ${count} varieties`;
}
