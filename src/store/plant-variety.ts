/** Placing a variety in a bed, by dragging it there or by choosing both in a dialog. */
import type { Kind } from "../core/crops/crop.ts";
import { nextPlantingCode } from "../core/edits/codes.ts";
import { drawnIds, nextId } from "../core/edits/edit.ts";
import { addPlantings } from "../core/edits/object-edits.ts";
import { placeInBed } from "../core/edits/place-planting.ts";
import type { Point } from "../core/geometry/point.ts";
import type { Layout, Plan, Planting } from "../core/model/plan.ts";
import { layoutOf, usePlanStore } from "./plan-store.ts";

/** Plants to place when the variety does not say how many are wanted. Ours. */
const UNASKED_PLANTS = 10;

/**
 * Adds a planting of the variety to a bed of the shown layout and selects it: as many plants as
 * are still wanted and fit, about a place when one is given, else in the first free stretch.
 */
export function plantVariety(varietyId: string, bedId: string, at?: Point): void {
  const { plan, layoutId, book, commit, select, announce } = usePlanStore.getState();
  const layout = layoutOf(plan, layoutId);
  const variety = plan.varieties.find((entry) => entry.id === varietyId);
  const bed = layout.beds.find((entry) => entry.id === bedId);
  if (!variety || !bed) return;
  const kind = book.kind(variety.kind);
  if (!kind) {
    announce(`The kind of ${variety.name} is not known: choose it first.`);
    return;
  }
  const placed = placeInBed(layout, bed, kind, plantsWanted(layout, variety), at);
  if (!placed) {
    announce(`Bed ${bed.code} is full.`);
    return;
  }
  const start = latestStart(plan, layout, kind);
  const planting: Planting = {
    id: nextId("p", drawnIds(plan, layout)),
    code: nextPlantingCode(layout, bed),
    variety: variety.id,
    bed: bed.id,
    ...placed,
    purpose: "seed",
    flowering: "yes",
    cover: "none",
    ...(start ? { start } : {}),
  };
  commit(addPlantings(layoutId, [planting], `Place ${variety.name} in bed ${bed.code}`));
  select([planting.id]);
}

/** Plants of a variety still to place; at least one. */
export function plantsWanted(layout: Layout, variety: Plan["varieties"][number]): number {
  if (variety.wantedPlants === undefined) return UNASKED_PLANTS;
  const placed = layout.plantings
    .filter((planting) => planting.variety === variety.id)
    .reduce((sum, planting) => sum + (planting.plants ?? 0), 0);
  return Math.max(1, variety.wantedPlants - placed);
}

/** How and when the latest planting of the kind starts. */
function latestStart(plan: Plan, layout: Layout, kind: Kind): Planting["start"] {
  const ofKind = new Set(
    plan.varieties.filter((entry) => entry.kind === kind.id).map((entry) => entry.id),
  );
  return layout.plantings
    .filter((planting) => ofKind.has(planting.variety))
    .flatMap((planting) => planting.start ?? [])
    .reduce<Planting["start"]>(
      (latest, start) => (latest && latest.date >= start.date ? latest : start),
      undefined,
    );
}
