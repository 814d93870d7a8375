/** Any items of the sheet in their drawing order. */
import { standsOn } from "../../core/calendar/ground-time.ts";
import type { Point } from "../../core/geometry/point.ts";
import type { DayNumber } from "../../core/model/day.ts";
import type { HideableKind } from "../../store/window/hideable-kinds.ts";
import type { CheckResult } from "../../core/checks/run-checks.ts";
import { bloomLook } from "./bloom-look.ts";
import type { Brush } from "./brush.ts";
import { drawAbsent, drawBed, drawBedCode, drawPlanting, drawPlantingCode } from "./draw-plots.ts";
import { drawLockSign } from "./draw-signs.ts";
import { drawSurrounding, drawSurroundingLabel } from "./draw-surroundings.ts";
import { isHidden, isLocked, lockSignPlace } from "../scene/locks.ts";
import type { PlantingItem, SheetItem } from "../scene/sheet-items.ts";

const NOTHING: ReadonlySet<HideableKind> = new Set();

/** How items look. */
export interface ItemsLook {
  /** Stands of the layout the items are of. */
  readonly standById: CheckResult["standById"];
  /** Day whose open flowers are shown. */
  readonly day: DayNumber | null;
  readonly hidden?: ReadonlySet<HideableKind>;
  /** The part of its ground a planting is drawn on that shares it with another; null: all of it. */
  readonly sectorOf?: (item: PlantingItem) => readonly Point[] | null;
  /** Called between the grounds and what is drawn on them. */
  readonly drawOnGround?: () => void;
}

/**
 * Grounds first, then what else is drawn on them, labels of surroundings between beds and
 * plantings, codes over everything.
 */
export function drawItems(
  brush: Brush,
  all: readonly SheetItem[],
  { standById, day, hidden = NOTHING, sectorOf = () => null, drawOnGround }: ItemsLook,
): void {
  const items = hidden.size === 0 ? all : all.filter((item) => !isHidden(item, hidden));
  const lookOf = (item: SheetItem) => bloomLook(standById.get(item.id), day);
  const isAbsent = (item: SheetItem) =>
    item.what === "planting" && day !== null && !standsOn(item.planting, day);
  for (const item of items) {
    if (item.what === "surrounding") drawSurrounding(brush, item, lookOf(item));
    else if (item.what === "bed") drawBed(brush, item);
  }
  drawOnGround?.();
  for (const item of items) {
    if (item.what !== "surrounding" || hidden.has("labels")) continue;
    drawSurroundingLabel(brush, item, lookOf(item));
  }
  for (const item of items) if (isAbsent(item)) drawAbsent(brush, item);
  for (const item of items) {
    if (item.what !== "planting" || isAbsent(item)) continue;
    drawPlanting(brush, item, lookOf(item), day === null ? sectorOf(item) : null);
  }
  for (const item of items) {
    if (item.what === "bed") {
      if (!hidden.has("bed codes")) drawBedCode(brush, item);
    } else if (item.what === "planting" && !isAbsent(item)) {
      drawPlantingCode(brush, item, lookOf(item), day === null ? sectorOf(item) : null);
    }
  }
  for (const item of items) {
    if (isLocked(item)) drawLockSign(brush, lockSignPlace(item, brush.view));
  }
}
