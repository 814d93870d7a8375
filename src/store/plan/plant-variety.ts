/** Placing a variety in a bed, by dragging it there or by choosing both in a dialog. */
import { newPlanting, plantsWanted } from "../../core/edits/new-planting.ts";
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
  /** How and when it starts; else as the latest of its kind. */
  readonly start?: Planting["start"];
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
  const wanted = { ...wish, kind, plants: wish.plants ?? plantsWanted(layout, variety, kind) };
  const found = findPlace(plan, layout, bed, wanted);
  if (!found) {
    announce(words.bedIsFull(bed.code));
    return;
  }
  const { start, after } = found;
  const fresh = newPlanting(plan, layout, bed, variety, found.placed);
  const planting = start ? { ...fresh, start } : fresh;
  commit(addPlantings(layoutId, [planting], words.placeInBed(variety.name, bed.code)));
  select([planting.id]);
  if (after && start) {
    announce(words.follows(planting.code, after.code, shortDate(start.date)));
  }
}
