/** Why the next season's plan cannot be made as chosen. Where there is a fault, nothing is made. */
import { civilFromDay } from "../model/day.ts";
import { LIMITS } from "../model/limits.ts";
import type { EarlierCrop, Plan } from "../model/plan.ts";
import type { NextSeasonChoices } from "./season-choices.ts";

/** Another plan that is kept, as far as it matters here. */
export interface KeptSeason {
  readonly planId: string;
  readonly title: string;
  readonly season: Plan["season"];
  /** Id of the plan it was started from; null: from none. */
  readonly cameFrom: string | null;
}

export type NextSeasonFault =
  | { readonly what: "no title" | "no season name" | "ends before it starts" | "too many crops" }
  /** The new season begins before the plan's own is over. */
  | { readonly what: "overlaps"; readonly season: Plan["season"] }
  /** A plan for these days was started from this one before. */
  | { readonly what: "is there already"; readonly plan: KeptSeason }
  /** Earlier crops of years that come after the plan's season. */
  | { readonly what: "crops to come"; readonly crops: readonly EarlierCrop[] };

/** @param kept the other plans that are kept where this one is */
export function nextSeasonFaults(
  plan: Plan,
  choices: NextSeasonChoices,
  kept: readonly KeptSeason[],
): readonly NextSeasonFault[] {
  const { season, title } = choices;
  const faults: NextSeasonFault[] = [];
  if (title.trim() === "") faults.push({ what: "no title" });
  if (season.name.trim() === "") faults.push({ what: "no season name" });
  if (season.first > season.last) faults.push({ what: "ends before it starts" });
  else if (season.first <= plan.season.last) faults.push({ what: "overlaps", season: plan.season });
  for (const other of kept) {
    const isFrom = other.cameFrom === plan.id && other.planId !== plan.id;
    const isThen = other.season.first <= season.last && other.season.last >= season.first;
    if (isFrom && isThen) faults.push({ what: "is there already", plan: other });
  }
  const lastYear = civilFromDay(plan.season.last).year;
  const crops = plan.earlierCrops.filter(({ year }) => year > lastYear);
  if (crops.length > 0) faults.push({ what: "crops to come", crops });
  const plots = plan.layouts.find(({ id }) => id === choices.layout)?.plantings.length ?? 0;
  if (plan.earlierCrops.length + plots > LIMITS.items) faults.push({ what: "too many crops" });
  return faults;
}
