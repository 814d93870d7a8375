/**
 * Whether the plot that a label names is the plot before which one stands. A stake names the lot
 * that is sown there; a packet names the plot it was harvested from, in the season it was: plots
 * of this season bear the same codes.
 */
import { lotsToSow } from "../lots/lot-book.ts";
import type { Layout, Plan, Planting } from "../model/plan.ts";
import type { LabelTarget } from "./read-label.ts";

export interface LabelPlots {
  /** Plantings of the layout that are sown from a lot of the label. */
  readonly sown: readonly Planting[];
  /** The label names a plot, and its lots, if it names any, are sown there. */
  readonly isOfPlot: boolean;
}

export function labelPlots(
  { lots, planting }: LabelTarget,
  plan: Pick<Plan, "lots" | "varieties">,
  layout: Pick<Layout, "plantings">,
): LabelPlots {
  const named = new Set(lots.map(({ id }) => id));
  const varieties = new Map(plan.varieties.map((variety) => [variety.id, variety]));
  const isSown = (each: Planting) =>
    lotsToSow(plan, each, varieties.get(each.variety)).some(({ id }) => named.has(id));
  return {
    sown: layout.plantings.filter(isSown),
    isOfPlot: planting !== null && (lots.length === 0 || isSown(planting)),
  };
}
