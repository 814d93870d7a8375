/** Measuring between any two things: objects edge to edge, places, or one of each. */
import { gapBetween } from "../../core/geometry/gap.ts";
import { pointOutline, shapeCentre, outlineOf } from "../../core/geometry/outline.ts";
import type { Point } from "../../core/geometry/point.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { useWindowStore } from "../../store/window/window-store.ts";
import { layoutOf } from "../../core/model/layouts.ts";
import { measurementText } from "./draw-sketch.ts";
import { itemsAt } from "../scene/hit-test.ts";
import { type SheetItem, sheetItems } from "../scene/sheet-items.ts";
import { snapToDrawn } from "../snap/snap-place.ts";
import { nameOf } from "../scene/item-name.ts";
import { type Measurement, endSketch, sketch, useSketch } from "./sketch-store.ts";
import { useView } from "../scene/view-store.ts";
import { clickOrDrag } from "./gestures.ts";
import type { Gesture, SheetPointer, Tool } from "./tool.ts";
import * as said from "../scene/tool-words.ts";

/** Ends of a dragged measure come to rest on corners and edges within so many pixels. */
const EDGE_PX = 10;
/** A click takes what lies within so many pixels. */
const REACH_PX = { fine: 4, coarse: 14 } as const;

interface End {
  readonly at: Point;
  /** The object that is measured to, at whichever of its edges is nearest. */
  readonly item: SheetItem | null;
}

/** The first of two clicks. */
let first: End | null = null;

export const measureTool: Tool = {
  cursor: "crosshair",
  press: (start) => clickOrDrag(start, click, () => dragged(start)),
  hover: (pointer) => {
    if (first) sketch({ measurement: between(first, clickedEnd(pointer)) });
  },
  key: (key) => {
    if (key !== "Escape" || !(first ?? useSketch.getState().measurement)) return false;
    dismiss();
    return true;
  },
  leave: () => {
    if (first) dismiss();
    first = null;
    endSketch();
  },
};

function dismiss(): void {
  first = null;
  sketch({ measurement: null, bar: null });
}

/** Two clicks take two objects, or places where there is none; a third begins anew. */
function click(pointer: SheetPointer): void {
  const end = clickedEnd(pointer);
  if (first) {
    keep(between(first, end));
    return;
  }
  first = end;
  const text = end.item ? said.measuringFrom(nameOf(end.item)) : said.measuringFromHere;
  useWindowStore.getState().announce(text);
  sketch({ measurement: null, bar: barOf(text) });
}

function dragged(start: SheetPointer): Gesture {
  const { measurement: before, bar } = useSketch.getState();
  const from = draggedEnd(start);
  first = null;
  return {
    move: (pointer) => sketch({ measurement: between(from, draggedEnd(pointer)) }),
    end: (pointer) => keep(between(from, draggedEnd(pointer))),
    cancel: () => sketch({ measurement: before, bar }),
  };
}

/** The measurement stays on the sheet until it is dismissed or another is made. */
function keep(measurement: Measurement): void {
  first = null;
  const { plan } = usePlanStore.getState();
  const { announce } = useWindowStore.getState();
  const words = measurementText(measurement, plan.units).join(", ");
  const text = measurement.names === undefined ? words : `${measurement.names}: ${words}`;
  announce(`${text}.`);
  sketch({ measurement, bar: barOf(text) });
}

function barOf(text: string) {
  return { text, fault: null, actions: [{ label: said.close, act: dismiss }] };
}

function between(from: End, to: End): Measurement {
  if (from.item && from.item.id === to.item?.id) {
    return { from: from.at, to: to.at, isEdgeToEdge: false };
  }
  if (!from.item && !to.item) return { from: from.at, to: to.at, isEdgeToEdge: false };
  const gap = gapBetween(outlineAt(from), outlineAt(to));
  const ends = { from: gap.from, to: gap.to, isEdgeToEdge: true };
  if (!from.item || !to.item) return ends;
  return {
    ...ends,
    centres: [shapeCentre(from.item.shape), shapeCentre(to.item.shape)],
    names: `${nameOf(from.item)} to ${nameOf(to.item)}`,
  };
}

function outlineAt({ at, item }: End) {
  return item ? outlineOf(item.shape) : pointOutline(at);
}

/** The topmost object under a click; with Shift or without snapping the place itself. */
function clickedEnd(pointer: SheetPointer): End {
  const { at, isFree, isShift } = pointer;
  if (isFree || isShift) return placeEnd(pointer);
  const reachPx = pointer.isCoarse ? REACH_PX.coarse : REACH_PX.fine;
  const [item] = itemsAt(committedItems(), at, reachPx / useView.getState().view.scale);
  return { at, item: item ?? null };
}

/** A drag measures from the corner or edge it starts near, else from the object it starts in. */
function draggedEnd(pointer: SheetPointer): End {
  const { at, isFree } = pointer;
  const end = placeEnd(pointer);
  if (isFree || end.at !== at) return end;
  return { at, item: itemsAt(committedItems(), at, 0)[0] ?? null };
}

function placeEnd({ at, isFree }: SheetPointer): End {
  return { at: (isFree ? null : snapToDrawn(at, EDGE_PX)?.at) ?? at, item: null };
}

function committedItems() {
  const { shown, layoutId, book } = usePlanStore.getState();
  return sheetItems(shown, layoutOf(shown, layoutId), book);
}
