/** Seed of a season that is not on the shelf yet: its plots have borne it, and no lot says so. */
import type { DayNumber } from "../model/day.ts";
import type { Plan } from "../model/plan.ts";
import type { PlotFate } from "./plot-fate.ts";

/**
 * Plots for seed that went to seed, of which no own lot of this season is on the shelf; those of
 * which a harvest is written down first, and none but those before the season is over.
 * @param on the day it is looked at
 */
export function unshelvedPlots(
  plan: Plan,
  plots: readonly PlotFate[],
  on: DayNumber,
): readonly PlotFate[] {
  const harvested = new Set(
    plan.entries
      .filter(({ what }) => what === "harvested" || what === "cleaned")
      .map(({ of }) => of),
  );
  const shelved = new Set(
    plan.lots.flatMap(({ from, harvestYear }) => {
      if (from?.what !== "own" || from.plot === undefined) return [];
      return [`${from.season ?? ""} ${from.plot}`, `${harvestYear ?? ""} ${from.plot}`];
    }),
  );
  return plots
    .filter(({ planting, variety, wentToSeed, fate, year }) => {
      const isSeed = planting.purpose === "seed" && variety.hybrid !== true;
      if (on <= plan.season.last && !harvested.has(planting.id)) return false;
      if (!isSeed || wentToSeed !== "yes" || fate === "never") return false;
      return ![plan.season.name, year].some((when) => shelved.has(`${when} ${planting.code}`));
    })
    .toSorted(
      (a, b) => Number(harvested.has(b.planting.id)) - Number(harvested.has(a.planting.id)),
    );
}
