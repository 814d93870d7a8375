/** Lots that were harvested from a plot of this plan. */
import { civilFromDay } from "../model/day.ts";
import type { Lot, Plan, Planting } from "../model/plan.ts";

/**
 * By the planting and season the lot names; a lot that names no planting by its plot's code, and
 * one that names no season by its year. In the order of the shelf, used up ones too.
 */
export function lotsFromPlot(
  plan: Pick<Plan, "lots" | "season">,
  planting: Pick<Planting, "id" | "code" | "variety">,
): readonly Lot[] {
  const year = civilFromDay(plan.season.last).year;
  return plan.lots.filter(({ from, variety, harvestYear }) => {
    if (from?.what !== "own" || variety !== planting.variety) return false;
    const isPlot =
      from.planting === undefined ? from.plot === planting.code : from.planting === planting.id;
    const isSeason =
      from.season === undefined ? harvestYear === year : from.season === plan.season.name;
    return isPlot && isSeason;
  });
}
