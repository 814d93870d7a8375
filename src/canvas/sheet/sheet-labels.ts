/** Where the words of what is at rest stand, worked out once for all layers of the sheet. */
import type { CheckResult } from "../../core/checks/run-checks.ts";
import type { CropBook } from "../../core/kinds/crop-book.ts";
import type { DayNumber } from "../../core/model/day.ts";
import type { Layout, Plan } from "../../core/model/plan.ts";
import type { Point } from "../../core/geometry/point.ts";
import { type LabelBox, labelBox } from "../../core/page/label-box.ts";
import type { HideableKind } from "../../store/window/hideable-kinds.ts";
import type { Brush } from "../draw/brush.ts";
import { type FarMark, farMarks, furnitureBoxes } from "../draw/draw-far-marks.ts";
import { type ItemsLook, type Labels, itemLabels } from "../draw/draw-items.ts";
import { isOpenGround } from "../draw/ground-boxes.ts";
import type { GroundPainter } from "../ground/ground-painter.ts";
import { type PlantingItem, type SheetItem, sheetItems } from "../scene/sheet-items.ts";
import { type View, visibleBounds } from "../scene/viewport.ts";

export interface Resting {
  readonly plan: Plan;
  readonly layout: Layout;
  readonly book: CropBook;
  readonly result: CheckResult;
  readonly day: DayNumber | null;
  readonly hidden: ReadonlySet<HideableKind>;
  readonly painter: GroundPainter | null;
  /** Whether the view is being panned or zoomed. */
  readonly isMoving: boolean;
}

/** With no more objects than these, drawing them is as quick as moving a picture of them. */
const FEW_OBJECTS = 250;

/** Whether a picture is moved with the view instead of drawing everything anew. */
export function isLarge({ beds, plantings }: Layout): boolean {
  return beds.length + plantings.length > FEW_OBJECTS;
}

/** How the items of a layout look, at rest or on the move. */
export function lookOf({ layout, result, day, hidden, painter }: Resting): ItemsLook {
  return {
    standById: result.standById,
    day,
    hidden,
    sectorOf: ({ planting }: PlantingItem) => painter?.sectorOf(layout.plantings, planting) ?? null,
  };
}

/** Codes and labels may reach out of what they belong to. */
const REACH_PX = 60;

/** What of the plan at rest is in view. */
export function restingItems(brush: Brush, { plan, layout, book }: Resting): readonly SheetItem[] {
  return sheetItems(plan, layout, book).within(visibleBounds(brush.view, brush, REACH_PX));
}

interface Known {
  readonly of: readonly unknown[];
  readonly view: View;
  readonly labels: Labels;
}

let last: Known | null = null;

/**
 * Of all that is at rest, what is selected included: words stay where they are at a selection.
 * While the sheet is pushed along they move with it, and are put anew once it rests.
 */
export function restingLabels(brush: Brush, resting: Resting): Labels {
  const { plan, layout, book, result, day, hidden, painter, isMoving } = resting;
  const { view, widthPx, heightPx, colours } = brush;
  // Only a day shows signs beside codes that findings may change.
  const items = [plan, layout, book, day, day === null || result, hidden, painter];
  const of = [...items, view.scale, widthPx, heightPx, colours];
  const known = last;
  if (known && of.every((part, index) => part === known.of[index])) {
    const [byX, byY] = [view.x - known.view.x, view.y - known.view.y];
    if (byX === 0 && byY === 0) return known.labels;
    if (isMoving) return movedBy(known.labels, byX, byY);
  }
  const labels = itemLabels(
    brush,
    restingItems(brush, resting),
    lookOf(resting),
    furnitureBoxes(brush),
  );
  last = { of, view, labels };
  return labels;
}

function movedBy(labels: Labels, byX: number, byY: number): Labels {
  const moved = ({ x, y }: Point): Point => ({ x: x + byX, y: y + byY });
  return new Map(
    [...labels].map(([id, placed]) => {
      const { label, leader } = placed;
      const { centre, width, height, turnDeg } = label;
      return [
        id,
        {
          ...placed,
          label: labelBox(moved(centre), width, height, turnDeg),
          leader: leader && ([moved(leader[0]), moved(leader[1])] as const),
        },
      ];
    }),
  );
}

/** Of what is selected or on the move: as at rest until it moves. */
export function liveLabels(
  brush: Brush,
  resting: Resting,
  shown: Plan,
  items: readonly SheetItem[],
): Labels {
  if (shown === resting.plan) return restingLabels(brush, resting);
  return itemLabels(brush, items, lookOf(resting));
}

/** Pollen sources out of sight. */
export function restingMarks(
  brush: Brush,
  resting: Resting,
  words: readonly LabelBox[],
): readonly FarMark[] {
  const { plan, layout, book, hidden } = resting;
  if (hidden.has("surroundings")) return [];
  const isOpen = isOpenGround(brush, sheetItems(plan, layout, book), words);
  return farMarks(brush, plan, layout, book, isOpen);
}

/** A box as those of other words are. */
export function markBox({ box: { left, top, width, height } }: FarMark): LabelBox {
  return labelBox({ x: left + width / 2, y: top + height / 2 }, width, height, 0);
}

/** Boxes of words, those of some objects left out. */
export function boxesOf(labels: Labels, without?: ReadonlySet<string>): readonly LabelBox[] {
  return [...labels.values()].flatMap(({ id, label }) => (without?.has(id) ? [] : [label]));
}
