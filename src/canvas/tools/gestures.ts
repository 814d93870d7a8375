/** Gestures that tools share: panning, and telling a click from a drag. */
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
