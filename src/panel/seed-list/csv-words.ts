/** What a seed list read from CSV would do to the plan, in words. */
import type { AcceptedRow } from "../../core/exchange/read-varieties-csv.ts";
import { formOf } from "../../core/words/plurals.ts";

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
  return formOf(count, { one: "Add 1 variety", other: `Add ${count} varieties` });
}
