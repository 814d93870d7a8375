/** Marking a known length on the picture under the drawing: a drag, or one click at each end. */
import { pointDistance } from "../../core/geometry/point.ts";
import { setMarks, usePictureWork } from "../../store/window/picture-work.ts";
import { useWindowStore } from "../../store/window/window-store.ts";
import { sketch } from "./sketch-store.ts";
import { clickOrDrag } from "./gestures.ts";
import type { SheetPointer, Tool } from "./tool.ts";
import * as words from "../scene/tool-words.ts";

export const markLengthTool: Tool = {
  cursor: "crosshair",
  press: (start) => {
    const before = usePictureWork.getState().marks;
    return clickOrDrag(start, click, () => ({
      move: ({ at }) => sketch({ corners: [], measurement: line(start, at) }),
      end: ({ at }) => take(start, at),
      cancel: () => {
        show(before);
      },
    }));
  },
  hover: ({ at }) => {
    if (usePictureWork.getState().marks.length === 1) sketch({ nextCorner: at });
  },
  key: (key) => {
    if (key !== "Escape" || usePictureWork.getState().marks.length === 0) return false;
    show([]);
    return true;
  },
  leave: () => show([]),
};

type Place = SheetPointer["at"];

function line({ at }: SheetPointer, to: Place) {
  return { from: at, to, isEdgeToEdge: false };
}

/** A third click begins anew. */
function click(pointer: SheetPointer): void {
  const { marks } = usePictureWork.getState();
  const [first] = marks;
  if (first && marks.length === 1) take({ ...pointer, at: first }, pointer.at);
  else {
    show([pointer.at]);
    useWindowStore.getState().announce(words.oneEndMarked);
  }
}

function take(start: SheetPointer, to: Place): void {
  if (pointDistance(start.at, to) === 0) {
    useWindowStore.getState().announce(words.endsOnOneSpot);
    return;
  }
  show([start.at, to]);
  useWindowStore.getState().announce(words.bothEndsMarked);
}

function show(marks: readonly Place[]): void {
  const [from, to] = marks;
  setMarks(marks);
  sketch({
    corners: from && !to ? [from] : [],
    nextCorner: null,
    measurement: from && to ? { from, to, isEdgeToEdge: false } : null,
  });
}
