/** Dragging what is selected. Every frame is an edit of the committed plan, never of the last one. */
import type { Edit } from "../../core/edits/edit.ts";
import { heldBackWords } from "../../core/beds/held-back.ts";
import { bedUnder } from "../../core/edits/move-objects.ts";
import {
  moveShape,
  outlineContains,
  shapeCorners,
  turnShape,
} from "../../core/geometry/outline.ts";
import { type Point, turnPoint } from "../../core/geometry/point.ts";
import { type LengthUnit, formatLength } from "../../core/model/length.ts";
import type { Bed, Shape } from "../../core/model/plan.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { layoutOf } from "../../core/model/layouts.ts";
import { turnAndMove, turnBetweenBeds } from "./move-edit.ts";
import { shownGaps } from "../snap/neighbour-gaps.ts";
import { objectNames } from "../../core/model/object-names.ts";
import { type SheetItem, outlineFor, sheetItems } from "../scene/sheet-items.ts";
import type { Guide } from "../snap/guide.ts";
import { endSketch, sketch } from "./sketch-store.ts";
import { type Frame, type SnapSettings, boundsInFrame, snapMove, snapStep } from "../snap/snap.ts";
import { SNAP_PX, snapTargets } from "../snap/snap-targets.ts";
import { useView } from "../scene/view-store.ts";
import type { Gesture, SheetPointer } from "./tool.ts";

/** How far it has come, and how large it is. */
function movedWords(shape: Shape, distanceM: number, unit: LengthUnit): string {
  const moved = `moved ${formatLength(distanceM, unit)}`;
  if (shape.shape !== "rectangle") return moved;
  const size = `${formatLength(shape.widthM, unit)} × ${formatLength(shape.lengthM, unit)}`;
  return `${moved}, ${size}`;
}

interface Moved {
  readonly edit: Edit;
  /** Where the grabbed object comes to lie, metres from where it was. */
  readonly shift: Point;
  readonly guides: readonly Guide[];
}

/** @param grabbed the object under the pointer: it snaps, the others keep their places to it */
export function moveGesture(start: SheetPointer, grabbed: SheetItem): Gesture {
  const { selection, plan, layoutId } = usePlanStore.getState();
  const layout = layoutOf(plan, layoutId);
  const title = `Move ${objectNames(plan, layout, selection)}`;
  const held = heldBackWords(plan, layoutId, selection, true);
  const moved = (pointer: SheetPointer) => movedTo(start, pointer, grabbed, selection, title);
  return {
    move: (pointer) => {
      const { edit, shift, guides } = moved(pointer);
      usePlanStore.getState().preview(edit);
      const text = held ?? movedWords(grabbed.shape, Math.hypot(shift.x, shift.y), plan.units);
      sketch({
        isMoving: true,
        guides,
        gaps: shownGaps(grabbed.id, selection),
        readout: { at: pointer.at, text },
        cursor: "grabbing",
      });
    },
    end: (pointer) => {
      endSketch();
      usePlanStore.getState().commit(moved(pointer).edit);
    },
    cancel: () => {
      endSketch();
      usePlanStore.getState().cancelPreview();
    },
  };
}

function movedTo(
  start: SheetPointer,
  pointer: SheetPointer,
  grabbed: SheetItem,
  selection: readonly string[],
  title: string,
): Moved {
  const { plan, layoutId } = usePlanStore.getState();
  const layout = layoutOf(plan, layoutId);
  const from = bedOf(grabbed, layout.beds);
  const locked = pointer.isShift ? dominant(start, pointer, frameFor(grabbed.shape, from)) : null;
  const raw = locked?.shift ?? {
    x: pointer.at.x - start.at.x,
    y: pointer.at.y - start.at.y,
  };
  let placed: Shape = moveShape(grabbed.shape, raw.x, raw.y);
  let turnDeg = 0;
  let over: Bed | undefined;
  if (grabbed.what === "planting") {
    over = bedUnder(layout, placed, grabbed.planting.bed) ?? bedAt(layout.beds, pointer.at);
    const canTurn = selection.length === 1 && !pointer.isFree && over?.id !== from?.id;
    if (canTurn) turnDeg = turnBetweenBeds(grabbed.planting.outline, from, over);
    // Turned about the place it is held by, so that it stays under the pointer.
    placed = turnShape(placed, { x: start.at.x + raw.x, y: start.at.y + raw.y }, turnDeg);
  }
  const frame = frameFor(placed, over);
  const { shift, guides } = pointer.isFree
    ? { shift: { x: 0, y: 0 }, guides: [] }
    : snapMove(
        frame,
        boundsInFrame(frame, shapeCorners(placed)),
        settingsFor(frame, grabbed, placed, over, selection),
        locked?.axes,
      );
  const whole = { x: raw.x + shift.x, y: raw.y + shift.y };
  return {
    edit: turnAndMove(layoutId, selection, start.at, turnDeg, whole, title),
    shift: whole,
    guides,
  };
}

function bedAt(beds: readonly Bed[], place: Point): Bed | undefined {
  return beds.find((bed) => outlineContains(outlineFor(bed.outline), place.x, place.y));
}

function bedOf(grabbed: SheetItem, beds: readonly Bed[]): Bed | undefined {
  return grabbed.what === "planting"
    ? beds.find((bed) => bed.id === grabbed.planting.bed)
    : undefined;
}

/** The bed's directions for what lies on a bed, else the object's own, else the sheet's. */
function frameFor(shape: Shape, bed: Bed | undefined): Frame {
  const outline = bed?.outline.shape === "rectangle" ? bed.outline : shape;
  return outline.shape === "rectangle"
    ? { origin: { x: outline.x, y: outline.y }, turnDeg: outline.turnDeg }
    : { origin: { x: 0, y: 0 }, turnDeg: 0 };
}

function settingsFor(
  frame: Frame,
  grabbed: SheetItem,
  placed: Shape,
  over: Bed | undefined,
  selection: readonly string[],
): SnapSettings {
  const { plan, layoutId, book } = usePlanStore.getState();
  const layout = layoutOf(plan, layoutId);
  const items = sheetItems(plan, layout, book);
  // On a bed the grid counts from its near corner; elsewhere places move on in steps.
  const from = over?.outline.shape === "rectangle" ? over.outline : grabbed.shape;
  const corner = boundsInFrame(frame, shapeCorners(from));
  return {
    lines: snapTargets(items, frame, grabbed.what, placed, new Set(selection), over),
    reachM: SNAP_PX / useView.getState().view.scale,
    stepM: snapStep(plan.units),
    gridFrom: { x: corner.minX, y: corner.minY },
  };
}

/** With Shift held the move keeps to the frame's direction it goes furthest in. */
function dominant(start: SheetPointer, pointer: SheetPointer, { turnDeg }: Frame) {
  const origin = { x: 0, y: 0 };
  const raw = { x: pointer.at.x - start.at.x, y: pointer.at.y - start.at.y };
  const inside = turnPoint(raw, origin, -turnDeg);
  const isAcross = Math.abs(inside.x) >= Math.abs(inside.y);
  const kept = isAcross ? { x: inside.x, y: 0 } : { x: 0, y: inside.y };
  return {
    shift: turnPoint(kept, origin, turnDeg),
    axes: { x: !isAcross, y: isAcross },
  };
}
