/** What a seed list read from CSV would do to the plan, in words. */
import type { AcceptedRow } from "../../core/exchange/read-varieties-csv.ts";

/** What an accepted row does: `new`, `changes plants wanted, note` or `as it is`. */
export function rowEffect({ change, columns }: Pick<AcceptedRow, "change" | "columns">): string {
  switch (change) {
    case "new":
      return "new";
    case "changed":
      return `changes ${columns.join(", ")}`;
    case "same":
      return "as it is";
  }
}

/** `Take 1 variety` or `Take 12 varieties`. */
export function takeWords(count: number): string {
  return count === 1 ? "Add 1 variety" : `Add ${count} varieties`;
}
