/** Years that ground must rest from a crossing set before it bears its seed again. */
import { earlierGrounds, yearsSince } from "../ground/earlier-grounds.ts";
import { landRules, yearsAsked } from "../ground/land-rules.ts";
import { outlineArea } from "../geometry/outline.ts";
import type { CropBook } from "../kinds/crop-book.ts";
import type { Kind } from "../kinds/crop.ts";
import type { Plan } from "../model/plan.ts";
import type { RestRule } from "./years-problem.ts";

/** Seasons before the first that are looked at. */
const MOST_YEARS_BACK = 12;

/** The longest of the published years for seed of its own kind; 0: nothing is published. */
export function landYearsOf(kind: Kind, level: Plan["level"]): number {
  const years = landRules(kind, level).map((rule) => yearsAsked(rule, kind, kind, "yes") ?? 0);
  return Math.max(0, ...years);
}

/**
 * One rule for each set with published years; the longest of its kinds holds for all. What grew
 * before is taken from the plan's earlier crops that bore seed, or may have.
 */
export function restRules(
  plan: Pick<Plan, "earlierCrops" | "season" | "level">,
  book: CropBook,
  parts: readonly (readonly number[])[],
  kindOf: (item: number) => Kind,
): readonly RestRule[] {
  const grounds = earlierGrounds(plan.earlierCrops, book);
  return parts.flatMap((members): readonly RestRule[] => {
    const kinds = members.map(kindOf);
    const years = Math.max(0, ...kinds.map((kind) => landYearsOf(kind, plan.level)));
    if (years === 0) return [];
    const groups = new Set(kinds.map(({ group }) => group));
    const before = Array.from({ length: Math.min(years, MOST_YEARS_BACK) }, () => 0);
    for (const { crop, kind, outline } of grounds) {
      const back = yearsSince(crop, plan.season) - 1;
      if (back < 0 || back >= before.length) continue;
      if (crop.wentToSeed === "no" || !groups.has(kind.group)) continue;
      before[back] = (before[back] ?? 0) + outlineArea(outline);
    }
    return [{ members, years, before }];
  });
}
