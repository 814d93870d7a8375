/** Which lots plantings and varieties are sown from. */
import { namedLots } from "../lots/named-lots.ts";
import type { Renewal } from "../lots/renewal.ts";
import { type Edit, inLayout, mapItem, mapItems, patched } from "./edit.ts";
import * as steps from "../words/shelf-step-words.ts";

/** Sets the lots, in order of use, of plantings of a layout; none: the variety's are used. */
export function sowFrom(
  layoutId: string,
  plantingIds: readonly string[],
  lotIds: readonly string[],
  title: string,
): Edit {
  const chosen = new Set(plantingIds);
  const lots = lotIds.length === 0 ? undefined : lotIds;
  return {
    title,
    apply: (plan) =>
      inLayout(plan, layoutId, (layout) => ({
        ...layout,
        plantings: mapItems(layout.plantings, (planting) =>
          chosen.has(planting.id) ? patched(planting, { lots }) : planting,
        ),
      })),
  };
}

/**
 * As sowFrom, for a text of codes with semicolons between: codes that are not on the shelf yet
 * become lots of the planting's variety, with nothing but their code.
 */
export function sowFromCodes(
  layoutId: string,
  plantingId: string,
  codes: string,
  title: string,
): Edit {
  return {
    title,
    apply: (plan) => {
      const layout = plan.layouts.find(({ id }) => id === layoutId);
      const planting = layout?.plantings.find(({ id }) => id === plantingId);
      if (!planting) return plan;
      const reader = namedLots(plan.lots);
      const ids = reader.named(codes, planting.variety).map(({ id }) => id);
      const next =
        reader.made.length === 0 ? plan : { ...plan, lots: [...plan.lots, ...reader.made] };
      return sowFrom(layoutId, [plantingId], ids, title).apply(next);
    },
  };
}

/**
 * Wants so many plants of it, unless more are wanted already, sown from the lot and with the reason;
 * the lots it named before come after. @param reason as renewalReason has it
 */
export function renewVariety(renewal: Renewal, reason: string): Edit {
  const { variety, lot, plants } = renewal;
  return {
    title: steps.growOut(variety.name),
    apply: (plan) => ({
      ...plan,
      varieties: mapItem(plan.varieties, variety.id, (each) => {
        const others = (each.lots ?? []).filter((id) => id !== lot?.id);
        return patched(each, {
          wantedPlants: Math.max(plants, each.wantedPlants ?? 0),
          reason,
          ...(lot ? { lots: [lot.id, ...others] } : {}),
        });
      }),
    }),
  };
}
