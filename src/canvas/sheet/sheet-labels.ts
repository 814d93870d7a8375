/** Where the words of what is at rest stand, worked out once for all layers of the sheet. */
import { create } from "zustand";
import type { CheckResult } from "../../core/checks/run-checks.ts";
import type { CropBook } from "../../core/kinds/crop-book.ts";
import type { DayNumber } from "../../core/model/day.ts";
import type { Layout, Plan } from "../../core/model/plan.ts";
import type { Point } from "../../core/geometry/point.ts";
import { type LabelBox, labelBox } from "../../core/page/label-box.ts";
import type { Reading } from "../../store/plan/reading.ts";
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
  /** How the plan is read; null: as planned. */
  readonly reading: Reading | null;
  /** Whether the view is being panned or zoomed. */
  readonly isMoving: boolean;
}

/**
 * With no more objects than these, drawing them is as quick as moving a picture of them, and places
 * for all words are found within a frame.
 */
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
  readonly resting: Resting;
  readonly view: View;
  readonly labels: Labels;
}

let last: Known | null = null;

/** Counts how often places have been found between frames: what shows them is drawn again. */
export const useLabelTurn = create<{ readonly turn: number }>()(() => ({ turn: 0 }));

/** What places depend on, but for where the view's corner lies. */
export function labelKey({ view, widthPx, heightPx, colours }: Brush, resting: Resting) {
  const { plan, layout, book, result, day, hidden, painter, reading } = resting;
  // Only a day, and covers as grown, show signs beside codes that findings may change.
  const signs = (day === null && reading === null) || result;
  const items = [plan, layout, book, day, signs, hidden, painter, reading];
  return [...items, view.scale, widthPx, heightPx, colours];
}

export const isSame = (one: readonly unknown[], other: readonly unknown[]) =>
  one.every((part, index) => part === other[index]);

export const isSameView = (one: View, other: View) =>
  one.x === other.x && one.y === other.y && one.scale === other.scale;

/**
 * The places found already; null when they are to be found.
 * @param only of these objects, where others are not asked for
 */
function knownLabels(brush: Brush, resting: Resting, only?: readonly SheetItem[]): Labels | null {
  if (!last || !isSame(labelKey(brush, resting), last.of)) return null;
  if (isSameView(brush.view, last.view)) return last.labels;
  if (!resting.isMoving) return null;
  const { labels } = last;
  const asked = only?.flatMap(({ id }) => {
    const label = labels.get(id);
    return label ? [[id, label] as const] : [];
  });
  const moved = asked ? new Map(asked) : labels;
  return movedBy(moved, brush.view.x - last.view.x, brush.view.y - last.view.y);
}

/** Whether all words have their places, or have them as soon as they are asked for. */
export function areLabelsAtHand(brush: Brush, resting: Resting): boolean {
  return !isLarge(resting.layout) || knownLabels(brush, resting) !== null;
}

/** Remembers where all words stand, found for what labelKey gave. */
export function keepLabels(
  of: readonly unknown[],
  resting: Resting,
  view: View,
  labels: Labels,
): void {
  last = { of, resting, view, labels };
}

/** Finds the places of all words at once. */
export function findLabels(brush: Brush, resting: Resting): Labels {
  const items = restingItems(brush, resting);
  const labels = itemLabels(brush, items, lookOf(resting), furnitureBoxes(brush));
  keepLabels(labelKey(brush, resting), resting, brush.view, labels);
  return labels;
}

const NO_LABELS: Labels = new Map();

/** The words of what has stayed as it was, while places are found for all. */
function labelsMeanwhile(brush: Brush, { plan, layout, book }: Resting): Labels {
  if (!last || last.view.scale !== brush.view.scale) return NO_LABELS;
  const before = sheetItems(last.resting.plan, last.resting.layout, last.resting.book).byId;
  const { byId } = sheetItems(plan, layout, book);
  const stayed = [...last.labels].filter(
    ([id]) => before.get(id)?.shape === byId.get(id)?.shape && byId.has(id),
  );
  return movedBy(new Map(stayed), brush.view.x - last.view.x, brush.view.y - last.view.y);
}

/**
 * Of all that is at rest, what is selected included: words stay where they are at a selection.
 * While the sheet is pushed along they move with it, and are put anew once it rests.
 */
export function restingLabels(brush: Brush, resting: Resting): Labels {
  const known = knownLabels(brush, resting);
  if (known) return known;
  return isLarge(resting.layout) ? labelsMeanwhile(brush, resting) : findLabels(brush, resting);
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
  if (shown === resting.plan) {
    const known = knownLabels(brush, resting, items);
    if (known) return known;
    if (!isLarge(resting.layout)) return restingLabels(brush, resting);
  }
  return itemLabels(brush, items, lookOf(resting));
}

interface KnownMarks {
  readonly of: readonly unknown[];
  readonly words: readonly LabelBox[];
  readonly marks: readonly FarMark[];
}
let lastMarks: KnownMarks | null = null;

/** Pollen sources out of sight; found once for all layers that draw one view. */
export function restingMarks(
  brush: Brush,
  resting: Resting,
  words: readonly LabelBox[],
): readonly FarMark[] {
  const { plan, layout, book, hidden } = resting;
  if (hidden.has("surroundings")) return [];
  const { view, widthPx, heightPx, colours } = brush;
  const of = [plan, layout, book, view, widthPx, heightPx, colours];
  const known = lastMarks;
  if (known && isSame(of, known.of) && words.length === known.words.length) {
    if (isSame(words, known.words)) return known.marks;
  }
  const isOpen = isOpenGround(brush, sheetItems(plan, layout, book), words);
  const marks = farMarks(brush, plan, layout, book, isOpen);
  lastMarks = { of, words, marks };
  return marks;
}

/** A box as those of other words are. */
export function markBox({ box: { left, top, width, height } }: FarMark): LabelBox {
  return labelBox({ x: left + width / 2, y: top + height / 2 }, width, height, 0);
}

/** Boxes of words, those of some objects left out. */
export function boxesOf(labels: Labels, without?: ReadonlySet<string>): readonly LabelBox[] {
  return [...labels.values()].flatMap(({ id, label }) => (without?.has(id) ? [] : [label]));
}
