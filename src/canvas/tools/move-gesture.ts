/** Dragging what is selected. Every frame is an edit of the committed plan, never of the last one. */
import type { Edit } from "../../core/edits/edit.ts";
import { heldBackWords } from "../../core/beds/held-back.ts";
import { bedUnder } from "../../core/edits/move-objects.ts";
import {
  moveShape,
  outlineContains,
  shapeCorners,
  turnShape,
  outlineOf,
} from "../../core/geometry/outline.ts";
import { type Point, turnPoint } from "../../core/geometry/point.ts";
import { type LengthUnit, formatLength } from "../../core/model/length.ts";
import type { Bed, Layout, Plan, Shape } from "../../core/model/plan.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { useWindowStore } from "../../store/window/window-store.ts";
import { layoutOf } from "../../core/model/layouts.ts";
import { turnAndMove, turnBetweenBeds } from "./move-edit.ts";
import { objectNames } from "../../core/model/object-names.ts";
import { type SheetItem, sheetItems } from "../scene/sheet-items.ts";
import type { Guide } from "../snap/guide.ts";
import { sketch } from "./sketch-store.ts";
import { editGesture } from "./gestures.ts";
import { shownGaps } from "../snap/neighbour-gaps.ts";
import { type Frame, type SnappedMove, boundsInFrame, snapMove, snapStep } from "../snap/snap.ts";
import { SNAP_PX, type SnapGround, snapTargets } from "../snap/snap-targets.ts";
import { useView } from "../scene/view-store.ts";
import type { Gesture, SheetPointer } from "./tool.ts";
import * as words from "../scene/tool-words.ts";

/** How far it has come, and how large it is. */
function movedWords(shape: Shape, distanceM: number, unit: LengthUnit): string {
  const moved = words.movedBy(formatLength(distanceM, unit));
  if (shape.shape !== "rectangle") return moved;
  const size = `${formatLength(shape.widthM, unit)} × ${formatLength(shape.lengthM, unit)}`;
  return `${moved}, ${size}`;
}

/** One drag: what stays the same from the press to the release. */
interface Drag {
  readonly plan: Plan;
  readonly layout: Layout;
  readonly ground: SnapGround;
  readonly selection: readonly string[];
  readonly start: SheetPointer;
  /** The object under the pointer: it snaps, the others keep their places to it. */
  readonly grabbed: SheetItem;
  /** The bed it comes from. */
  readonly from: Bed | undefined;
  readonly title: string;
  /** Frames it has been in, by bed and turn: lines of what rests are kept by them. */
  readonly frames: Map<string, Frame>;
}

interface Moved {
  readonly edit: Edit;
  /** Where the grabbed object comes to lie, metres from where it was. */
  readonly shift: Point;
  readonly guides: readonly Guide[];
}

function dragOf(start: SheetPointer, grabbed: SheetItem): Drag {
  const { plan, layoutId, book } = usePlanStore.getState();
  const { selection } = useWindowStore.getState();
  const layout = layoutOf(plan, layoutId);
  const bed = grabbed.what === "planting" ? grabbed.planting.bed : undefined;
  return {
    plan,
    layout,
    ground: { items: sheetItems(plan, layout, book), moving: new Set(selection) },
    selection,
    start,
    grabbed,
    from: layout.beds.find(({ id }) => id === bed),
    title: words.move(objectNames(plan, layout, selection)),
    frames: new Map(),
  };
}

/** @param grabbed the object under the pointer: it snaps, the others keep their places to it */
export function moveGesture(start: SheetPointer, grabbed: SheetItem): Gesture {
  const drag = dragOf(start, grabbed);
  const { plan, layout, selection } = drag;
  const held = heldBackWords(plan, layout.id, selection, true);
  return editGesture((pointer) => {
    const { edit, shift, guides } = movedTo(drag, pointer);
    usePlanStore.getState().preview(edit);
    const text = held ?? movedWords(grabbed.shape, Math.hypot(shift.x, shift.y), plan.units);
    sketch({
      isMoving: true,
      guides,
      gaps: shownGaps(grabbed.id, selection),
      readout: { at: pointer.at, text },
      cursor: "grabbing",
    });
    return edit;
  });
}

function movedTo(drag: Drag, pointer: SheetPointer): Moved {
  const { layout, selection, start, grabbed, from, title } = drag;
  const locked = pointer.isShift
    ? dominant(start, pointer, frameFor(drag, grabbed.shape, from))
    : null;
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
  const { shift, guides } = pointer.isFree
    ? { shift: { x: 0, y: 0 }, guides: [] }
    : snapped(drag, placed, over, locked?.axes);
  const whole = { x: raw.x + shift.x, y: raw.y + shift.y };
  const turn = { about: start.at, turnDeg };
  return { edit: turnAndMove(layout.id, selection, turn, whole, title), shift: whole, guides };
}

function bedAt(beds: readonly Bed[], place: Point): Bed | undefined {
  return beds.find((bed) => outlineContains(outlineOf(bed.outline), place.x, place.y));
}

/** The bed's directions for what lies on a bed, else the object's own, else the sheet's. */
function frameFor({ grabbed, frames }: Drag, shape: Shape, bed: Bed | undefined): Frame {
  const onBed = bed?.outline.shape === "rectangle" ? bed.outline : undefined;
  const turnDeg = onBed?.turnDeg ?? (shape.shape === "rectangle" ? shape.turnDeg : 0);
  const key = `${onBed ? bed?.id : ""} ${turnDeg}`;
  const { x, y } = onBed ?? (grabbed.shape.shape === "rectangle" ? grabbed.shape : SHEET_ORIGIN);
  const frame = frames.get(key) ?? { origin: { x, y }, turnDeg };
  frames.set(key, frame);
  return frame;
}

const SHEET_ORIGIN: Point = { x: 0, y: 0 };

/** The shift that brings what is placed onto a line or step nearby. */
function snapped(
  drag: Drag,
  placed: Shape,
  over: Bed | undefined,
  axes: { readonly x: boolean; readonly y: boolean } | undefined,
): SnappedMove {
  const { plan, grabbed, ground } = drag;
  const frame = frameFor(drag, placed, over);
  // On a bed the grid counts from its near corner; elsewhere places move on in steps.
  const gridShape = over?.outline.shape === "rectangle" ? over.outline : grabbed.shape;
  const corner = boundsInFrame(frame, shapeCorners(gridShape));
  const settings = {
    lines: snapTargets(ground, frame, { what: grabbed.what, shape: placed, bed: over }),
    reachM: SNAP_PX / useView.getState().view.scale,
    stepM: snapStep(plan.units),
    gridFrom: { x: corner.minX, y: corner.minY },
  };
  return snapMove(frame, boundsInFrame(frame, shapeCorners(placed)), settings, axes);
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
