import type { Kind } from "../../core/kinds/crop.ts";
import { USUAL_PATTERN, codeByPattern } from "../../core/lots/code-pattern.ts";
import { lotBook } from "../../core/lots/lot-book.ts";
import type { Lot, Plan, Variety } from "../../core/model/plan.ts";

/** The code the plan's pattern makes for a new lot of a variety. */
export function patternCode(
  plan: Pick<Plan, "lots" | "lotCodePattern">,
  variety: Pick<Variety, "name">,
  kind: Kind | undefined,
  lot: Pick<Lot, "harvestYear" | "from">,
): string {
  return codeByPattern(
    plan.lotCodePattern ?? USUAL_PATTERN,
    {
      kind: kind?.name ?? "",
      variety: variety.name,
      harvestYear: lot.harvestYear,
      plot: lot.from?.plot,
    },
    lotBook(plan.lots).codes,
  );
}
