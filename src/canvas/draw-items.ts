/** Any items of the sheet in their drawing order. */
import type { DayNumber } from "../core/model/day.ts";
import { usePlanStore } from "../store/plan-store.ts";
import { bloomLook } from "./bloom-look.ts";
import type { Brush } from "./brush.ts";
import { drawBed, drawBedCode, drawPlanting, drawPlantingCode } from "./draw-plots.ts";
import { drawSurrounding, drawSurroundingLabel } from "./draw-surroundings.ts";
import type { SheetItem } from "./sheet-items.ts";

/** Grounds first, labels of surroundings between beds and plantings, codes over everything. */
export function drawItems(brush: Brush, items: readonly SheetItem[], day: DayNumber | null): void {
  const { standById } = usePlanStore.getState().result;
  const lookOf = (item: SheetItem) => bloomLook(standById.get(item.id), day);
  for (const item of items) {
    if (item.what === "surrounding") drawSurrounding(brush, item, lookOf(item));
    else if (item.what === "bed") drawBed(brush, item);
  }
  for (const item of items) {
    if (item.what === "surrounding") drawSurroundingLabel(brush, item, lookOf(item));
  }
  for (const item of items) {
    if (item.what === "planting") drawPlanting(brush, item, lookOf(item));
  }
  for (const item of items) {
    if (item.what === "bed") drawBedCode(brush, item);
    else if (item.what === "planting") drawPlantingCode(brush, item, lookOf(item));
  }
}
