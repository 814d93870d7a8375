/** Gestures that tools share: panning, and telling a click from a drag. */
import type { Edit } from "../../core/edits/edit.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { endSketch, sketch } from "./sketch-store.ts";
import { useView } from "../scene/view-store.ts";
import type { Gesture, SheetPointer } from "./tool.ts";

/** A press that stays within so many pixels is a click. */
const CLICK_PX = { fine: 3, coarse: 10 } as const;

export function panGesture(start: SheetPointer): Gesture {
  let last = start.px;
  sketch({ cursor: "grabbing" });
  const { view, fitted } = useView.getState();
  return {
    move: ({ px }) => {
      useView.getState().pan(px.x - last.x, px.y - last.y);
      last = px;
    },
    end: endSketch,
    cancel: () => {
      useView.setState({ view, fitted });
      endSketch();
    },
  };
}

/** A click, unless the pointer goes far enough; then the drag takes over from where it was pressed. */
export function clickOrDrag(
  start: SheetPointer,
  click: (pointer: SheetPointer) => void,
  drag: () => Gesture,
): Gesture {
  const least = start.isCoarse ? CLICK_PX.coarse : CLICK_PX.fine;
  let dragging: Gesture | null = null;
  return {
    move: (pointer) => {
      const isFar = Math.hypot(pointer.px.x - start.px.x, pointer.px.y - start.px.y) >= least;
      if (!dragging && isFar) dragging = drag();
      dragging?.move(pointer);
    },
    end: (pointer) => {
      if (dragging) dragging.end(pointer);
      else click(pointer);
    },
    cancel: () => dragging?.cancel(),
  };
}

/** Whether a move to the second would change nothing after the first. */
export function isSamePlace(one: SheetPointer | null, other: SheetPointer): boolean {
  return (
    one !== null &&
    one.px.x === other.px.x &&
    one.px.y === other.px.y &&
    one.at.x === other.at.x &&
    one.at.y === other.at.y &&
    one.isShift === other.isShift &&
    one.isFree === other.isFree
  );
}

/**
 * A gesture that shows an edit on every move and keeps the last one when it ends: what was shown is
 * kept as it is, neither edited nor checked again.
 *
 * @param show previews the edit for a pointer, says what belongs to it and gives it back; null when
 *   there is none to keep there, and the one before stands
 * @param ended what is said once it has ended
 */
export function editGesture(
  show: (pointer: SheetPointer) => Edit | null,
  ended?: () => void,
): Gesture {
  let last: Edit | null = null;
  let shownAt: SheetPointer | null = null;
  const move = (pointer: SheetPointer) => {
    last = show(pointer) ?? last;
    shownAt = pointer;
  };
  return {
    move,
    end: (pointer) => {
      if (!isSamePlace(shownAt, pointer)) move(pointer);
      endSketch();
      if (last) usePlanStore.getState().commit(last);
      else usePlanStore.getState().cancelPreview();
      ended?.();
    },
    cancel: () => {
      endSketch();
      usePlanStore.getState().cancelPreview();
    },
  };
}
