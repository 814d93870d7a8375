/** Any items of the sheet in their drawing order. */
import { standsOn } from "../../core/calendar/ground-time.ts";
import type { Point } from "../../core/geometry/point.ts";
import type { DayNumber } from "../../core/model/day.ts";
import type { HideableKind } from "../../store/window/hideable-kinds.ts";
import type { CheckResult } from "../../core/checks/run-checks.ts";
import { bloomLook } from "./bloom-look.ts";
import type { Brush } from "./brush.ts";
import {
  type PlantingLook,
  codeWidth,
  drawAbsent,
  drawBed,
  drawBedCode,
  drawLeader,
  drawPlanting,
  drawPlantingCode,
  needsTile,
} from "./draw-plots.ts";
import { drawLockSign } from "./draw-signs.ts";
import { drawSurrounding, drawSurroundingLabel } from "./draw-surroundings.ts";
import { type Box, wordsWidth } from "./draw-text.ts";
import { type LabelsWanted, type SheetLabel, labelSteps, planLabels } from "./label-plan.ts";
import { isHidden, isLocked, lockSignPlace } from "../scene/locks.ts";
import type { PlantingItem, SheetItem } from "../scene/sheet-items.ts";
import { toPx } from "../scene/viewport.ts";

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
}

export interface ItemsDrawn extends ItemsLook {
  /** Where words stand. */
  readonly labels: Labels;
  /** Called between the grounds and what is drawn on them. */
  readonly drawOnGround?: () => void;
  /** Called before the codes: steps that draw lines under them. */
  readonly drawUnderCodes?: () => Iterable<undefined>;
}

export type Labels = ReadonlyMap<string, SheetLabel>;

const isAbsent = (item: SheetItem, day: DayNumber | null) =>
  item.what === "planting" && day !== null && !standsOn(item.planting, day);

/**
 * Where the words of items stand.
 * @param furniture boxes at the edges of the drawing that are always there
 */
export function itemLabels(
  brush: Brush,
  items: readonly SheetItem[],
  look: ItemsLook,
  furniture: readonly Box[] = [],
): Labels {
  return planLabels(brush.view, brush, labelsWanted(brush, items, look, furniture));
}

/** The same in steps. */
export function itemLabelSteps(
  brush: Brush,
  items: readonly SheetItem[],
  look: ItemsLook,
  furniture: readonly Box[] = [],
): Generator<void, Labels> {
  return labelSteps(brush.view, brush, labelsWanted(brush, items, look, furniture));
}

function labelsWanted(
  brush: Brush,
  items: readonly SheetItem[],
  { standById, day, hidden = NOTHING, sectorOf = () => null }: ItemsLook,
  furniture: readonly Box[],
): LabelsWanted {
  return {
    items: items.filter((item) => !isHidden(item, hidden) && !isAbsent(item, day)),
    wordsPx: (item) => {
      if (item.what === "planting") {
        return codeWidth(brush, item, plantingLook(item, standById, day));
      }
      if (item.what === "bed") {
        return hidden.has("bed codes") ? 0 : wordsWidth(brush, "code", item.bed.code);
      }
      const isNamed = !hidden.has("labels") && item.surrounding.label !== "";
      return isNamed ? wordsWidth(brush, "note", item.surrounding.label) : 0;
    },
    towardOf: (item) => {
      const sector = day === null ? sectorOf(item) : null;
      return sector && toPx(brush.view, middleOf(sector));
    },
    furniture,
  };
}

function middleOf(corners: readonly Point[]): Point {
  const total = (pick: (corner: Point) => number) =>
    corners.reduce((sum, corner) => sum + pick(corner), 0) / corners.length;
  return { x: total(({ x }) => x), y: total(({ y }) => y) };
}

/** Grounds first, then what else is drawn on them, plantings, lines, and words over everything. */
export function drawItems(brush: Brush, all: readonly SheetItem[], drawn: ItemsDrawn): void {
  const steps = drawItemSteps(brush, all, drawn);
  while (steps.next().done !== true);
}

/** So many items are drawn in one step. */
const STEP_ITEMS = 150;

/** The same in steps: thousands are drawn between frames. */
export function* drawItemSteps(
  brush: Brush,
  all: readonly SheetItem[],
  drawn: ItemsDrawn,
): Generator<undefined, void> {
  const { standById, day, hidden = NOTHING, sectorOf = () => null } = drawn;
  const items = hidden.size === 0 ? all : all.filter((item) => !isHidden(item, hidden));
  const lookOf = (item: SheetItem) => bloomLook(standById.get(item.id), day);
  for (const item of items) {
    if (item.what === "surrounding") drawSurrounding(brush, item, lookOf(item));
    else if (item.what === "bed") drawBed(brush, item);
  }
  drawn.drawOnGround?.();
  for (const item of items) if (isAbsent(item, day)) drawAbsent(brush, item);
  yield;
  for (const [place, item] of items.entries()) {
    if (place % STEP_ITEMS === STEP_ITEMS - 1) yield;
    if (item.what !== "planting" || isAbsent(item, day)) continue;
    // Tiles of eight hatches together take longer than a frame has.
    if (needsTile(brush, item)) yield;
    const look = plantingLook(item, standById, day);
    drawPlanting(brush, item, look, day === null ? sectorOf(item) : null);
  }
  yield;
  yield* drawn.drawUnderCodes?.() ?? [];
  yield;
  yield* drawLabelSteps(brush, items, drawn);
  for (const item of items) {
    if (isLocked(item)) drawLockSign(brush, lockSignPlace(item, brush.view));
  }
}

function* drawLabelSteps(
  brush: Brush,
  items: readonly SheetItem[],
  { labels, standById, day }: ItemsDrawn,
): Generator<undefined, void> {
  const labelled = items.flatMap((item) => {
    const label = labels.get(item.id);
    return label ? [{ item, label }] : [];
  });
  for (const { label } of labelled) drawLeader(brush, label);
  for (const [place, { item, label }] of labelled.entries()) {
    if (place % STEP_ITEMS === STEP_ITEMS - 1) yield;
    if (item.what === "bed") drawBedCode(brush, item, label);
    else if (item.what === "planting") {
      drawPlantingCode(brush, item, plantingLook(item, standById, day), label);
    } else drawSurroundingLabel(brush, item, bloomLook(standById.get(item.id), day), label);
  }
}

/** The cover is that of its stand: read as grown, one that was torn or never put up is not drawn. */
function plantingLook(
  { id, planting }: PlantingItem,
  standById: CheckResult["standById"],
  day: DayNumber | null,
): PlantingLook {
  const stand = standById.get(id);
  return { bloom: bloomLook(stand, day), cover: stand?.cover ?? planting.cover };
}
