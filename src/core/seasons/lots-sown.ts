/** The seed shelf after a season's sowings: what its plots took, by the sowing list. */
import { planBook } from "../kinds/own-kinds.ts";
import { sowingRows } from "../lots/sowing.ts";
import { layoutOf } from "../model/layouts.ts";
import type { Lot, Plan, SeedAmount } from "../model/plan.ts";
import type { PlotFate } from "./plot-fate.ts";

export interface SownLot {
  readonly lot: Lot;
  readonly taken: SeedAmount;
  readonly left: SeedAmount;
}

/** Weighed seed is told to the milligram. */
const PER_GRAM = 1000;

/**
 * Lots of which an amount is known and that were named for a plot: what plots took that were sown.
 * It is reckoned, not weighed. Lots that are only proposed for a plot may not have been sown.
 */
export function lotsSown(
  plan: Plan,
  layoutId: string,
  plots: readonly PlotFate[],
): readonly SownLot[] {
  const never = new Set(
    plots.flatMap(({ fate, planting }) => (fate === "never" ? [planting.id] : [])),
  );
  const layout = layoutOf(plan, layoutId);
  const plantings = layout.plantings.filter(({ id }) => !never.has(id));
  const takings = new Map<string, number>();
  for (const { isNamed, parts } of sowingRows(plan, { ...layout, plantings }, planBook(plan))) {
    if (!isNamed) continue;
    for (const { lot, seeds, grams } of parts) {
      const taken = lot.amount?.unit === "seeds" ? seeds : grams;
      if (taken !== null) takings.set(lot.id, (takings.get(lot.id) ?? 0) + taken);
    }
  }
  return plan.lots.flatMap((lot): readonly SownLot[] => {
    const taken = takings.get(lot.id) ?? 0;
    if (!lot.amount || taken <= 0) return [];
    const { unit, value } = lot.amount;
    const least = Math.min(value, Math.ceil(taken * PER_GRAM) / PER_GRAM);
    const left = Math.round((value - least) * PER_GRAM) / PER_GRAM;
    return [{ lot, taken: { unit, value: least }, left: { unit, value: left } }];
  });
}

/** The lots with that much less in them; the same list where nothing was sown. */
export function lotsLessSown(lots: Plan["lots"], sown: readonly SownLot[]): Plan["lots"] {
  if (sown.length === 0) return lots;
  const left = new Map(sown.map((each) => [each.lot.id, each.left]));
  return lots.map((lot) => {
    const amount = left.get(lot.id);
    return amount ? { ...lot, amount } : lot;
  });
}
