/** A variety taken into this season's seed list, to be grown out for fresh seed. */
import type { Renewal } from "../lots/renewal.ts";
import { renewalReason } from "../lots/renewal.ts";
import { type Edit, mapItem, patched } from "./edit.ts";

/**
 * Wants so many plants of it, unless more are wanted already, sown from the lot and with the reason;
 * the lots it named before come after.
 */
export function renewVariety(renewal: Renewal): Edit {
  const { variety, lot, plants } = renewal;
  return {
    title: `Grow out ${variety.name} for fresh seed`,
    apply: (plan) => ({
      ...plan,
      varieties: mapItem(plan.varieties, variety.id, (each) => {
        const others = (each.lots ?? []).filter((id) => id !== lot?.id);
        return patched(each, {
          wantedPlants: Math.max(plants, each.wantedPlants ?? 0),
          reason: renewalReason(renewal),
          ...(lot ? { lots: [lot.id, ...others] } : {}),
        });
      }),
    }),
  };
}
