/** Placing a variety in a bed, by dragging it there or by choosing both in a dialog. */
import { firstStart, newPlanting, plantsWanted } from "../../core/edits/new-planting.ts";
import { addPlantings } from "../../core/edits/object-edits.ts";
import { findPlace } from "../../core/beds/find-place.ts";
import { shortDate } from "../../core/model/day.ts";
import type { Point } from "../../core/geometry/point.ts";
import type { Planting } from "../../core/model/plan.ts";
import { usePlanStore } from "./plan-store.ts";
import { useWindowStore } from "../window/window-store.ts";
import { layoutOf } from "../../core/model/layouts.ts";
import * as words from "./words.ts";

export interface PlantWish {
  /** A place it is laid about, sheet metres; else the first free stretch. */
  readonly at?: Point;
  /** How many plants; else as many as are still wanted. */
  readonly plants?: number;
  /** How and when it starts; undefined: as `firstStart` has it, which is said; null: not said yet. */
  readonly start?: Planting["start"] | null;
}

/**
 * Adds a planting of the variety to a bed of the shown layout and selects it: as many plants as fit
 * of those wished for; where the bed is taken until something is cleared, after that.
 */
export function plantVariety(varietyId: string, bedId: string, wish: PlantWish = {}): void {
  const { plan, layoutId, book, commit } = usePlanStore.getState();
  const { select, announce } = useWindowStore.getState();
  const layout = layoutOf(plan, layoutId);
  const variety = plan.varieties.find((entry) => entry.id === varietyId);
  const bed = layout.beds.find((entry) => entry.id === bedId);
  if (!variety || !bed) return;
  const kind = book.kind(variety.kind);
  if (!kind) {
    announce(words.kindNotKnown(variety.name));
    return;
  }
  const asUsual = wish.start === undefined && firstStart(plan, layout, variety, kind);
  const found = findPlace(plan, layout, bed, {
    kind,
    at: wish.at,
    plants: wish.plants ?? plantsWanted(layout, variety, kind),
    start: asUsual || (wish.start ?? undefined),
  });
  if (!found) {
    announce(words.bedIsFull(bed.code));
    return;
  }
  const { start, after } = found;
  const fresh = newPlanting(plan, layout, bed, variety, found.placed);
  const { start: _asOthers, ...undated } = fresh;
  const isUnsaid = wish.start === null && !after;
  const planting = isUnsaid ? undated : start ? { ...fresh, start } : fresh;
  const title = words.placeInBed(variety.name, bed.code);
  const dated =
    asUsual && start ? words.startingOn(title, start.method, shortDate(start.date)) : title;
  commit(addPlantings(layoutId, [planting], dated));
  select([planting.id]);
  if (after && start) {
    announce(words.follows(planting.code, after.code, shortDate(start.date)));
  }
}
